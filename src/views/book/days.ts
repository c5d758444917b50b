// The days in the words they were written in, by month.
import { monthOf, monthText, shortDayText, weekday } from '../../figures/days.ts';
import type { CarRecord, Entry } from '../../record/record.ts';
import { workersOf } from '../day.ts';
import { type Block, blocksOf } from './blocks.ts';

/** `day` without its year, which stands over the month: `Wednesday, April 16`. */
export type BookDay = { day: string; who: string[]; blocks: Block[] };
export type BookMonth = { month: string; days: BookDay[] };

/** Every entry that has words, oldest first. */
export function bookDays(record: CarRecord): BookMonth[] {
  const days = record.entries.flatMap((entry) => {
    const blocks = blocksOf(entry.body.tree);
    return blocks.length > 0
      ? [
          {
            month: monthOf(entry.day),
            day: `${weekday(entry.day)}, ${shortDayText(entry.day)}${secondOf(entry)}`,
            who: workersOf(entry, record),
            blocks,
          },
        ]
      : [];
  });
  return [...Map.groupBy(days, ({ month }) => month)].map(([month, own]) => ({
    month: monthText(month),
    days: own.map(({ month: _, ...day }) => day),
  }));
}

/** A second entry of a day says so. */
function secondOf({ id }: Entry): string {
  const letter = id.slice(10).replace('-', '');
  return letter === '' ? '' : `, entry ${letter}`;
}
