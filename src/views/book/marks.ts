// Mounts with their pads, and the tags of what came off.
import type { CarRecord } from '../../record/record.ts';
import { marksOf } from '../../rollup/marks.ts';
import { stacksOf } from '../../rollup/measured/stacks.ts';
import { datedText } from '../dated.ts';
import { stackText } from '../measured/pad-text.ts';
import { namesOf } from '../names.ts';
import { capital } from '../parts.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookMarks = { pads: BookTable | undefined; tags: { part: string; table: BookTable }[] };

export function bookMarks(record: CarRecord): BookMarks {
  const { units } = record;
  const names = namesOf(record);
  const order = new Map(record.parts.map(({ id }, i) => [id, i]));
  const at = (part: string | undefined) => (part === undefined ? -1 : (order.get(part) ?? order.size));
  return {
    pads: tableOf(stacksOf(record), [
      { head: 'Mount', wide: 1.4, text: ({ mount }) => mount },
      {
        head: 'As found, from the bottom',
        wide: 4,
        text: ({ found }) => (found ? stackText(found.stack, units) : 'not written down'),
      },
      { head: 'As left, from the bottom', wide: 4, text: ({ now }) => stackText(now.stack, units) },
      { head: 'Last written', wide: 3, text: ({ now }) => datedText(now.day) },
    ]),
    tags: [...Map.groupBy(marksOf(record).all, ({ part }) => part)]
      .sort(([a], [b]) => at(a) - at(b))
      .flatMap(([part, marks]) => {
        const table = tableOf(marks, [
          { head: 'Tag', wide: 2.4, text: ({ mark }) => mark },
          {
            head: 'What came off',
            wide: 5,
            text: ({ what, count }) => (count === undefined ? what : `${what} (${count})`),
          },
          { head: 'Where from', wide: 5, text: ({ fromWhere = '' }) => fromWhere },
          { head: 'Kept as', wide: 2, text: ({ as }) => capital(as) },
          { head: 'Kept', wide: 2.4, text: ({ kept = '' }) => kept },
        ]);
        return table ? [{ part: names.part(part), table }] : [];
      }),
  };
}
