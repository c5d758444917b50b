// The forecast's tables of figures: spent, left and finish, and the curve behind its chart.
import type { Both } from '../estimate/uncertain/finish.ts';
import { monthText } from '../figures/days.ts';
import { minutesText } from '../figures/hours.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Forecast } from '../rollup/ahead/forecast.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { about, type FigureCell, type FigureRow, type FigureTable, figure } from './figure-table.ts';
import { spreadOf } from './forecast-words.ts';
import { page } from './links.ts';
import { hoursAbout, moneyAbout, moneySpan } from './live/rounded.ts';
import type { Ending } from './running-end.ts';

/** The heads of the four columns, and what each means. */
const PERCENTS = [
  { head: 'P10', note: '1 in 10 under it' },
  { head: 'P50', note: 'half under it' },
  { head: 'P80', note: '8 in 10 under it' },
  { head: 'P90', note: '9 in 10 under it' },
];

/** Spent, left and finish. `written` is the forecast without the correction, where that differs. */
export function percentTables(
  forecast: Forecast,
  written: Forecast | undefined,
  { currency }: CarRecord,
  { total }: Rollup,
): Both<FigureTable> {
  const table = (of: 'money' | 'hours', unit: string, spent: string, text: Text): FigureTable => ({
    caption: unit,
    head: '',
    columns: PERCENTS,
    rows: [
      { head: 'Spent', cells: [{ ...figure(spent, page.costs), span: PERCENTS.length }] },
      ...percentRows(forecast, of, text, written ? ', corrected' : ''),
      ...(written ? percentRows(written, of, text, ', as written') : []),
    ],
  });
  return {
    money: table(
      'money',
      `Money, in ${currency.code}`,
      moneyText(forecast.spent.money, currency),
      (value, spread) => moneyAbout(value, spread, currency),
    ),
    hours: table('hours', 'Hours', minutesText(total.minutes), hoursAbout),
  };
}

type Text = (value: number, spread: number) => string;
type Four = { p10: number; p50: number; p80: number; p90: number };

function percentRows(
  { left, finish }: Forecast,
  of: 'money' | 'hours',
  text: Text,
  more: string,
): FigureRow[] {
  const cells = (four: Four): FigureCell[] =>
    [four.p10, four.p50, four.p80, four.p90].map((value) => about(text(value, spreadOf(four))));
  return [
    { head: `Left${more}`, cells: cells(left[of]) },
    { head: `Finish${more}`, cells: cells(finish[of]), sum: true },
  ];
}

/** The curve in tens, from 10 to 90 times in a hundred. */
export function chanceTable({ quantiles, finish }: Forecast, { currency }: CarRecord): FigureTable {
  return {
    caption: 'The chance of each finish',
    head: 'Times in a hundred',
    columns: [{ head: 'Finished for at most' }],
    rows: [10, 20, 30, 40, 50, 60, 70, 80, 90].map((times) => ({
      head: String(times),
      cells: [about(moneyAbout(quantiles[times - 1] ?? 0, spreadOf(finish.money), currency))],
    })),
  };
}

/** The finish as it stands behind the running total; nothing where that is what is spent. */
export function endingOf(
  { finish: { money }, spent }: Forecast,
  { currency }: CarRecord,
): Ending | undefined {
  if (money.p90 <= spent.money) return undefined;
  return {
    low: money.p10,
    likely: money.p50,
    high: money.p90,
    text: `likely finish ${moneyAbout(money.p50, spreadOf(money), currency)}`,
  };
}

/** The running total by month, with the finish from P10 to P90 at its foot. */
export function runTable(
  { finish: { money } }: Forecast,
  { currency }: CarRecord,
  rollup: Rollup,
): FigureTable {
  const amount = (value: number) => figure(amountText(value, currency));
  return {
    caption: `Running total, in ${currency.code}`,
    head: 'Month',
    columns: [{ head: 'Running' }, { head: 'Agreed' }],
    rows: rollup.months.map(({ month, running, agreed }) => ({
      head: monthText(month),
      cells: [amount(running), amount(agreed)],
    })),
    foot: {
      head: 'Finish',
      cells: [about(moneySpan(money.p10, money.p90, currency)), amount(rollup.agreed)],
    },
  };
}
