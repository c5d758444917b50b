// What a person wrote, cut to a length that can be read in a message.
import type { Problem } from './place.ts';

/** A value in a message, in letters. */
const MOST_OF_A_VALUE = 60;
/** A quote, such as the name of a file with its folders. */
const MOST_OF_A_QUOTE = 160;
/** A whole sentence: more is no sentence. */
const MOST_OF_A_SENTENCE = 1200;

/** What was cut already keeps its length. */
const CUT = /… \([\d,]+ letters\)$/;

/** A text as far as it can be read in a message; one that is cut far says how long it is: `xxx… (990,000 letters)`. */
export function short(text: string, most = MOST_OF_A_VALUE): string {
  if (text.length <= most || (text.length < 2 * most && CUT.test(text))) return text;
  const length = text.length > 4 * most ? ` (${text.length.toLocaleString('en-US')} letters)` : '';
  return `${head(text, most - 3)}…${length}`;
}

/** A problem whose sentences quote no more than can be read, whichever check made them. */
export function shortened(problem: Problem): Problem {
  const reason = shortSentence(problem.reason);
  return problem.mend === undefined
    ? { ...problem, reason }
    : { ...problem, reason, mend: shortSentence(problem.mend) };
}

/** A sentence whose quotes, and which itself, are no longer than can be read. */
export function shortSentence(text: string): string {
  if (text.length <= MOST_OF_A_QUOTE) return text;
  const quoted = text.replace(/`([^`]+)`/g, (_, quote: string) => `\`${short(quote, MOST_OF_A_QUOTE)}\``);
  return quoted.length <= MOST_OF_A_SENTENCE ? quoted : `${head(quoted, MOST_OF_A_SENTENCE)}…`;
}

/** The beginning of a text. No sign of two halves is cut through. */
function head(text: string, length: number): string {
  return text.slice(0, length).replace(/[\ud800-\udbff]$/, '');
}
