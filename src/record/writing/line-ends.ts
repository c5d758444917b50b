// Edits are worked out on text with plain line ends, and put into the text as it came: with its own line ends, and
// with the mark that some editors begin a file with.
import { type Splice, spliced } from './splice.ts';

/** The text as the record reads it: `\n` ends every line, and no mark stands before it. */
export function plainLines(text: string): string {
  return text.replace(/^\uFEFF/, '').replaceAll('\r\n', '\n');
}

/** Puts pieces that were worked out on the plain text into the text as it came. */
export function splicedInto(original: string, splices: readonly Splice[]): string {
  const offset = offsets(original);
  return spliced(
    original,
    splices.map(({ from, to, text }) => ({
      from: offset(from),
      to: offset(to),
      text: text.replaceAll('\n', lineEndNear(original, offset(from))),
    })),
  );
}

/** For an offset of the plain text, the same place in the original. */
function offsets(original: string): (plain: number) => number {
  const mark = original.startsWith('\uFEFF') ? 1 : 0;
  const returns = [...original.matchAll(/\r(?=\n)/g)].map(({ index }, i) => index - mark - i);
  return (plain) => plain + mark + returns.filter((at) => at < plain).length;
}

/** The line end of the line before a place, else of the one that it is on. */
function lineEndNear(text: string, at: number): string {
  const before = text.lastIndexOf('\n', at - 1);
  const end = before >= 0 ? before : text.indexOf('\n');
  return end > 0 && text[end - 1] === '\r' ? '\r\n' : '\n';
}
