// Changes a file of the record with the least change: every line that isn’t meant stays as it was, byte for byte.
// What was written is read back; when it doesn’t say exactly what was meant, nothing is changed.
import type { z } from 'zod';
import { splitFrontMatter } from '../front-matter.ts';
import { type Edit, editedValues, type Keys } from './edit.ts';
import { inFront } from './in-front.ts';
import { plainLines, splicedInto } from './line-ends.ts';
import { says, withoutPlaces } from './read-back.ts';
import type { Splice } from './splice.ts';
import { keysText } from './value-text.ts';
import { appendWords, replaceWords } from './words.ts';

/**
 * The text after these edits, one after the other; a new file is made of an empty text. Keys that are new stand in
 * the order of the schema. Nothing when the front matter can’t be read, or is written in a way that can’t be changed
 * safely.
 */
export function changedText(original: string, edits: readonly Edit[], schema: z.ZodType): string | undefined {
  let text: string | undefined = original;
  for (const edit of edits) text = text === undefined ? undefined : changedOnce(text, edit, schema);
  return text;
}

function changedOnce(original: string, edit: Edit, schema: z.ZodType): string | undefined {
  const was = splitFrontMatter('', original);
  if (was.broken) return undefined;
  const values = withoutPlaces(was.values);
  const wanted = editedValues(values, edit);
  if (wanted === undefined) return undefined;
  const text = plainLines(original);
  const front = frontOf(text);
  const splices =
    'append' in edit || 'words' in edit
      ? inWords(text, front?.body ?? 0, edit)
      : front
        ? inFront(front.yaml, edit, values, wanted, schema)?.map(movedBy(front.from))
        : newFront(text, wanted, schema);
  if (!splices) return undefined;
  const changed = splicedInto(original, splices);
  return says(splitFrontMatter('', changed), wanted, was, edit) ? changed : undefined;
}

/** Where front matter stands: its YAML from its first line on, whole lines, and where the words begin behind it. */
type Front = { from: number; yaml: string; body: number };

function frontOf(text: string): Front | undefined {
  if (!/^---(?!-)/.test(text)) return undefined;
  const from = text.indexOf('\n') + 1;
  const close = text.indexOf('\n---', 3) + 1;
  if (from === 0 || close === 0) return undefined;
  const body = text.indexOf('\n', close) + 1 || text.length;
  return { from, yaml: text.slice(from, Math.max(from, close)), body };
}

const movedBy = (by: number) => (splice: Splice) => ({
  ...splice,
  from: splice.from + by,
  to: splice.to + by,
});

function newFront(text: string, wanted: Keys, schema: z.ZodType): Splice[] | undefined {
  if (/^---/.test(text)) return undefined;
  const gap = text === '' || text.startsWith('\n') ? '' : '\n';
  return [{ from: 0, to: 0, text: `---\n${keysText(wanted, schema, 0)}\n---\n${gap}` }];
}

function inWords(text: string, body: number, edit: { append: string } | { words: string }): Splice[] {
  const words = plainLines('append' in edit ? edit.append : edit.words);
  // Without front matter, words that begin with dashes would be read as such.
  const opened = body === 0 && text === '' && words.startsWith('---') ? '---\n---\n\n' : '';
  if (opened) return [{ from: 0, to: 0, text: `${opened}${words.trimEnd()}\n` }];
  return 'append' in edit ? appendWords(text, body, words) : replaceWords(text, body, words);
}
