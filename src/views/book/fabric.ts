// How much of the car is original, repaired or new, and what tells a new piece from an old one.
import type { CarRecord } from '../../record/record.ts';
import { fabricShares } from '../../rollup/fabric.ts';
import { KEPT_WORDS } from '../fabric.ts';
import { fabricText } from '../part.ts';
import { capital } from '../parts.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookFabric = {
  shares: BookTable | undefined;
  /** Every part that isn't wholly as it was built, with what is new in it. */
  changed: BookTable | undefined;
  /** Marks cut, stamped or inked on new pieces, from the decided choices. */
  marks: BookTable | undefined;
};

export function bookFabric(record: CarRecord): BookFabric {
  const shares = fabricShares(record);
  const changed = shares
    .filter(({ kept }) => kept !== 'original')
    .flatMap(({ kept, parts }) => parts.map((each) => ({ kept, ...each })));
  const order = new Map(record.parts.map(({ id }, i) => [id, i]));
  changed.sort((a, b) => (order.get(a.part.id) ?? 0) - (order.get(b.part.id) ?? 0));
  return {
    shares: tableOf(shares, [
      { head: 'What the part is now', wide: 7, text: ({ kept }) => KEPT_WORDS[kept] },
      { head: 'Parts', wide: 0, figures: true, text: ({ parts }) => String(parts.length) },
      { head: 'Of all parts', wide: 0, figures: true, text: ({ percent }) => `${percent}%` },
    ]),
    changed: tableOf(changed, [
      { head: 'Part', wide: 3, text: ({ part }) => part.name },
      { head: 'As found', wide: 0, text: ({ part }) => capital(fabricText(part.fabric ?? 'not said')) },
      { head: 'Now', wide: 0, text: ({ kept }) => capital(fabricText(kept)) },
      { head: 'How much of it', wide: 6, text: ({ note = '' }) => capital(note) },
    ]),
    marks: tableOf(marksOf(record), [
      { head: 'Part', wide: 3, text: ({ part }) => part },
      { head: 'Mark', wide: 5, text: ({ mark }) => mark },
      { head: 'From the choice', wide: 5, text: ({ question }) => question },
    ]),
  };
}

function marksOf(record: CarRecord): { part: string; mark: string; question: string }[] {
  const names = new Map(record.parts.map(({ id, name }) => [id, name]));
  return record.choices.flatMap(({ part, question, decided, withdrawn, options }) => {
    const mark = options.find(({ option }) => option === decided?.option)?.mark;
    if (!mark || withdrawn) return [];
    return [{ part: part.map((id) => names.get(id) ?? id).join(', '), mark, question }];
  });
}
