// What is asked of every problem, whatever was read: a place that is there, and whole sentences.
import type { Problem } from '../../src/record/place.ts';

/** Texts by file; a file without a text is there and can't be read, or is a picture. */
export type Texts = ReadonlyMap<string, string | undefined>;

/** Letters of the longest sentence: one that lists all keys of a line. */
const LONGEST = 1300;

/** What is wrong with problems, a line each; none is as it should be. */
export function unsound(problems: readonly Problem[], texts: Texts): string[] {
  return problems.flatMap((problem) => {
    const said = [problem.reason, ...(problem.mend === undefined ? [] : [problem.mend])];
    const wrong = [
      ...[problem.place, ...(problem.related ?? [])].flatMap((place) =>
        misplaced(place, problem.rule, texts),
      ),
      ...said.filter((words) => words.length > LONGEST).map((words) => `too long: ${words.slice(0, 80)}`),
      ...said.filter((words) => !isSentence(words)).map((words) => `no sentence: ${JSON.stringify(words)}`),
    ];
    return wrong.map((why) => `${problem.rule}: ${why}`);
  });
}

function misplaced({ file, line, column }: Problem['place'], rule: string, texts: Texts): string[] {
  // A file that is missing is named all the same.
  if (!texts.has(file) && rule !== 'file-missing') return [`no file ${file}`];
  const lines = linesOf(texts.get(file) ?? '');
  return [
    ...(Number.isInteger(line) && line >= 1 && line <= lines ? [] : [`line ${line} of ${lines} in ${file}`]),
    ...(Number.isInteger(column) && column >= 1 ? [] : [`column ${column} in ${file}`]),
  ];
}

/** Counted once for each text: one may have a hundred thousand lines, and as many mistakes. */
const counted = new Map<string, number>();
function linesOf(text: string): number {
  const known = counted.get(text) ?? text.split(/\r\n?|\n/).length;
  counted.clear();
  counted.set(text, known);
  return known;
}

/** Begins with a capital, a sign or a quoted name, ends with a stop; one line, and nothing of a stack. */
function isSentence(words: string): boolean {
  const stack = /\n|\bat .+\.(?:ts|js):\d+|\b(?:undefined|NaN|\[object Object\])\b/;
  return /^[\p{Lu}\p{Sc}\d`“−-].*[.?…]$/u.test(words) && !stack.test(words.replace(/`[^`]*`/g, '``'));
}
