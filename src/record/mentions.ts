// Every name that a file mentions: parts, lines, vendors, people, choices, pictures, kinds of work.
import type { Path } from './front-matter.ts';
import { once } from './once.ts';
import type { Place } from './place.ts';
import { type CarRecord, type Choice, type Entry, lineName, photoPath } from './record.ts';
import type { Refers } from './schema/fields.ts';

/** A name as written, what it refers to, its full name, and where it stands. */
export type Mention = {
  refers: Refers;
  name: string;
  written: string;
  readonly place: Place;
  entry?: Entry;
  choice?: Choice;
};

/** All mentions of a record, in order of its files; worked out once for a record. */
export const mentions: (record: CarRecord) => readonly Mention[] = once(everyMention);

type Holder = { placeAt: (path: Path) => Place };
type Note = (refers: Refers, holder: Holder, path: Path, written: string | undefined, part?: string) => void;

function everyMention(record: CarRecord): Mention[] {
  const found: Mention[] = [];
  const note: Note = (refers, holder, path, written, part) => {
    if (written === undefined) return;
    const entry = 'day' in holder ? (holder as Entry) : undefined;
    const choice = 'question' in holder ? (holder as Choice) : undefined;
    const name = fullName(refers, written, part, entry);
    if (isUnread(record, refers, name)) return;
    found.push(
      mention(refers, name, written, holder, path, { ...(entry && { entry }), ...(choice && { choice }) }),
    );
  };
  for (const key of ['rates', 'pay'] as const) {
    record.shop[key]?.forEach((rule, i) => {
      note('person', record.shop, [key, i, 'who'], rule.who);
      note('work', record.shop, [key, i, 'work'], rule.work);
    });
  }
  for (const part of record.parts) {
    part.planned?.forEach((line, i) => {
      note('work', part, ['planned', i, 'work'], line.work);
      line.after?.forEach((after, j) => {
        note('line', part, ['planned', i, 'after', j], after, part.id);
      });
    });
  }
  for (const choice of record.choices) {
    choice.part.forEach((name, i) => {
      note('part', choice, ['part', i], name);
    });
    choice.settles?.forEach((line, i) => {
      note('line', choice, ['settles', i], line, choice.part.length === 1 ? choice.part[0] : undefined);
    });
    choice.photos?.forEach((photo, i) => {
      note('photo', choice, ['photos', i], photo);
    });
    choice.options.forEach((option, i) => {
      option.lines.forEach((line, j) => {
        note('work', choice, ['options', i, 'lines', j, 'work'], line.work);
        note('vendor', choice, ['options', i, 'lines', j, 'from'], line.from);
      });
    });
  }
  for (const entry of record.entries) inEntry(entry, note);
  return found;
}

/** The place is looked up only when it is asked for: most names are known and never shown. */
function mention(
  refers: Refers,
  name: string,
  written: string,
  holder: Holder,
  path: Path,
  within: { entry?: Entry; choice?: Choice },
): Mention {
  return {
    refers,
    name,
    written,
    ...within,
    get place() {
      return holder.placeAt(path);
    },
  };
}

function fullName(
  refers: Refers,
  written: string,
  part: string | undefined,
  entry: Entry | undefined,
): string {
  if (refers === 'line') return lineName(written, part);
  return refers === 'photo' && entry ? photoPath(written, entry.day) : written;
}

/** A name of a file that is there and couldn't be read: nothing can be said of it until it is mended. */
function isUnread({ unread }: CarRecord, refers: Refers, name: string): boolean {
  if (unread.size === 0) return false;
  if (refers === 'part') return unread.has(`parts/${name}.md`);
  if (refers === 'line') return unread.has(`parts/${name.split('/')[0]}.md`);
  return refers === 'choice' && unread.has(`choices/${name}.md`);
}

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
  note('person', entry, ['by'], entry.by);
  for (const list of LISTS) {
    (entry[list] as Record<string, unknown>[] | undefined)?.forEach((line, i) => {
      const part = line.part as string | undefined;
      for (const [key, refers] of NAMED) {
        const written = line[key];
        if (typeof written === 'string') note(refers, entry, [list, i, key], written, part);
      }
    });
  }
  entry.finished?.forEach((line, i) => {
    note('line', entry, ['finished', i], line);
  });
}
