// A table as the book prints it: plain text in columns of given widths.

/** `wide` is a column's share of the page's width; 0 is as wide as what stands in it. The last row may be a `total`. */
export type BookTable = {
  columns: { head: string; wide: number; figures?: true }[];
  rows: string[][];
  total?: true;
};

/** How a column is read off a line; `figures` stand to the right. */
export type Column<L> = { head: string; wide: number; text: (line: L) => string; figures?: true };

/** The table of some lines, without the columns in which nothing stands; nothing for no lines. */
export function tableOf<L>(lines: readonly L[], columns: readonly Column<L>[]): BookTable | undefined {
  if (lines.length === 0) return undefined;
  const used = columns.filter(({ text }) => lines.some((line) => text(line) !== ''));
  return {
    columns: used.map(({ head, wide, figures }) => ({ head, wide, ...(figures && { figures }) })),
    rows: lines.map((line) => used.map(({ text }) => text(line))),
  };
}
