// A long table cut short for a figure: the rows that matter most, and the others as one sum.
import type { Row, Total } from './cost-lines.ts';
import { totalOf } from './tables.ts';

/** The largest rows by one figure, at most so many, and what the others come to; rows and rest hold every line. */
export function largest(
  rows: readonly Row[],
  by: 'charged' | 'minutes',
  most: number,
): { rows: Row[]; rest: Total; others: number } {
  const sorted = [...rows].sort((a, b) => b[by] - a[by]);
  // One row left over takes no more room than the line that would stand for it.
  const cut = sorted.length <= most + 1 ? sorted.length : most;
  const others = sorted.slice(cut);
  return {
    rows: sorted.slice(0, cut),
    rest: totalOf(others.flatMap(({ lines }) => lines)),
    others: others.length,
  };
}
