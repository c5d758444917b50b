// The sums of one entry, for its page and for lists of days.
import { once } from '../record/once.ts';
import { byEntry } from './by-entry.ts';
import type { CostLine, Rollup, Total } from './cost-lines.ts';
import { totalOf } from './tables.ts';

/** What an entry comes to, with its lines; labour and bills apart. */
export type DayTotal = { all: Total; labour: Total; bills: BillTotal[]; materials: Total; tax: Total };

/** One bill of a day: a vendor with a bill number, its lines and what they come to. */
export type BillTotal = { vendor: string | undefined; bill: string | undefined; total: Total };

/** Totals by entry id; tax rounded on the statement's sum belongs to no entry. */
export const dayTotals = once(
  ({ lines }: Rollup): Map<string, DayTotal> =>
    new Map([...byEntry(lines)].map(([entry, total]) => [entry, dayTotal(total)])),
);

function dayTotal(all: Total): DayTotal {
  const of = (kind: CostLine['kind']) => totalOf(all.lines.filter((line) => line.kind === kind));
  return {
    all,
    labour: of('labour'),
    bills: bills(all.lines.filter(({ kind }) => BILLED.has(kind))),
    materials: of('materials'),
    tax: of('tax'),
  };
}

const BILLED = new Set<CostLine['kind']>(['bought', 'outside', 'freight', 'paid-tax', 'handling', 'deposit']);

function bills(lines: CostLine[]): BillTotal[] {
  const found = Map.groupBy(lines, ({ vendor, bill }) => `${vendor} ${bill}`);
  return [...found.values()].map((of) => ({ vendor: of[0]?.vendor, bill: of[0]?.bill, total: totalOf(of) }));
}
