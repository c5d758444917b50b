// What is wrong with one line before it is written: its fields by the schema, its names by the record.
import { plannedLines } from '../checks/planned-lines.ts';
import { splitFrontMatter } from '../front-matter.ts';
import { didYouMean } from '../nearest.ts';
import { once } from '../once.ts';
import type { Problem } from '../place.ts';
import { type CarRecord, lineName } from '../record.ts';
import { entrySheet } from '../schema/entry.ts';
import { inRecord, type Refers } from '../schema/fields.ts';
import { sheets } from '../schema/sheets.ts';
import { said } from '../schema-at.ts';
import { shapeProblems } from '../shape-problems.ts';
import { WORK } from '../words.ts';
import { isKeys, type Keys, type Value } from './edit.ts';
import { type Shape, within } from './key-order.ts';
import { keysText } from './value-text.ts';

/** A line of a list as a sentence for each mistake: what was written, what was expected, the mend. None when it is right. */
export function lineProblems(list: string, line: Value, record: CarRecord): string[] {
  const wrong = wrongIn(list, line, record);
  return wrong.length > 0
    ? wrong.map(({ reason, mend }) => sentence(reason, mend))
    : unknownNames(list, line, record);
}

/** What is wrong with a line that isn’t finished yet: what it lacks isn’t told. */
export function problemsSoFar(list: string, line: Keys, record: CarRecord): string[] {
  const wrong = wrongIn(list, line, record).filter(({ rule }) => rule !== 'missing-key');
  return wrong.length > 0
    ? wrong.map(({ reason, mend }) => sentence(reason, mend))
    : unknownNames(list, line, record);
}

/** A line as the record reads it; nothing when something is wrong with it. */
export function readLine(
  list: string,
  line: Keys,
  record: CarRecord,
): Readonly<Record<string, unknown>> | undefined {
  const read = sheetOf(record).safeParse(alone(list, line));
  const [only] = read.success ? ((read.data as Record<string, unknown[]>)[list] ?? []) : [];
  return only as Readonly<Record<string, unknown>> | undefined;
}

function wrongIn(list: string, line: Value, record: CarRecord): Problem[] {
  const sheet = sheetOf(record);
  // Of ten thousand rows most are right, and then nothing has to be written out to say where it isn't.
  if (sheet.safeParse(alone(list, line)).success) return [];
  const split = splitFrontMatter('', `---\n${keysText({ [list]: [line] }, sheet, 0)}\n---\n`);
  const read = sheet.safeParse(split.values);
  return [...split.problems, ...(read.success ? [] : shapeProblems(read.error.issues, split, sheet))];
}

/** The names that a field may hold, for a line about a part; nothing where it holds no name of the record. */
export function knownNames(refers: Refers, record: CarRecord, part?: string): Set<string> | undefined {
  switch (refers) {
    case 'part':
      return new Set(record.parts.map(({ id }) => id));
    case 'vendor':
      return new Set((record.shop.vendors ?? []).map(({ id }) => id));
    case 'person':
      return new Set(record.shop.people.map(({ id }) => id));
    case 'work':
      return new Set<string>([...WORK, ...(record.shop.work ?? [])]);
    case 'choice':
      return new Set(record.choices.map(({ id }) => id));
    case 'line': {
      const all = [...plannedLines(record).keys()];
      const own = all
        .filter((name) => name.startsWith(`${part}/`))
        .map((name) => name.slice(`${part}/`.length));
      return new Set([...own, ...all]);
    }
    case 'photo':
      return undefined;
  }
}

/** What kind of name a field of a line holds; without a key, the line is the name itself. */
export function refersTo(list: string, key?: string, line: Keys = {}): Refers | undefined {
  const item = within(within(sheets.entry, list), 0);
  return refersOf(key === undefined ? item : within(item, key, line));
}

function refersOf(field: Shape): Refers | undefined {
  const { innerType } = (field?.def ?? {}) as { innerType?: Shape };
  const { refers } = said(field) as { refers?: Refers };
  return refers ?? (innerType && refersOf(innerType));
}

function unknownNames(list: string, line: Value, record: CarRecord): string[] {
  if (!isKeys(line)) {
    return typeof line === 'string' ? unknownName(refersTo(list, undefined), line, record, undefined) : [];
  }
  const part = typeof line.part === 'string' ? line.part : undefined;
  return Object.entries(line).flatMap(([key, value]) =>
    typeof value === 'string' ? unknownName(refersTo(list, key, line), value, record, part) : [],
  );
}

const NAMED: Record<Refers, string> = {
  part: 'part of this record',
  line: 'planned line of this record',
  vendor: 'vendor in shop.md',
  person: 'person in shop.md',
  choice: 'choice of this record',
  work: 'kind of work here',
  photo: 'picture',
};

function unknownName(
  refers: Refers | undefined,
  written: string,
  record: CarRecord,
  part: string | undefined,
): string[] {
  const known = refers && knownNames(refers, record, part);
  if (!refers || !known) return [];
  const name = refers === 'line' ? lineName(written, part) : written;
  if (known.has(name)) return [];
  return [sentence(`\`${written}\` is no ${NAMED[refers]}.`, didYouMean(written, known))];
}

/** An entry’s values with nothing but the line, as they are read from a file. */
const alone = (list: string, line: Value) => ({
  [list]: [isKeys(line) ? { ...line, place: { file: '', line: 1, column: 1 } } : line],
});

const sentence = (reason: string, mend: string | undefined) => (mend ? `${reason} ${mend}` : reason);

/** The schema in the record’s own currency and units. */
const sheetOf = once(({ currency, units }: CarRecord) => entrySheet(inRecord(currency, units)));
