// Front matter that would be read as words, so that its hours and bills would be lost without a sign.
import type { Problem } from './place.ts';
import { sheets } from './schema/sheets.ts';
import { bare } from './schema-at.ts';

/** Keys that a file of a record may begin with. */
const KEYS = new Set(Object.values(sheets).flatMap((sheet) => Object.keys(bare(sheet).shape ?? {})));

/** What stands in place of the line of dashes, or around a line of them: `\u2014`, `----`, ` ---`, `+++`. */
const OPENING = /^[\s\ufeff]*[-\u2010-\u2015=+~*_#\s]+$/;

/**
 * What of a text was meant as front matter and isn't, and the marks of two versions that were put together. `body` is the
 * line in which the words begin.
 */
export function lostFrontMatter(file: string, text: string, body: number): Problem[] {
  const about = (line: number) =>
    ({ rule: 'front-matter', severity: 'error', place: { file, line, column: 1 } }) as const;
  const lines = text.split('\n', 5000);
  const marked = lines.findIndex((line) => /^(?:<{7}|>{7})(?: |$)/.test(line));
  const merged: Problem[] =
    marked < 0
      ? []
      : [
          {
            ...about(marked + 1),
            reason: 'Two versions of this file were put together here, and neither was chosen.',
            mend: 'Keep the lines that are right, and take out those that begin with `<<<<<<<`, `=======` and `>>>>>>>`.',
          },
        ];
  // Without any front matter the words begin at the top; else a second one may follow the first.
  const top = body <= 1 ? lines.findIndex((line) => line.trim() !== '' && !OPENING.test(line)) : -1;
  const second = lines.findIndex(
    (line, i) => i + 1 >= body && /^---[ \t]*$/.test(line) && keyOf(lines[i + 1]) !== undefined,
  );
  const first = keyOf(lines[top]) === undefined ? second + 1 : top;
  const key = keyOf(lines[first]);
  if (key === undefined || (first !== top && second < 0)) return merged;
  return [
    ...merged,
    {
      ...about(first + 1),
      reason: `\`${key}\` would be read as words: a file has one front matter, which begins with a line \`---\` at the very top.`,
      mend: 'Put all keys between a first line `---` and another one after the last key.',
    },
  ];
}

/** The key that a line begins with, when a file of a record may have it. */
function keyOf(line = ''): string | undefined {
  const key = /^[\s\ufeff]*([a-z][a-z-]*)[ \t]*:(?:\s|$)/.exec(line)?.[1];
  return key !== undefined && KEYS.has(key) ? key : undefined;
}
