// Mounts with their pads, and the tags of what came off.
import type { CarRecord } from '../../record/record.ts';
import { marksOf } from '../../rollup/marks.ts';
import { stacksOf } from '../../rollup/measured/stacks.ts';
import { datedText } from '../dated.ts';
import { stackText } from '../measured/pad-text.ts';
import { namesOf } from '../names.ts';
import { capital } from '../parts.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookMarks = { pads: BookTable | undefined; tags: BookTable | undefined };

export function bookMarks(record: CarRecord): BookMarks {
  const { units } = record;
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
    tags: tagTable(record),
  };
}

/** In the order of the parts, what belongs to none of them first; a part is named in the first row of its tags. */
function tagTable(record: CarRecord): BookTable | undefined {
  const names = namesOf(record);
  const order = new Map(record.parts.map(({ id }, i) => [id, i]));
  const at = (part: string | undefined) => (part === undefined ? -1 : (order.get(part) ?? order.size));
  const marks = marksOf(record).all.toSorted((a, b) => at(a.part) - at(b.part));
  const rows = marks.map((mark, i) => ({ ...mark, first: i === 0 || marks[i - 1]?.part !== mark.part }));
  return tableOf(rows, [
    { head: 'Part', wide: 3, text: ({ part, first }) => (first ? names.part(part) : '') },
    { head: 'Tag', wide: 0, text: ({ mark }) => mark },
    {
      head: 'What came off',
      wide: 4,
      text: ({ what, count }) => (count === undefined ? what : `${what} (${count})`),
    },
    { head: 'Where from', wide: 4, text: ({ fromWhere = '' }) => capital(fromWhere) },
    { head: 'Kept as', wide: 0, text: ({ as }) => capital(as) },
    { head: 'Kept', wide: 2, text: ({ kept = '' }) => capital(kept) },
  ]);
}
