// Tax that a vendor charges the shop: as billed, or worked out where the bill is silent and a rule is in force.
import type { Day } from '../figures/days.ts';
import { type Minor, shareOf, split } from '../figures/money.ts';
import { type Taxed, type TaxRule, taxesInForce } from './rules.ts';

/** What a line of a bill is taxed on. */
export type TaxedLine = {
  rulesOf: Day;
  /** One name for the bill it stands on; a line without one is a bill of its own. */
  bill?: string | undefined;
  amounts: { [kind in Taxed]?: Minor };
  /** Tax as billed, also when it is 0. */
  tax?: Minor | undefined;
};

export type PaidTax = { name?: string; amount: Minor; workedOut: boolean };

/**
 * The tax of each line. A rule `by: statement` rounds once for the whole bill and is split over its lines;
 * what comes back is a bill apart, so that it is split by size like what was bought. Tax that a vendor's prices hold
 * already is within them.
 */
export function paidTaxes(lines: readonly TaxedLine[], rules: readonly TaxRule[]): PaidTax[][] {
  const taxes: PaidTax[][] = lines.map(({ tax }) => (tax ? [{ amount: tax, workedOut: false }] : []));
  const bills = new Map<TaxRule, Map<string, { index: number; base: Minor }[]>>();
  for (const [index, line] of lines.entries()) {
    if (line.tax !== undefined) continue;
    for (const rule of taxesInForce(rules, 'paid', line.rulesOf)) {
      if (rule.included) continue;
      const base = taxedBase(line.amounts, rule);
      if (base === 0) continue;
      const bill =
        rule.by === 'line' || line.bill === undefined ? String(index) : `${line.bill} ${Math.sign(base)}`;
      const ofRule = bills.get(rule) ?? new Map<string, { index: number; base: Minor }[]>();
      bills.set(rule, ofRule.set(bill, [...(ofRule.get(bill) ?? []), { index, base }]));
    }
  }
  for (const [rule, ofRule] of bills) {
    for (const bill of ofRule.values()) {
      const whole = shareOf(
        bill.reduce((sum, { base }) => sum + base, 0),
        rule.rate,
        rule.rounding,
      );
      const parts = split(
        whole,
        bill.map(({ base }) => Math.abs(base)),
      );
      for (const [at, { index }] of bill.entries()) {
        const amount = parts[at] ?? 0;
        if (amount !== 0) taxes[index]?.push({ name: rule.name, amount, workedOut: true });
      }
    }
  }
  return taxes;
}

/** The sum of the kinds that a rule names. */
export function taxedBase(amounts: { [kind in Taxed]?: Minor }, rule: TaxRule): Minor {
  return [...new Set(rule.on)].reduce((sum, kind) => sum + (amounts[kind] ?? 0), 0);
}
