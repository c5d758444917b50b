// Cost lines in words, the same on every page that opens a figure.
import { minutesText } from '../figures/hours.ts';
import type { CostKind, CostLine } from '../rollup/cost-lines.ts';
import { KIND } from '../rollup/labels.ts';

export { KIND };

/** The order in which kinds stand in every table. */
export const KINDS = Object.keys(KIND) as CostKind[];

/** What a line says beside its amounts. */
export function lineNotes(line: CostLine): string {
  return [
    line.minutes === undefined ? '' : minutesText(line.minutes),
    line.noCharge ? `no charge: ${line.noCharge}` : '',
    line.fixed?.is === 'hours' ? 'within a price fixed beforehand' : '',
    line.paidByOwner ? 'paid by the owner' : '',
    line.workedOut ? 'worked out by the rule: the bill is silent' : '',
  ]
    .filter((note) => note !== '')
    .join('; ');
}

/** `from 14 lines`. */
export function fromLines(count: number): string {
  return `from ${count} ${count === 1 ? 'line' : 'lines'}`;
}
