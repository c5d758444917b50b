// A plain table of words and figures, without the columns in which nothing stands.

/** The first cell of a row is its head. */
export type Plain = { caption: string; heads: string[]; rows: string[][] };

export function plainTable(caption: string, heads: readonly string[], rows: readonly string[][]): Plain {
  const used = heads.map((_, column) => rows.some((row) => row[column] !== ''));
  return {
    caption,
    heads: heads.filter((_, column) => used[column]),
    rows: rows.map((row) => row.filter((_, column) => used[column])),
  };
}
