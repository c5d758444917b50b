// The lines behind a figure, by kind, each with its day, its part and where it is written.
import { shortDayText } from '../figures/days.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import { once } from '../record/once.ts';
import { placeText } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, CostLine, Grouping, Row, Total } from '../rollup/cost-lines.ts';
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

/** All lines of one kind with their subtotal. */
export type LineGroup = { kind: CostKind; name: string; count: number; rows: LineRow[]; foot: Foot };

/** What a page of lines shows. The column of parts is left out where every line has the same. */
export type LinesPage = {
  title: string;
  lead: string;
  about?: string;
  parts: boolean;
  timed: boolean;
  groups: LineGroup[];
  foot: Foot;
};

export function linesPage(by: Grouping, row: Row, record: CarRecord): LinesPage {
  const write = lineWriter(record);
  const groups = KINDS.flatMap((kind): LineGroup[] => {
    const total = row.kinds[kind];
    if (!total || total.lines.length === 0) return [];
    const rows = total.lines.map(write);
    return [{ kind, name: KIND[kind], count: rows.length, rows, foot: footOf(total, record) }];
  });
  return {
    title: row.label,
    lead: `${moneyText(row.charged, record.currency)} charged${row.minutes > 0 ? ` and ${timeText(row.minutes)} worked` : ''}, line by line.`,
    ...aboutOf(by, row.key, record),
    parts: by !== 'part',
    timed: row.minutes > 0,
    groups,
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
