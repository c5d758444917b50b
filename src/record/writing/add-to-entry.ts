// Adds what a day brought to its entry, however it was asked for: the same lines give the same text.
import { readMinutes, writtenTime } from '../../figures/hours.ts';
import { splitFrontMatter } from '../front-matter.ts';
import { sheets } from '../schema/sheets.ts';
import { changedText } from './change.ts';
import { type Edit, isKeys, isList, type Keys, type Value } from './edit.ts';
import { inOrder } from './key-order.ts';
import { withoutPlaces } from './read-back.ts';

/** What is added: lines by the key of their list (`hours`, `finished` …), who worked, and words for the end. */
export type Added = {
  by?: string;
  lists: { readonly [list: string]: readonly Value[] };
  words?: string;
};

/**
 * The entry with what is added to it; the text of a new one begins empty. A picture that is listed already gets the
 * words that it lacks. Nothing when the entry can’t be changed safely.
 */
export function addedToEntry(text: string, added: Added): string | undefined {
  const split = splitFrontMatter('', text);
  if (split.broken) return undefined;
  const values = withoutPlaces(split.values);
  const edits: Edit[] = byEdits(values, added.by);
  const lists = ofPerson(values, added);
  for (const list of inOrder(sheets.entry, lists)) {
    edits.push(...listEdits(list, values[list], (lists[list] as readonly Value[]).map(asWritten)));
  }
  if (added.words !== undefined && added.words.trim() !== '') edits.push({ append: added.words });
  return changedText(text, edits, sheets.entry);
}

/** True when there is nothing to add. */
export function isNothing({ lists, words = '' }: Added): boolean {
  return words.trim() === '' && Object.values(lists).every((lines) => lines.length === 0);
}

/** The day’s person stands above lines that don’t name one; an entry that has hours already isn’t given one. */
function byEdits(values: Keys, by: string | undefined): Edit[] {
  return by === undefined || values.by !== undefined || values.hours !== undefined
    ? []
    : [{ set: ['by'], value: by }];
}

function ofPerson(values: Keys, { by, lists }: Added): Keys {
  const stands = values.by ?? (values.hours === undefined ? by : undefined);
  if (by === undefined || stands === by || !lists.hours) return lists;
  return { ...lists, hours: lists.hours.map((line) => (isKeys(line) ? { by, ...line } : line)) };
}

function listEdits(list: string, there: Value | undefined, lines: readonly Value[]): Edit[] {
  if (list === 'photos' && isList(there)) return lines.flatMap((line) => photoEdits(there, line));
  if (lines.length === 0) return [];
  if (there !== undefined && there !== null) return lines.map((item) => ({ add: [list], item }));
  const [only] = lines;
  // A note alone stands behind its key.
  return [
    { set: [list], value: list === 'shop-only' && lines.length === 1 && only !== undefined ? only : lines },
  ];
}

function photoEdits(there: readonly Value[], line: Value): Edit[] {
  const at = there.findIndex((one) => isKeys(one) && isKeys(line) && one.file === line.file);
  const known = there[at];
  if (!isKeys(known) || !isKeys(line)) return [{ add: ['photos'], item: line }];
  return inOrder(undefined, line)
    .filter((key) => known[key] === undefined && line[key] !== null)
    .map((key) => ({ set: ['photos', at, key], value: line[key] ?? null }));
}

/** Times are written one way, however they were given. */
function asWritten(line: Value): Value {
  if (!isKeys(line) || typeof line.time !== 'string') return line;
  const time = readMinutes(line.time);
  return time.ok ? { ...line, time: writtenTime(time.value) } : line;
}
