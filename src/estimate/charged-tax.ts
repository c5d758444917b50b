// Tax that the shop charges the owner. Rounding it on each line or once on the statement's sum are both in use
// and differ; the shop's rule says which.
import type { Day } from '../figures/days.ts';
import { contained, type Minor, shareOf } from '../figures/money.ts';
import { type Decimal, Exact } from '../figures/rounding.ts';
import { taxedBase } from './paid-tax.ts';
import { type Taxed, type TaxRule, taxesInForce } from './rules.ts';

/** What one line charges before tax, by kind; handling is within its own kind. No tax is on an exempt line. */
export type ChargedLine = { day: Day; charged: { [kind in Taxed]?: Minor }; exempt?: boolean | undefined };

export type ChargedTax<R> = { rule: R; amount: Minor };

/** What a tax is worked out by: its rate, where it is rounded and how. */
export type TaxTerms = Pick<TaxRule, 'rate' | 'by' | 'rounding'>;

/**
 * One tax of one line. `amount` is there where the tax is rounded on the line. `within` is the rate of all taxes
 * that the price holds, this one among them: such a tax is shown and adds nothing.
 */
export type LineTax<R> = { rule: R; within?: Decimal; basis: Minor; amount?: Minor };

/** A tax over many lines: what it is on, and its amount. */
export type TaxSum<R> = { rule: R; within?: Decimal; basis: Minor; amount: Minor };

/** The taxes of each line, in the order of the rules; none where there is nothing that they are on. */
export function lineTaxes<R extends TaxRule>(
  lines: readonly ChargedLine[],
  rules: readonly R[],
): LineTax<R>[][] {
  const days = new Map<Day, R[]>();
  const inForceOn = (day: Day) => {
    const known = days.get(day) ?? taxesInForce(rules, 'charged', day);
    days.set(day, known);
    return known;
  };
  return lines.map(({ day, charged, exempt }) => {
    if (exempt) return [];
    const held = inForceOn(day);
    return held.flatMap((rule) =>
      basesOf(rule, charged, held)
        .filter(({ basis }) => basis !== 0)
        .map((base) => ({
          rule,
          ...base,
          ...(rule.by === 'line' && { amount: taxOn(base.basis, rule, base.within) }),
        })),
    );
  });
}

/** Taxes summed by rule, in the order in which the rules come. `same` names rules that are one. */
export function taxSums<R extends TaxTerms>(
  taxes: Iterable<LineTax<R>>,
  same: (rule: R) => unknown = (rule) => rule,
): TaxSum<R>[] {
  const sums = new Map<unknown, Map<Decimal | undefined, TaxSum<R>>>();
  for (const { rule, within, basis, amount = 0 } of taxes) {
    const ofRule = sums.get(same(rule)) ?? new Map<Decimal | undefined, TaxSum<R>>();
    sums.set(same(rule), ofRule);
    const sum = ofRule.get(within) ?? { rule, ...(within && { within }), basis: 0, amount: 0 };
    ofRule.set(within, sum);
    sum.basis += basis;
    sum.amount += amount;
  }
  return [...sums.values()]
    .flatMap((ofRule) => [...ofRule.values()])
    .map((sum) =>
      sum.rule.by === 'line' ? sum : { ...sum, amount: taxOn(sum.basis, sum.rule, sum.within) },
    );
}

/** The taxes that are added to each line, and those to the statement as a whole, each with its own rounding. */
export function chargedTaxes<R extends TaxRule>(
  lines: readonly ChargedLine[],
  rules: readonly R[],
): { byLine: ChargedTax<R>[][]; byStatement: ChargedTax<R>[] } {
  const taxes = lineTaxes(lines, rules);
  return {
    byLine: taxes.map(added),
    byStatement: added(taxSums(taxes.flat().filter(({ rule }) => rule.by === 'statement'))),
  };
}

/** Those that add something: what a price holds already is left out. */
export function added<R>(taxes: readonly LineTax<R>[]): ChargedTax<R>[] {
  return taxes.flatMap(({ rule, within, amount = 0 }) =>
    within === undefined && amount !== 0 ? [{ rule, amount }] : [],
  );
}

function taxOn(basis: Minor, { rate, rounding }: TaxTerms, within: Decimal | undefined): Minor {
  return within === undefined ? shareOf(basis, rate, rounding) : contained(basis, rate, rounding, within);
}

/** What a rule is on. Kinds of which the price holds the same taxes stand together. */
function basesOf<R extends TaxRule>(
  rule: R,
  charged: ChargedLine['charged'],
  held: readonly R[],
): { within?: Decimal; basis: Minor }[] {
  if (!rule.included) return [{ basis: taxedBase(charged, rule) }];
  const withinOf = (kind: Taxed) =>
    held
      .filter(({ included, on }) => included && on.includes(kind))
      .reduce((sum, { rate }) => sum.plus(rate), new Exact(0))
      .toFixed();
  return [...Map.groupBy(new Set(rule.on), withinOf)].map(([within, kinds]) => ({
    within,
    basis: kinds.reduce((sum, kind) => sum + (charged[kind] ?? 0), 0),
  }));
}
