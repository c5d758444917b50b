// Reads one text of a record by its schema: what is in it, and what is wrong with it.
import type { z } from 'zod';
import { type Body, readBody, withoutPlaces } from './body.ts';
import { type Path, type Split, splitFrontMatter } from './front-matter.ts';
import type { Place, Problem } from './place.ts';
import type { WrittenFile } from './record.ts';
import type { StatementSheet } from './schema/statement.ts';
import { shapeProblems } from './shape-problems.ts';
import { statementDigest } from './statement-digest.ts';
import { withoutWrong } from './without-wrong.ts';

/** What a text says, as far as it could be read, and its problems. Neither is changed by whoever gets it. */
export type ReadSheet = { sheet?: object; problems: readonly Problem[] };
/** Reads texts, and may remember them. */
export type SheetsRead = (written: WrittenFile, schema: z.ZodType) => ReadSheet;

/** Reads one file. Of a file with wrong fields, what is right is kept, so that it is still checked. */
export function readSheet({ file, text }: WrittenFile, schema: z.ZodType): ReadSheet {
  const split = splitFrontMatter(file, text);
  const words = readWords(file, split.body);
  const body = withoutPlaces(words.body);
  const problems = [...split.problems, ...words.problems];
  if (split.broken) return { problems };
  const doubt: PropertyKey[][] = split.problems.length > 0 ? [[]] : [];
  const read = schema.safeParse(split.values);
  if (read.success) {
    const said = { ...(read.data as object), ...digestRead(file, read.data, body) };
    return { sheet: { ...said, file, body, placeAt: split.at, ...wrongIn(doubt) }, problems };
  }
  const { issues } = read.error;
  const all = [...problems, ...shapeProblems(issues, split, schema)];
  const { values, at } = withoutWrong(split, issues);
  const again = schema.safeParse(values);
  if (!again.success) return { problems: all };
  const wrong = wrongIn([...doubt, ...issues.map(({ path }) => path)]);
  return { sheet: { ...(again.data as object), file, body, placeAt: at, ...wrong }, problems: all };
}

/**
 * The words of a file. Those of a statement repeat its figures, and no page is made of them: they get no tree, and are only
 * parsed where a sign of HTML is in them.
 */
function readWords(file: string, { markdown, line }: Split['body']): ReturnType<typeof readBody> {
  if (!file.startsWith('statements/') || markdown.includes('<')) return readBody(file, markdown, line);
  return { body: { markdown, line, tree: { type: 'root', children: [] } }, problems: [] };
}

/** The digest of a statement as it reads, worked out where it is read: what is kept of a text keeps it too. */
function digestRead(file: string, said: unknown, body: Body): { digestRead?: string } {
  if (!file.startsWith('statements/')) return {};
  return { digestRead: statementDigest({ ...(said as StatementSheet), body }) };
}

/** Remembers of each file the last two texts, such as that on the disk and that which is being written. */
export function sheetsRead(): SheetsRead {
  const known = new Map<string, { text: string; schema: z.ZodType; read: ReadSheet }[]>();
  return (written, schema) => {
    const last = known.get(written.file) ?? [];
    const same = last.find((one) => one.text === written.text && one.schema === schema);
    const read = same ?? { text: written.text, schema, read: readSheet(written, schema) };
    known.set(written.file, [read, ...last.filter((one) => one !== read)].slice(0, 2));
    return read.read;
  };
}

/** A sheet with nothing wrong in it, as it can be written down: plain values, and the places that were asked for. */
export type PlainSheet = { said: object; places: Map<string, Place> };

/** What was read, and its plain sheet; none where something is wrong with the text, or a value isn’t plain. */
export function plainSheet({ sheet, problems }: ReadSheet): { sheet: object; plain: PlainSheet } | undefined {
  if (!sheet || problems.length > 0) return undefined;
  const { placeAt, sure, ...said } = sheet as Sheet;
  if (!said.whole || !isPlain(said)) return undefined;
  const plain = { said, places: new Map<string, Place>() };
  return { plain, sheet: { ...said, placeAt: remembered(plain, placeAt), sure } };
}

/** The sheet of a text again. The text is only parsed where a place is asked for that nobody asked for before. */
export function sheetFrom(plain: PlainSheet, { file, text }: WrittenFile): object {
  let at: Sheet['placeAt'] | undefined;
  const parsed: Sheet['placeAt'] = (path) => {
    at ??= splitFrontMatter(file, text).at;
    return at(path);
  };
  return { ...plain.said, placeAt: remembered(plain, parsed), ...wrongIn([]) };
}

type Sheet = { placeAt: (path: Path) => Place; sure: unknown; whole: boolean };

function remembered({ places }: PlainSheet, at: Sheet['placeAt']): Sheet['placeAt'] {
  return (path) => {
    const name = JSON.stringify(path);
    const place = places.get(name) ?? at(path);
    places.set(name, place);
    return place;
  };
}

/** True of what comes back the same from a file: no functions, no classes. */
function isPlain(value: unknown): boolean {
  if (typeof value !== 'object' || value === null)
    return typeof value !== 'function' && typeof value !== 'symbol';
  if (Array.isArray(value)) return value.every(isPlain);
  return Object.getPrototypeOf(value) === Object.prototype && Object.values(value).every(isPlain);
}

/** Which top-level fields something was wrong in; a wrong place that isn't inside one may touch them all. */
function wrongIn(paths: readonly PropertyKey[][]): { whole: boolean; sure: (field: string) => boolean } {
  const wrong = new Set(paths.map(([field]) => field));
  return { whole: paths.length === 0, sure: (field) => !wrong.has(undefined) && !wrong.has(field) };
}
