// Reads one text of a record by its schema: what is in it, and what is wrong with it.
import type { z } from 'zod';
import { readBody } from './body.ts';
import { splitFrontMatter } from './front-matter.ts';
import type { Problem } from './place.ts';
import type { WrittenFile } from './record.ts';
import { shapeProblems } from './shape-problems.ts';
import { withoutWrong } from './without-wrong.ts';

/** What a text says, as far as it could be read, and its problems. Neither is changed by whoever gets it. */
export type ReadSheet = { sheet?: object; problems: readonly Problem[] };
/** Reads texts, and may remember them. */
export type SheetsRead = (written: WrittenFile, schema: z.ZodType) => ReadSheet;

/** Reads one file. Of a file with wrong fields, what is right is kept, so that it is still checked. */
export function readSheet({ file, text }: WrittenFile, schema: z.ZodType): ReadSheet {
  const split = splitFrontMatter(file, text);
  const { body, problems: inBody } = readBody(file, split.body.markdown, split.body.line);
  const problems = [...split.problems, ...inBody];
  if (split.broken) return { problems };
  const doubt: PropertyKey[][] = split.problems.length > 0 ? [[]] : [];
  const read = schema.safeParse(split.values);
  if (read.success) {
    const sheet = { ...(read.data as object), file, body, placeAt: split.at, ...wrongIn(doubt) };
    return { sheet, problems };
  }
  const { issues } = read.error;
  const all = [...problems, ...shapeProblems(issues, split, schema)];
  const { values, at } = withoutWrong(split, issues);
  const again = schema.safeParse(values);
  if (!again.success) return { problems: all };
  const wrong = wrongIn([...doubt, ...issues.map(({ path }) => path)]);
  return { sheet: { ...(again.data as object), file, body, placeAt: at, ...wrong }, problems: all };
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

/** Which top-level fields something was wrong in; a wrong place that isn't inside one may touch them all. */
function wrongIn(paths: readonly PropertyKey[][]): { whole: boolean; sure: (field: string) => boolean } {
  const wrong = new Set(paths.map(([field]) => field));
  return { whole: paths.length === 0, sure: (field) => !wrong.has(undefined) && !wrong.has(field) };
}
