// The order in which a record becomes sums: lines from the log, charged tax on them, then totals that keep
// their lines.
import type { CarRecord } from '../record/record.ts';
import type { CostLine, Rollup } from './cost-lines.ts';
import { depositsOut } from './deposits.ts';
import { drawnLines } from './drawn-lines.ts';
import { monthsOf } from './months.ts';
import { openOrders } from './orders.ts';
import { plannedSoFar } from './planned.ts';
import { tablesOf, totalOf } from './tables.ts';
import { taxLines } from './tax-lines.ts';

/** Everything that can be said about the sums of a record. A figure is the sum of the lines it carries. */
export function rollUp(unsorted: CarRecord): Rollup {
  const record = { ...unsorted, entries: [...unsorted.entries].sort(byDay) };
  const drawn = drawnLines(unsorted);
  const taxes = taxLines(drawn, record);
  const own = [...drawn.map(({ line }) => line), ...taxes.byLine].sort(byPlace);
  const lines = [...own, ...taxes.byStatement];
  return {
    lines,
    tables: tablesOf(lines, record),
    total: totalOf(lines),
    agreed: sum(record.car.agreed ?? []),
    paid: sum(record.entries.flatMap(({ paid = [] }) => paid)),
    depositsOut: depositsOut(record),
    openOrders: openOrders(record),
    months: monthsOf(lines, record),
    planned: plannedSoFar(lines, record),
  };
}

function byDay(a: { day: string; file: string }, b: { day: string; file: string }): number {
  return compare(a.day, b.day) || compare(a.file, b.file);
}

/** Lines that come from one written line keep their order. */
function byPlace(a: CostLine, b: CostLine): number {
  return (
    compare(a.day, b.day) ||
    compare(a.place.file, b.place.file) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const sum = (lines: readonly { amount: number }[]) => lines.reduce((total, { amount }) => total + amount, 0);
