// How the tables of a statement write amounts and link entries.
import { type Day, shortDayText } from '../../figures/days.ts';
import type { Minor } from '../../figures/money.ts';
import { amountText } from '../../figures/money-text.ts';
import type { CarRecord } from '../../record/record.ts';
import type { StatedLine } from '../../rollup/stated-lines.ts';
import { datedText } from '../dated.ts';
import { type FigureCell, figure } from '../figure-table.ts';
import { page } from '../links.ts';

/** A day of a statement: with its year where the period runs over more than one. */
export function dayIn({ from, to }: { from: Day; to: Day }): (day: Day) => string {
  return from.slice(0, 4) === to.slice(0, 4) ? shortDayText : datedText;
}

/** Amounts as text, and the page of the entry that lines stand in, as long as it is there. */
export function writing({ currency, entries }: CarRecord) {
  const there = new Set(entries.map(({ id }) => id));
  return {
    money: (amount: Minor) => amountText(amount, currency),
    opens: ([line]: readonly StatedLine[]): { to?: string } =>
      line && there.has(line.entry) ? { to: page.day(line.entry) } : {},
  };
}

export const figures = (...texts: string[]): FigureCell[] => texts.map((text) => figure(text));
