// The lines of a figure, a total for each entry that they stand in.
import type { CostLine, Total } from './cost-lines.ts';
import { totalOf } from './tables.ts';

/** Totals by entry, in the order of the lines; tax rounded on the statement's sum stands in no entry. */
export function byEntry(lines: readonly CostLine[]): Map<string, Total> {
  const stood = lines.filter(({ entry }) => entry !== undefined);
  const grouped = Map.groupBy(stood, ({ entry }) => entry ?? '');
  return new Map([...grouped].map(([entry, own]) => [entry, totalOf(own)]));
}
