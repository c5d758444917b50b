// Signs that aren't seen, or that turn what is seen: in a message they are written out, so that a terminal does nothing
// of its own and a writer sees what stands in the way.

/** Control signs but the line's end; signs that turn the direction of writing; signs without a width; odd line ends. */
const UNSEEN =
  /[\p{Cc}\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]|\p{Cs}/gu;

/** A joiner between two pictures makes one of them. */
const JOINED = /\p{Extended_Pictographic}\ufe0f?\p{Emoji_Modifier}?$/u;

/** Spaces that aren't the plain one, such as a word processor puts in. */
const ODD_SPACES = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g;

/** `\u{202e}` in place of a sign that can't be seen. Line ends stay. */
export function visible(text: string): string {
  return text.replace(UNSEEN, (sign, at: number) => {
    if (sign === '\n' || (sign === '\u200d' && JOINED.test(text.slice(Math.max(0, at - 6), at)))) return sign;
    return writtenOut(sign);
  });
}

/** The same of a message; what it quotes shows odd spaces too. A quote stays in its line. */
export function visibleMessage(text: string): string {
  return visible(
    text.replace(/`[^`]*`/g, (quote) => quote.replace(ODD_SPACES, writtenOut).replaceAll('\n', '\\n')),
  );
}

const writtenOut = (sign: string) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;
