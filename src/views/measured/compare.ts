// Tables that put the readings of one thing side by side, as found, at trials, as left.
import type { Units } from '../../figures/lengths.ts';
import type { Thing } from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { page } from '../links.ts';
import { figuresOf } from './compare-rows.ts';
import { stateText } from './result-text.ts';

/** A column for each reading, a row for each figure that any of them has. */
export type Compare = {
  caption: string;
  heads: { text: string; state: string; to: string }[];
  rows: { name: string; cells: string[]; last?: true }[];
};

/** At most so many readings stand side by side: the first and the newest. */
const MOST = 4;

export function compareTable(thing: Thing, caption: string, units: Units): Compare {
  const { readings } = thing;
  const shown = readings.length > MOST ? [...readings.slice(0, 1), ...readings.slice(1 - MOST)] : readings;
  const cells = shown.map((each) => [
    ...figuresOf(each, units),
    ['Note', each.reading.note ?? ''] as const,
    ['State', stateText(each, units)] as const,
  ]);
  const names = [...new Set(cells.flatMap((column) => column.map(([name]) => name)))];
  return {
    caption,
    heads: shown.map(({ day, state, entry }) => ({ text: datedText(day), state, to: page.day(entry) })),
    rows: ordered(names)
      .map((name) => ({
        name,
        cells: cells.map((column) => column.find(([own]) => own === name)?.[1] ?? ''),
        ...(name === 'State' && { last: true as const }),
      }))
      .filter((row) => row.cells.some((cell) => cell !== '')),
  };
}

/** Notes and the judgment stand last, whatever figures the readings have. */
function ordered(names: readonly string[]): string[] {
  return [...names.filter((name) => name !== 'Note' && name !== 'State'), 'State', 'Note'];
}
