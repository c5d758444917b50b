// Every name that a file mentions: parts, lines, vendors, people, choices, pictures, kinds of work.

import type { Place } from './place.ts';
import { type CarRecord, type Entry, lineName, photoPath } from './record.ts';
import type { Refers } from './schema/fields.ts';

/** A name as written, what it refers to, its full name, and where it stands. */
export type Mention = { refers: Refers; name: string; written: string; place: Place; entry?: Entry };

/** All mentions of a record, in order of its files. */
export function mentions(record: CarRecord): Mention[] {
  const found: Mention[] = [];
  const note = (refers: Refers, written: string | undefined, place: Place, entry?: Entry, name = written) => {
    if (written === undefined || name === undefined || isUnread(record, refers, name)) return;
    found.push({ refers, name, written, place, ...(entry ? { entry } : {}) });
  };
  const at = (holder: { at: (path: (string | number)[]) => Place }, ...path: (string | number)[]) =>
    holder.at(path);
  for (const key of ['rates', 'pay'] as const) {
    record.shop[key]?.forEach((rule, i) => {
      note('person', rule.who, at(record.shop, key, i, 'who'));
      note('work', rule.work, at(record.shop, key, i, 'work'));
    });
  }
  for (const part of record.parts) {
    part.planned?.forEach((line, i) => {
      note('work', line.work, at(part, 'planned', i, 'work'));
      line.after?.forEach((after, j) => {
        note('line', after, at(part, 'planned', i, 'after', j), undefined, lineName(after, part.id));
      });
    });
  }
  for (const choice of record.choices) {
    choice.part.forEach((name, i) => {
      note('part', name, at(choice, 'part', i));
    });
    choice.options.forEach((option, i) => {
      option.lines.forEach((line, j) => {
        note('work', line.work, at(choice, 'options', i, 'lines', j, 'work'));
        note('vendor', line.from, at(choice, 'options', i, 'lines', j, 'from'));
      });
    });
  }
  for (const entry of record.entries) inEntry(entry, note);
  return found;
}

/** A name of a file that is there and couldn't be read: nothing can be said of it until it is mended. */
function isUnread({ unread }: CarRecord, refers: Refers, name: string): boolean {
  if (unread.size === 0) return false;
  if (refers === 'part') return unread.has(`parts/${name}.md`);
  if (refers === 'line') return unread.has(`parts/${name.split('/')[0]}.md`);
  return refers === 'choice' && unread.has(`choices/${name}.md`);
}

type Note = (refers: Refers, written: string | undefined, place: Place, entry?: Entry, name?: string) => void;

/** The keys of a line that mention something. */
const NAMED: readonly [key: string, refers: Refers][] = [
  ['part', 'part'],
  ['from', 'vendor'],
  ['work', 'work'],
  ['by', 'person'],
  ['choice', 'choice'],
  ['line', 'line'],
  ['file', 'photo'],
  ['photo', 'photo'],
];
const LISTS = [
  'hours',
  'bought',
  'outside',
  'ordered',
  'received',
  'returned',
  'measured',
  'pads',
  'marks',
  'sought',
  'finishes',
  'tested',
  'photos',
  'left',
  'fabric',
  'agreed',
] as const;

function inEntry(entry: Entry, note: Note): void {
  note('person', entry.by, entry.at(['by']), entry);
  for (const list of LISTS) {
    (entry[list] as Record<string, unknown>[] | undefined)?.forEach((line, i) => {
      for (const [key, refers] of NAMED) {
        const written = line[key];
        if (typeof written !== 'string') continue;
        const name =
          refers === 'line'
            ? lineName(written, line.part as string | undefined)
            : refers === 'photo'
              ? photoPath(written, entry.day)
              : written;
        note(refers, written, entry.at([list, i, key]), entry, name);
      }
    });
  }
  entry.finished?.forEach((line, i) => {
    note('line', line, entry.at(['finished', i]), entry);
  });
}
