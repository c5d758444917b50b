// Which letters the book's fonts have. A letter that one of them hasn't would be printed as an empty box, which no
// later reader could undo: it is printed as its number instead, and told of.

/** Whether every font has a letter, by its code point. Read from their `cmap` tables (ISO/IEC 14496-22). */
export function lettersOf(fonts: Iterable<Buffer>): (codePoint: number) => boolean {
  const each = [...fonts].map(rangesOf);
  return (codePoint) =>
    each.every((ranges) => ranges.some(({ first, last }) => first <= codePoint && codePoint <= last));
}

/** The same data with every text in letters that can be printed; `missing` are those that can't. */
export function inLetters<T>(data: T, has: (codePoint: number) => boolean): { data: T; missing: string[] } {
  const missing = new Set<string>();
  const printed = (text: string) =>
    [...text.normalize('NFC').replace(INVISIBLE, '')]
      .map((letter) => {
        const codePoint = letter.codePointAt(0) ?? 0;
        if (/\s/.test(letter) || has(codePoint)) return letter;
        missing.add(letter);
        return `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
      })
      .join('');
  const deep = (value: unknown): unknown => {
    if (typeof value === 'string') return printed(value);
    if (Array.isArray(value)) return value.map(deep);
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([key, own]) => [key, deep(own)]));
  };
  return { data: deep(data) as T, missing: [...missing] };
}

/** Signs that have no shape of their own: controls but line ends, joiners, marks of direction, variants. */
const INVISIBLE = /(?!\n)[\p{Cc}\p{Cf}\p{Variation_Selector}]/gu;

type Run = { first: number; last: number };

function rangesOf(font: Buffer): Run[] {
  const cmap = tableAt(font, 'cmap');
  const count = font.readUInt16BE(cmap + 2);
  const tables = Array.from({ length: count }, (_, i) => cmap + font.readUInt32BE(cmap + 4 + 8 * i + 4));
  return tables.flatMap((at) => {
    const format = font.readUInt16BE(at);
    return format === 4 ? inSegments(font, at) : format === 12 ? inGroups(font, at) : [];
  });
}

function tableAt(font: Buffer, tag: string): number {
  const count = font.readUInt16BE(4);
  for (let i = 0; i < count; i += 1) {
    const entry = 12 + 16 * i;
    if (font.toString('latin1', entry, entry + 4) === tag) return font.readUInt32BE(entry + 8);
  }
  throw new Error(`The font has no ${tag} table.`);
}

/** Format 4: segments below U+10000; the last one, 0xFFFF, holds nothing. */
function inSegments(font: Buffer, at: number): Run[] {
  const doubled = font.readUInt16BE(at + 6);
  return Array.from({ length: doubled / 2 }, (_, i) => ({
    first: font.readUInt16BE(at + 16 + doubled + 2 * i),
    last: font.readUInt16BE(at + 14 + 2 * i),
  })).filter(({ first }) => first !== 0xffff);
}

/** Format 12: groups of any letters. */
function inGroups(font: Buffer, at: number): Run[] {
  return Array.from({ length: font.readUInt32BE(at + 12) }, (_, i) => ({
    first: font.readUInt32BE(at + 16 + 12 * i),
    last: font.readUInt32BE(at + 20 + 12 * i),
  }));
}
