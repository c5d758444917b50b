// What is better mended before a car leaves with its record, since nobody can add it later. None of it stops a
// hand-over.
import type { CarRecord, Entry } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { fabricOf } from '../rollup/fabric.ts';
import { datedText } from './dated.ts';
import { namesOf } from './names.ts';

/** One sentence for each kind of thing that is missing, with all that it is missing of; none for a full record. */
export function beforeHandOver(record: CarRecord, rollup: Rollup): string[] {
  const kinds: [string, string[]][] = [
    ['Pictures without words for who can’t see them', picturesWithoutWords(record)],
    ['Choices without an answer and its reason', openChoices(record)],
    ['New parts without a mark that tells them from old ones', newWithoutMark(record)],
    [
      'Parts whose work is covered now, and was never photographed while it could be seen',
      coveredUnseen(record),
    ],
    ['Orders that haven’t come', openOrders(record, rollup)],
  ];
  return kinds.flatMap(([what, items]) =>
    items.length > 0 ? [`${what}: ${items.join('; ')}${/[.?!]$/.test(items.at(-1) ?? '') ? '' : '.'}`] : [],
  );
}

function picturesWithoutWords({ entries }: CarRecord): string[] {
  return entries.flatMap(({ photos = [], id }) =>
    photos.filter(({ alt = '' }) => alt.trim() === '').map(({ file }) => `${file} (${id})`),
  );
}

function openChoices({ choices }: CarRecord): string[] {
  return choices.filter(({ decided, withdrawn }) => !decided && !withdrawn).map(({ question }) => question);
}

/** A mark is what a decided option says, or letters with a year in a word on the fabric: `NB 2025`. */
function newWithoutMark(record: CarRecord): string[] {
  const marked = new Set([
    ...record.choices.flatMap(({ part, decided, options }) =>
      options.some(({ option, mark }) => option === decided?.option && mark) ? part : [],
    ),
    ...record.entries.flatMap(({ fabric = [] }) =>
      fabric.filter(({ note = '' }) => /\b[A-Z]{2} ?(?:19|20)\d\d\b/.test(note)).map(({ part }) => part),
    ),
  ]);
  return record.parts
    .filter((part) => ['new-made', 'reproduction'].includes(fabricOf(part, record)?.now ?? ''))
    .filter(({ id }) => !marked.has(id))
    .map(({ name }) => name);
}

/** Metal, timber and wires that paint, trim or assembly came over on the same part, or later than. */
function coveredUnseen(record: CarRecord): string[] {
  const during = new Set(
    record.entries.flatMap(({ photos = [] }) =>
      photos.flatMap(({ part, shows }) => (shows === 'during' ? [part] : [])),
    ),
  );
  return record.parts
    .filter(({ id }) => !during.has(id))
    .filter(({ id }) => {
      const open = record.entries.findIndex((entry) => worked(entry, id, UNDER));
      return open >= 0 && record.entries.slice(open).some((entry) => worked(entry, id, OVER));
    })
    .map(({ name }) => name);
}

const UNDER = ['metal', 'timber', 'electrical'];
const OVER = ['paint', 'trim', 'assembly'];

function worked({ hours = [] }: Entry, part: string, kinds: readonly string[]): boolean {
  return hours.some((line) => line.part === part && kinds.includes(line.work));
}

function openOrders(record: CarRecord, { openOrders: orders }: Rollup): string[] {
  const names = namesOf(record);
  return orders.map(
    ({ what, vendor, ordered }) => `${what}, from ${names.vendor(vendor)}, ordered ${datedText(ordered)}`,
  );
}
