// The lines behind a figure, by kind, each with its day, its part and where it is written.
import { shortDayText } from '../figures/days.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import { once } from '../record/once.ts';
import { placeText } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, CostLine, Grouping, Row, Total } from '../rollup/cost-lines.ts';
import { linesByYear, rowOfYear, totalOf } from '../rollup/tables.ts';
import { datedText } from './dated.ts';
import { timeText } from './day.ts';
import { KIND, KINDS, lineNotes } from './line-text.ts';
import { aboutOf, page } from './links.ts';
import { namesOf } from './names.ts';

/** One line as it is printed; `cost` is what it costs the shop. */
export type LineRow = {
  day: string;
  dayPage?: string;
  text: string;
  notes: string;
  part: string;
  partPage?: string;
  time: string;
  charged: string;
  cost: string;
  place: string;
};

/** Figures of a foot: of one kind, or of all. */
export type Foot = { time: string; charged: string; cost: string };

/** The lines of one year, which have a page of their own at `to`. */
export type YearRow = { year: string; to: string; count: number; sums: Foot };

/** All lines of one kind with their subtotal; in the page of a long row its years in their place. */
export type LineGroup = {
  kind: CostKind;
  name: string;
  count: number;
  rows: LineRow[];
  years: YearRow[];
  foot: Foot;
};

/**
 * What a page of lines shows. The column of parts is left out where every line has the same. `years` are those of a row
 * with more lines than one page takes: the lines stand on their pages, and here are the sums.
 */
export type LinesPage = {
  title: string;
  lead: string;
  about?: string;
  parts: boolean;
  timed: boolean;
  groups: LineGroup[];
  years: YearRow[];
  foot: Foot;
};

/** So many lines a page takes, before those of each year have their own: a phone would load megabytes. */
export const MOST_LINES = 1000;

/** The years whose lines stand on pages of their own; none where one page takes all, or there is but one year. */
export function linePages(row: Row, most = MOST_LINES): string[] {
  if (row.lines.length <= most) return [];
  const years = linesByYear(row);
  return years.length > 1 ? years.map(([year]) => year) : [];
}

/** The page of a row, with its lines or with the years that they stand under. */
export function linesPage(by: Grouping, row: Row, record: CarRecord, most = MOST_LINES): LinesPage {
  if (linePages(row, most).length === 0) return linesOn(by, row, record);
  return linesOn(by, row, record, (total) =>
    linesByYear(total).map(([year, lines]) => ({
      year,
      to: page.linesOfYear(by, row.key, year),
      count: lines.length,
      sums: footOf(totalOf(lines), record),
    })),
  );
}

/** The lines of one year of a row. */
export function linesOfYear(by: Grouping, row: Row, year: string, record: CarRecord): LinesPage {
  const own = linesOn(by, rowOfYear(row, year), record);
  return { ...own, title: `${own.title}, ${year}` };
}

/** Lines are written out where no `years` are to stand in their place. */
function linesOn(by: Grouping, row: Row, record: CarRecord, years?: (total: Total) => YearRow[]): LinesPage {
  const write = lineWriter(record);
  const groups = KINDS.flatMap((kind): LineGroup[] => {
    const total = row.kinds[kind];
    if (!total || total.lines.length === 0) return [];
    const count = total.lines.length;
    const within = years ? { rows: [], years: years(total) } : { rows: total.lines.map(write), years: [] };
    return [{ kind, name: KIND[kind], count, ...within, foot: footOf(total, record) }];
  });
  return {
    title: row.label,
    lead: `${moneyText(row.charged, record.currency)} charged${row.minutes > 0 ? ` and ${timeText(row.minutes)} worked` : ''}, ${years ? 'year by year' : 'line by line'}.`,
    ...aboutOf(by, row.key, record),
    parts: by !== 'part',
    timed: row.minutes > 0,
    groups,
    years: years?.(row) ?? [],
    foot: footOf(row, record),
  };
}

/**
 * Writes lines of one record; a part without a page of its own has no link. Each line stands in a table of every
 * grouping, and is written once.
 */
const lineWriter = once((record: CarRecord): ((line: CostLine) => LineRow) => {
  const { currency } = record;
  const names = namesOf(record);
  const parts = new Set(record.parts.map(({ id }) => id));
  return once((line) => ({
    day: datedText(line.day),
    ...(line.entry !== undefined && { dayPage: page.day(line.entry) }),
    text: line.text,
    notes: lineNotes({ ...line, minutes: undefined }),
    part: names.part(line.part),
    ...(line.part !== undefined && parts.has(line.part) && { partPage: page.part(line.part) }),
    time: timeText(line.minutes ?? 0),
    charged: amountText(line.charged, currency),
    cost: amountText(line.cost, currency),
    place: `${line.place.file}:${line.place.line}`,
  }));
});

/** A line where lines of few kinds stand together, such as those of a day. */
export type BriefLine = {
  day: string;
  dayPage?: string;
  text: string;
  notes: string;
  kind: string;
  charged: string;
  place: string;
};

/** Writes lines of one record, each once. */
export const briefLines = (lines: readonly CostLine[], record: CarRecord): BriefLine[] =>
  lines.map(briefWriter(record));

const briefWriter = once(({ currency }: CarRecord): ((line: CostLine) => BriefLine) =>
  once((line) => ({
    day: shortDayText(line.day),
    ...(line.entry !== undefined && { dayPage: page.day(line.entry) }),
    text: line.text,
    notes: lineNotes(line),
    kind: KIND[line.kind],
    charged: amountText(line.charged, currency),
    place: placeText(line.place),
  })),
);

const footOf = (total: Total, { currency }: CarRecord): Foot => ({
  time: timeText(total.minutes),
  charged: amountText(total.charged, currency),
  cost: amountText(total.cost, currency),
});
