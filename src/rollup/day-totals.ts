// The sums of one entry, for its page and for lists of days.
import type { CostLine, Rollup, Total } from './cost-lines.ts';
import { totalOf } from './tables.ts';

/** What an entry comes to, with its lines; labour and bills apart. */
export type DayTotal = { all: Total; labour: Total; bills: BillTotal[]; materials: Total; tax: Total };

/** One bill of a day: a vendor with a bill number, its lines and what they come to. */
export type BillTotal = { vendor: string | undefined; bill: string | undefined; total: Total };

/** Totals by entry id; tax rounded on the statement's sum belongs to no entry. */
export function dayTotals(rollup: Rollup): Map<string, DayTotal> {
  const byEntry = new Map<string, CostLine[]>();
  for (const line of rollup.lines) {
    if (line.entry === undefined) continue;
    const lines = byEntry.get(line.entry);
    if (lines) lines.push(line);
    else byEntry.set(line.entry, [line]);
  }
  return new Map([...byEntry].map(([entry, lines]) => [entry, dayTotal(lines)]));
}

function dayTotal(lines: CostLine[]): DayTotal {
  const of = (...kinds: CostLine['kind'][]) => totalOf(lines.filter(({ kind }) => kinds.includes(kind)));
  return {
    all: totalOf(lines),
    labour: of('labour'),
    bills: bills(lines.filter(({ kind }) => BILLED.has(kind))),
    materials: of('materials'),
    tax: of('tax'),
  };
}

const BILLED = new Set<CostLine['kind']>(['bought', 'outside', 'freight', 'paid-tax', 'handling', 'deposit']);

function bills(lines: CostLine[]): BillTotal[] {
  const found = new Map<string, CostLine[]>();
  for (const line of lines) {
    const key = `${line.vendor} ${line.bill}`;
    const of = found.get(key);
    if (of) of.push(line);
    else found.set(key, [line]);
  }
  return [...found.values()].map((of) => ({ vendor: of[0]?.vendor, bill: of[0]?.bill, total: totalOf(of) }));
}
