// An entry as it would be after what was done to it at the desk: the least change, by the same engine as the log’s.
import { splitFrontMatter } from '../record/front-matter.ts';
import { sheets } from '../record/schema/sheets.ts';
import { type Added, addedToEntry } from '../record/writing/add-to-entry.ts';
import { changedText } from '../record/writing/change.ts';
import { type Edit, isKeys, isList, type Keys, type Value } from '../record/writing/edit.ts';
import { within } from '../record/writing/key-order.ts';
import { saidValue } from '../record/writing/line-from-words.ts';
import { withoutPlaces } from '../record/writing/read-back.ts';
import type { DeskLine, Form } from './browser/told.ts';
import { fieldText, linesOf, lineText } from './field-text.ts';

/**
 * The text of the entry; that of a new one begins empty. Lists that the form doesn’t hold stay as they are; a line
 * that it doesn’t hold any more is taken out. Nothing when the entry can’t be changed safely.
 */
export function entryAfter(before: string, form: Pick<Form, 'by' | 'lists' | 'words'>): string | undefined {
  const split = splitFrontMatter('', before);
  if (split.broken) return undefined;
  const values = withoutPlaces(split.values);
  const text = changedText(before, editsFor(values, split.body.markdown, before, form), sheets.entry);
  return text === undefined ? undefined : addedToEntry(text, addedBy(form, before === ''));
}

/** The line that a form’s line stands for, as it would be written. */
export function asValue(list: string, line: DeskLine['line']): Value {
  if (typeof line === 'string') return line.trim();
  const item = within(within(sheets.entry, list), 0);
  return Object.fromEntries(
    Object.entries(line).flatMap(([key, text]): [string, Value][] =>
      text.trim() === '' ? [] : [[key, key === 'kind' ? text : saidValue(text, within(item, key, line))]],
    ),
  );
}

/** A line that nothing was said in yet. */
export function isBlank(line: DeskLine['line']): boolean {
  return (typeof line === 'string' ? [line] : Object.values(line)).every((text) => text.trim() === '');
}

function editsFor(
  values: Keys,
  body: string,
  before: string,
  { by, lists, words }: Parameters<typeof entryAfter>[1],
): Edit[] {
  const edits: Edit[] = [];
  const had = fieldText(values.by);
  if (had !== '' && by !== had) edits.push(by === '' ? { remove: ['by'] } : { set: ['by'], value: by });
  for (const [list, lines] of Object.entries(lists)) edits.push(...listEdits(values, list, lines));
  return before === '' ? edits : [...edits, ...wordEdits(body, words)];
}

/** A paragraph behind the others leaves them as they are; the browser has its own line ends. */
function wordEdits(body: string, said: string): Edit[] {
  const [old, now] = [body, said].map((text) => text.replaceAll(/\r\n?/g, '\n').trim()) as [string, string];
  if (now === old) return [];
  const more = old !== '' && now.startsWith(old) ? now.slice(old.length) : '';
  return [/^\s*\n\s*\n/.test(more) ? { append: more.trim() } : { words: now }];
}

/** Changes first, then what is taken out, from the end: so every place is still what it was. */
function listEdits(values: Keys, list: string, lines: readonly DeskLine[]): Edit[] {
  const there = linesOf(values, list);
  const kept = new Map(
    lines.flatMap(({ at, line }) => (at === undefined || isBlank(line) ? [] : [[at, line]])),
  );
  const path = (at: number) => (isList(values[list]) ? [list, at] : [list]);
  const changed = there.flatMap((was, at) => {
    const line = kept.get(at);
    return line === undefined ? [] : lineEdits(list, path(at), was, line);
  });
  const gone = there.flatMap((_, at): Edit[] => (kept.has(at) ? [] : [{ remove: path(at) }]));
  return [...changed, ...gone.reverse()];
}

function lineEdits(
  list: string,
  path: readonly (string | number)[],
  was: Value,
  line: DeskLine['line'],
): Edit[] {
  const shown = lineText(was);
  if (typeof line === 'string' || typeof shown === 'string' || !isKeys(was))
    return line === shown ? [] : [{ set: [...path], value: asValue(list, line) }];
  const item = within(within(sheets.entry, list), 0);
  const keys = [...new Set([...Object.keys(shown), ...Object.keys(line)])];
  return keys.flatMap((key): Edit[] => {
    const [old = '', now = ''] = [shown[key], line[key]];
    if (now === old) return [];
    if (now.trim() === '') return was[key] === undefined ? [] : [{ remove: [...path, key] }];
    return [{ set: [...path, key], value: saidValue(now, within(item, key, line)) }];
  });
}

function addedBy({ by, lists, words }: Parameters<typeof entryAfter>[1], isNew: boolean): Added {
  const fresh = Object.entries(lists).map(([list, lines]): [string, Value[]] => [
    list,
    lines.flatMap(({ at, line }) => (at !== undefined || isBlank(line) ? [] : [asValue(list, line)])),
  ]);
  return {
    lists: Object.fromEntries(fresh.filter(([, lines]) => lines.length > 0)),
    ...(by === '' ? {} : { by }),
    ...(isNew && words.trim() !== '' ? { words } : {}),
  };
}
