// How the car was found: every part with its condition and what was seen, by group.
import type { CarRecord, Part } from '../../record/record.ts';
import { CONDITION } from '../../record/words.ts';
import { datedText } from '../dated.ts';
import { fabricText } from '../part.ts';
import { capital } from '../parts.ts';
import { type Block, blocksOf } from './blocks.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookFound = {
  says: string;
  groups: { group: string; table: BookTable; notes: { part: string; blocks: Block[] }[] }[];
};

export function bookFound(record: CarRecord): BookFound {
  const groups = Map.groupBy(record.parts, ({ group }) => group);
  return {
    says: foundSays(record.parts),
    groups: [...groups].flatMap(([group, parts]) => {
      const table = foundTable(parts);
      const notes = parts
        .map(({ name, body }) => ({ part: name, blocks: blocksOf(body.tree) }))
        .filter(({ blocks }) => blocks.length > 0);
      return table ? [{ group, table, notes }] : [];
    }),
  };
}

function foundTable(parts: readonly Part[]): BookTable | undefined {
  return tableOf(parts, [
    { head: 'Part', wide: 3, text: ({ name }) => name },
    { head: 'Found', wide: 0, text: ({ found }) => capital(found?.condition ?? 'not said') },
    { head: 'What was seen', wide: 6, text: ({ found }) => found?.note ?? '' },
    { head: 'Made of', wide: 0, text: ({ fabric }) => (fabric ? capital(fabricText(fabric)) : '') },
    { head: 'Looked at', wide: 0, text: ({ found }) => (found ? datedText(found.on) : '') },
  ]);
}

/** `Of 51 parts, 4 were sound, 20 worn, 18 damaged, 3 incomplete and 2 missing; of 4 nobody said.` */
function foundSays(parts: readonly Part[]): string {
  const counted = CONDITION.map((condition) => ({
    condition,
    count: parts.filter(({ found }) => found?.condition === condition).length,
  })).filter(({ count }) => count > 0);
  const silent = parts.filter(({ found }) => found === undefined).length;
  const told = counted.map(
    ({ condition, count }, i) => `${count} ${i === 0 ? (count === 1 ? 'was ' : 'were ') : ''}${condition}`,
  );
  const list = told.length > 1 ? `${told.slice(0, -1).join(', ')} and ${told.at(-1)}` : told.join('');
  const unsaid = silent > 0 ? `of ${silent} nobody wrote how it was found` : '';
  const said = list === '' ? '' : `Of ${parts.length} parts, ${list}`;
  return said === '' && unsaid === '' ? '' : `${capital([said, unsaid].filter(Boolean).join('; '))}.`;
}
