// Words of the record within a style sheet: for the foot of a printed sheet, which only a style sheet can write.

/** A CSS string. Whatever could end it or the sheet around it is written by its number. */
export function cssText(text: string): string {
  const safe = text.replace(
    /[^\p{L}\p{N} .,’-]/gu,
    (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `,
  );
  return `"${safe}"`;
}
