// The days in the words they were written in, by month.
import { monthOf, monthText } from '../../figures/days.ts';
import type { CarRecord } from '../../record/record.ts';
import { entryTitle, workersOf } from '../day.ts';
import { type Block, blocksOf } from './blocks.ts';

export type BookMonth = { month: string; days: { title: string; who: string; blocks: Block[] }[] };

/** Every entry that has words, oldest first. */
export function bookDays(record: CarRecord): BookMonth[] {
  const days = record.entries.flatMap((entry) => {
    const blocks = blocksOf(entry.body.tree);
    return blocks.length > 0
      ? [
          {
            month: monthOf(entry.day),
            title: entryTitle(entry),
            who: workersOf(entry, record).join(', '),
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
