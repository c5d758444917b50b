// The owner's account over a period: what is brought forward, what is charged and taxed, what was paid, what is due.
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import { type LineTax, type TaxSum, type TaxTerms, taxSums } from './charged-tax.ts';

/** What one written line is charged at, in minor units; a deposit passes at cost, and comes off when it is back. */
export type Amounts = {
  [of in 'labour' | 'materials' | 'goods' | 'freight' | 'paid-tax' | 'handling' | 'deposit' | 'paid']?: Minor;
};

/** A line of the account. `paid` among its amounts is money from the owner. */
export type AccountLine<R> = { day: Day; amounts: Amounts; taxes: readonly LineTax<R>[] };

/** A line that was stated and has changed since: `was` is missing for one that came to it, `now` for one that went. */
export type Correction<L> = { was?: L; now?: L };

/** The figures of a statement. `tax` is what `taxes` add: those that the prices hold already are listed alone. */
export type StatementSums<R> = {
  broughtForward: Minor;
  labour: Minor;
  bills: Minor;
  materials: Minor;
  deposits: Minor;
  corrections: Minor;
  taxes: TaxSum<R>[];
  tax: Minor;
  paid: Minor;
  balance: Minor;
};

/** What the lines of a period come to. Tax `by: statement` is rounded once, on their sum and that of the corrections. */
export function statementSums<R extends TaxTerms>(
  broughtForward: Minor,
  lines: readonly AccountLine<R>[],
  corrected: readonly Correction<AccountLine<R>>[] = [],
  same?: (rule: R) => unknown,
): StatementSums<R> {
  const sum = (...of: (keyof Amounts)[]) =>
    lines.reduce((total, { amounts }) => of.reduce((all, name) => all + (amounts[name] ?? 0), total), 0);
  const taxes = taxSums(
    [
      ...lines.flatMap((line) => line.taxes),
      ...corrected.flatMap(({ was, now }) => [...(was?.taxes.map(negative) ?? []), ...(now?.taxes ?? [])]),
    ],
    same,
  );
  const own = {
    labour: sum('labour'),
    bills: sum('goods', 'freight', 'paid-tax', 'handling'),
    materials: sum('materials'),
    deposits: sum('deposit'),
    corrections: corrected.reduce((all, { was, now }) => all + comesTo(now) - comesTo(was), 0),
    tax: taxes.reduce((all, { within, amount }) => all + (within === undefined ? amount : 0), 0),
  };
  const paid = sum('paid');
  const charged = Object.values(own).reduce((all, amount) => all + amount, 0);
  return { broughtForward, ...own, taxes, paid, balance: broughtForward + charged - paid };
}

/** What a line adds to the account before tax: what is charged, less what was paid. */
export function comesTo(line: AccountLine<unknown> | undefined): Minor {
  const { paid = 0, ...charged } = line?.amounts ?? {};
  return Object.values(charged).reduce((sum, amount) => sum + amount, 0) - paid;
}

/** Statements of touching periods: the balance of each is brought forward to the next. */
export function chained<R extends TaxTerms>(
  lines: readonly AccountLine<R>[],
  periods: readonly { from: Day; to: Day }[],
  broughtForward: Minor = 0,
): StatementSums<R>[] {
  let balance = broughtForward;
  return periods.map(({ from, to }) => {
    const sums = statementSums(
      balance,
      lines.filter(({ day }) => day >= from && day <= to),
    );
    balance = sums.balance;
    return sums;
  });
}

function negative<R>({ amount, basis, ...tax }: LineTax<R>): LineTax<R> {
  return { ...tax, basis: -basis + 0, ...(amount !== undefined && { amount: -amount + 0 }) };
}
