// The figures of the costs page: which rows they draw, with their words. Every figure is a row of a table.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Grouping, Rollup, Row, Total } from '../rollup/cost-lines.ts';
import { largest } from '../rollup/largest.ts';
import type { BarRow } from './charts.ts';
import { capital } from './parts.ts';

/** One figure: its bars in order, what they come to, and a sentence for who can't see it. */
export type CostFigure = {
  by: Grouping;
  heading: string;
  caption: string;
  title: string;
  /** What the bars measure, as a column's head. */
  unit: string;
  bars: BarRow[];
  /** What is too small for a bar of its own, as one row of the table behind the figure. */
  rest: { label: string; text: string } | undefined;
  total: string;
};

type Kind = { by: Grouping; value: 'charged' | 'minutes'; heading: string; caption: string; most: number };

const FIGURES: readonly Kind[] = [
  {
    by: 'part',
    value: 'charged',
    heading: 'Money by part',
    caption: 'The parts that have come to most so far, the largest first.',
    most: 14,
  },
  {
    by: 'kind',
    value: 'charged',
    heading: 'Money by kind',
    caption: 'Labor, bought things, outside work, and what follows from them.',
    most: 20,
  },
  {
    by: 'month',
    value: 'charged',
    heading: 'Money by month',
    caption: 'What was charged for the days of each month.',
    most: Number.POSITIVE_INFINITY,
  },
  {
    by: 'work',
    value: 'minutes',
    heading: 'Hours by kind of work',
    caption: 'Hours worked, charged or not.',
    most: 20,
  },
];

/** The figures in which anything stands. Months keep their order, the rest go by size. */
export function costFigures(record: CarRecord, rollup: Rollup): CostFigure[] {
  return FIGURES.map((kind) => figureOf(kind, record, rollup)).filter(({ bars }) => bars.length > 0);
}

function figureOf(
  { by, value, heading, caption, most }: Kind,
  { currency }: CarRecord,
  { tables }: Rollup,
): CostFigure {
  const text = (figure: Total) =>
    value === 'charged' ? moneyText(figure.charged, currency) : minutesText(figure.minutes);
  const stand = tables[by].rows.filter((row) => row[value] !== 0);
  const cut = largest(stand, value, most);
  const shown = by === 'month' ? stand : cut.rows;
  const others = by === 'month' ? 0 : cut.others;
  const first = [...shown].sort((a, b) => b[value] - a[value])[0];
  const name = ({ label }: Row) => (by === 'work' ? capital(label) : label);
  const total = text(tables[by].total);
  return {
    by,
    heading,
    caption: others > 0 ? `${caption} The ${others} others come to ${text(cut.rest)}.` : caption,
    title: `${heading}. ${first ? `The most: ${name(first)}, ${text(first)}. ` : ''}In all ${total}.`,
    unit: value === 'charged' ? `Charged, ${currency.code}` : 'Hours',
    bars: shown.map((row) => ({ label: name(row), value: row[value], text: text(row) })),
    rest: others > 0 ? { label: `${others} others`, text: text(cut.rest) } : undefined,
    total,
  };
}
