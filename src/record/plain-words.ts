// Words in which no sign has a meaning in Markdown: paragraphs, which most days are. They need no parser, which would take
// a fifth of the time in which a record is read.
import type { Paragraph, Root } from 'mdast';

/**
 * Lines that begin with a letter, or a number that opens no list, end in a sign and hold none that CommonMark or GFM reads
 * as anything but itself.
 */
const PLAIN =
  /^\n*(?:(?!\d{1,9}[.)](?:[ \n]|$))[\p{L}\d](?:[^\p{Cc}\\`*_[\]<>&|~@#]*[^\p{Cc}\s\\`*_[\]<>&|~@#])?(?:\n+|$))*$/u;
/** Addresses that GFM links though they are only written out. */
const LINKED = /www|http/i;

/** Letters of the longest words that are looked through: millions would fill the stack of the search. */
const LONGEST = 100_000;

/** The tree of such words, as a parser gives it, places and all; nothing where a sign might have a meaning. */
export function plainWords(markdown: string): Root | undefined {
  if (markdown.length > LONGEST || !PLAIN.test(markdown) || LINKED.test(markdown)) return undefined;
  const children: Paragraph[] = [];
  let at = { line: 1, column: 1, offset: 0 };
  for (const [piece] of markdown.matchAll(/\n\n+|^\n|\n$|(?:[^\n]|\n(?!\n|$))+/g)) {
    const start = at;
    const lines = piece.split('\n');
    const last = lines.at(-1)?.length ?? 0;
    at = {
      line: start.line + lines.length - 1,
      column: lines.length > 1 ? last + 1 : start.column + last,
      offset: start.offset + piece.length,
    };
    if (lines.every((line) => line === '')) continue;
    const position = { start: { ...start }, end: { ...at } };
    const text = { type: 'text' as const, value: piece, position };
    const own = { start: { ...start }, end: { ...at } };
    children.push({ type: 'paragraph', children: [text], position: own });
  }
  return { type: 'root', children, position: { start: { line: 1, column: 1, offset: 0 }, end: at } };
}
