// A table of figures as plain data, for a page and for the terminal alike.

/** `estimate` sets it in italics; `span` is how many columns it stands across. */
export type FigureCell = { text: string; to?: string; estimate?: boolean; span?: number };
/**
 * `to` is the page that the row is about; `notes` stand small under its head. A row that `begins` is the head of those
 * that stand `within` it.
 */
export type FigureRow = {
  head: string;
  to?: string;
  notes?: string[];
  cells: FigureCell[];
  sum?: boolean;
  begins?: boolean;
  within?: boolean;
};
export type FigureTable = {
  caption: string;
  /** What the rows are; empty where their heads say it themselves. */
  head: string;
  columns: { head: string; note?: string }[];
  rows: FigureRow[];
  foot?: FigureRow;
};

export const figure = (text: string, to?: string): FigureCell => (to === undefined ? { text } : { text, to });
export const about = (text: string): FigureCell => ({ text, estimate: true });
