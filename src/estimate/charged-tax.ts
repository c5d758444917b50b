// Tax that the shop charges the owner. Rounding it on each line or once on the statement's sum are both in use
// and differ; the shop's rule says which.
import type { Day } from '../figures/days.ts';
import { type Minor, shareOf } from '../figures/money.ts';
import { taxedBase } from './paid-tax.ts';
import { type Taxed, type TaxRule, taxesInForce } from './rules.ts';

/** What one line charges before tax, by kind; handling is within its own kind. */
export type ChargedLine = { day: Day; charged: { [kind in Taxed]?: Minor } };

export type ChargedTax<R> = { rule: R; amount: Minor };

/** The taxes of each line, and those of the statement as a whole, each with its own rounding. */
export function chargedTaxes<R extends TaxRule>(
  lines: readonly ChargedLine[],
  rules: readonly R[],
): { byLine: ChargedTax<R>[][]; byStatement: ChargedTax<R>[] } {
  const sums = new Map<R, Minor>();
  const days = new Map<Day, R[]>();
  const inForceOn = (day: Day) => {
    const known = days.get(day) ?? taxesInForce(rules, 'charged', day);
    days.set(day, known);
    return known;
  };
  const byLine = lines.map(({ day, charged }) =>
    inForceOn(day).flatMap((rule) => {
      const base = taxedBase(charged, rule);
      if (rule.by === 'line') return taxed(base, rule);
      sums.set(rule, (sums.get(rule) ?? 0) + base);
      return [];
    }),
  );
  return { byLine, byStatement: [...sums].flatMap(([rule, base]) => taxed(base, rule)) };
}

function taxed<R extends TaxRule>(base: Minor, rule: R): ChargedTax<R>[] {
  const amount = shareOf(base, rule.rate, rule.rounding);
  return amount === 0 ? [] : [{ rule, amount }];
}
