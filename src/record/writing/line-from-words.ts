// Reads a line as a person says it in one breath: `cowl metal 2h 30m; left corner cut out`. Pieces are divided by
// semicolons. What a line is mainly about comes first and needs no key; every other piece begins with its key.
import { splitFrontMatter } from '../front-matter.ts';
import { didYouMean } from '../nearest.ts';
import type { CarRecord } from '../record.ts';
import { sheets } from '../schema/sheets.ts';
import { bare } from '../schema-at.ts';
import type { Keys, Value } from './edit.ts';
import { holdsWords, isTextOrList, keyOrder, type Shape, within } from './key-order.ts';
import { leadWords } from './lead-words.ts';
import { LEADS, type Lead } from './leads.ts';

/** A line, or a sentence that says what wasn’t understood. */
export type SaidLine = { line: Keys } | { wrong: string };

/** Reads a line of a list whose lines are sets of keys. Whether names and figures are right isn’t looked at here. */
export function lineFromWords(list: string, said: string, record: CarRecord): SaidLine {
  const [first = '', ...others] = piecesOf(said);
  const lead: Partial<Lead> = LEADS[list] ?? {};
  const item = within(within(sheets.entry, list), 0);
  const begun = named(first, item, {}, true) ?? leadOf(first, list, record);
  if ('wrong' in begun) return begun;
  let line: Keys = begun.line;
  let second = lead.second;
  for (const piece of others) {
    const more = named(piece, item, line, false);
    if (more) {
      const twice = Object.keys(more.line).find((key) => line[key] !== undefined);
      if (twice !== undefined) return { wrong: `\`${twice}\` is said twice in \`${said}\`.` };
      line = { ...line, ...more.line };
    } else if (second !== undefined && line[second] === undefined) {
      line = { ...line, [second]: saidValue(piece, within(item, second, line)) };
      second = undefined;
    } else return { wrong: noKey(piece, keysOf(item, line)) };
  }
  return { line };
}

/** The names in a row of names, for `finished`. */
export function namesFromWords(said: string): string[] {
  return said.split(/[\s,;]+/).filter((name) => name !== '');
}

/** A field’s value as it is said: a list where the field holds several, else the words as they are, whatever they begin with. */
export function saidValue(said: string, field: Shape): Value {
  const text = said.trim();
  if (holdsWords(field) && !isTextOrList(field)) return text;
  if (/^[[{]/.test(text)) {
    const { values, problems } = splitFrontMatter('', `---\nk: ${text}\n---\n`);
    if (problems.length === 0 && typeof values.k === 'object') return withoutPlace(values.k);
  }
  const type = field && bare(field).type;
  if (type === 'array') return text.split(/\s*,\s*|\s+\+\s+/);
  // Low, likely, high.
  if (type === 'pipe' && /,\s/.test(text)) return text.split(/\s*,\s+/);
  return text;
}

function leadOf(first: string, list: string, record: CarRecord): SaidLine {
  const { first: key, words } = LEADS[list] ?? {};
  if (words) return leadWords(first, list, record);
  return first === '' || key === undefined ? { line: {} } : { line: { [key]: first } };
}

/** A piece that begins with a key of the line; the first piece only where a sign follows the key. */
function named(piece: string, item: Shape, line: Keys, first: boolean): { line: Keys } | undefined {
  for (const key of keysOf(item, line).toSorted((a, b) => b.length - a.length)) {
    if (!piece.startsWith(key)) continue;
    const rest = piece.slice(key.length);
    if (rest === '' && !first && isYes(within(item, key, line))) return { line: { [key]: 'true' } };
    const value = (first ? /^\s*[:=]\s*(.+)$/s : /^(?:\s*[:=]\s*|\s+)(.+)$/s).exec(rest)?.[1];
    if (value !== undefined) return { line: { [key]: saidValue(value, within(item, key, line)) } };
  }
  return undefined;
}

/** The keys that may be written; a line’s place is worked out. */
const keysOf = (item: Shape, line: Keys) => keyOrder(item, line).filter((key) => key !== 'place');

/** A field that is said or left out. */
function isYes(field: Shape): boolean {
  if (!field) return false;
  const inner = bare(field) as { type: string; in?: Shape; entries?: Record<string, string> };
  if (inner.type === 'pipe') return isYes(inner.in);
  return Object.keys(inner.entries ?? {}).join() === 'true';
}

/** Two semicolons are one that belongs to the words. */
function piecesOf(said: string): string[] {
  return said
    .replaceAll(';;', '\0')
    .split(';')
    .map((piece) => piece.replaceAll('\0', ';').trim())
    .filter((piece, at) => at === 0 || piece !== '');
}

function noKey(piece: string, keys: readonly string[]): string {
  const [begins = ''] = piece.split(/[\s:=]/);
  const mend =
    didYouMean(begins, keys) ?? `Known here: ${[...new Set(keys)].map((key) => `\`${key}\``).join(', ')}.`;
  return `\`${piece}\` begins with no key of this line. ${mend} A semicolon that belongs to the words is written \`;;\`.`;
}

function withoutPlace(value: unknown): Value {
  return JSON.parse(
    JSON.stringify(value, (key, inner: unknown) => (key === 'place' ? undefined : inner)),
  ) as Value;
}
