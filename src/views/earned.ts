// The shop's own page: what an hour really earned by kind of work, prices fixed, work at no charge, handling.
import { minutesText } from '../figures/hours.ts';
import type { Minor } from '../figures/money.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type Earned, type ShopEarned, shopEarned } from '../rollup/shop-earned.ts';
import { type FigureCell, type FigureTable, figure } from './figure-table.ts';
import { page } from './links.ts';
import { namesOf } from './names.ts';
import { capital } from './parts.ts';

/** A lead in words, and the tables in which anything stands. */
export type EarnedPage = { lead: string; tables: FigureTable[] };

export function earnedPage(record: CarRecord, rollup: Rollup): EarnedPage {
  const earned = shopEarned(record, rollup);
  return {
    lead: leadOf(earned, record),
    tables: [
      worksTable(earned, record),
      pricesTable(earned, record),
      freeTable(earned, record),
      handledTable(earned, record),
    ].filter(({ rows }) => rows.length > 0),
  };
}

function leadOf({ all, givenAway, handled }: ShopEarned, { currency }: CarRecord): string {
  const money = (amount: Minor) => moneyText(amount, currency);
  if (all.perHour === undefined || all.left === undefined) return 'No hours are written yet.';
  return [
    `An hour worked was charged at ${money(all.perHour)}, and ${money(all.left)} of it is left after pay.`,
    ...(givenAway.minutes > 0 ? [`${minutesText(givenAway.minutes)} were worked at no charge.`] : []),
    ...handled.map(
      ({ kind, handling }) =>
        `Handling of ${kind === 'bought' ? 'bought things' : 'outside work'} earned ${money(handling)}.`,
    ),
  ].join(' ');
}

function worksTable({ works, all }: ShopEarned, record: CarRecord): FigureTable {
  return {
    caption: `What an hour earned, by kind of work, in ${record.currency.code}`,
    head: 'Kind of work',
    columns: EARNED,
    rows: works.map((of) => ({
      head: capital(of.work),
      to: page.lines('work', of.work),
      cells: earnedCells(of, record),
    })),
    foot: { head: 'All', cells: earnedCells(all, record) },
  };
}

function pricesTable({ prices }: ShopEarned, record: CarRecord): FigureTable {
  const names = namesOf(record);
  const questions = new Map(record.choices.map(({ id, question }) => [id, question]));
  return {
    caption: `At prices fixed beforehand, in ${record.currency.code}`,
    head: 'Work',
    columns: EARNED,
    rows: prices.map((of) => ({
      head: questions.get(of.of) ?? names.line(of.of),
      notes: of.priced ? [] : ['not finished, so that nothing is charged yet'],
      cells: earnedCells(of, record),
    })),
  };
}

function freeTable({ givenAway }: ShopEarned, record: CarRecord): FigureTable {
  const money = (amount: Minor) => figure(amountText(amount, record.currency));
  const cells = (of: { minutes: number; pay: Minor; forgone: Minor }) => [
    figure(minutesText(of.minutes)),
    money(of.pay),
    money(of.forgone),
  ];
  return {
    caption: `At no charge, in ${record.currency.code}`,
    head: 'Reason',
    columns: [{ head: 'Worked' }, { head: 'Pay' }, { head: 'Not charged', note: 'at the rates of its day' }],
    rows: givenAway.reasons.map((of) => ({
      head: capital(of.reason),
      notes: of.days.map(({ entry, text }) => `${entry}: ${text}`),
      cells: cells(of),
    })),
    foot: { head: 'All', cells: cells(givenAway) },
  };
}

function handledTable({ handled }: ShopEarned, record: CarRecord): FigureTable {
  const money = (amount: Minor) => figure(amountText(amount, record.currency));
  return {
    caption: `Handling, in ${record.currency.code}`,
    head: 'Bills',
    columns: [{ head: 'Paid', note: 'with freight and tax' }, { head: 'Handling' }],
    rows: handled.map(({ kind, cost, handling }) => ({
      head: kind === 'bought' ? 'Bought things' : 'Outside work',
      to: page.lines('kind', kind),
      cells: [money(cost), money(handling)],
    })),
  };
}

const EARNED = [
  { head: 'Worked' },
  { head: 'Time charged' },
  { head: 'Charged' },
  { head: 'Pay' },
  { head: 'An hour', note: 'charged, for each hour worked' },
  { head: 'Left of it', note: 'after pay' },
];

function earnedCells(
  { minutes, chargedMinutes, charged, pay, perHour, left }: Earned,
  { currency }: CarRecord,
): FigureCell[] {
  const money = (amount: Minor | undefined) => (amount === undefined ? '' : amountText(amount, currency));
  return [
    minutesText(minutes),
    minutesText(chargedMinutes),
    money(charged),
    money(pay),
    money(perHour),
    money(left),
  ].map((text) => figure(text));
}
