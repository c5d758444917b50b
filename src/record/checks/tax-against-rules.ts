// Holds tax as billed against the rules for tax paid to vendors.
import type { Day } from '../../figures/days.ts';
import { type Minor, shareOf, times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { CarRecord, Entry, Shop } from '../record.ts';
import type { Check, Found } from './check.ts';

export const taxAgainstRules: Check = {
  rule: 'tax-against-rules',
  severity: 'warning',
  why: 'A bill whose tax doesn’t follow the rule is worth a second look, at the bill and at the rule.',
  run: (record) => {
    if (!record.shop.sure('tax')) return [];
    const onDay = new Map<Day, TaxRule[]>();
    return record.entries.flatMap((entry) => {
      const rules = onDay.get(entry.day) ?? paidRules(record.shop, entry.day);
      onDay.set(entry.day, rules);
      return rules.length === 0 ? [] : [...ofBills(entry, rules, record)];
    });
  },
};

type TaxRule = NonNullable<Shop['tax']>[number];
type Written = { price: Minor; count?: string; discount?: Minor; freight?: Minor; tax?: Minor };

function* ofBills(entry: Entry, rules: readonly TaxRule[], { currency }: CarRecord): Generator<Found> {
  for (const kind of ['bought', 'outside'] as const) {
    // Where no rule is on this kind of bill, nothing is known of its tax.
    const fitting = rules.filter(({ on }) => on.includes(kind));
    if (fitting.length === 0) continue;
    for (const [i, line] of (entry[kind] ?? []).entries()) {
      const { tax, freight = 0, ...goods }: Written = line;
      if (tax === undefined) continue;
      const net = times(goods.price, goods.count ?? '1') - (goods.discount ?? 0);
      const due = rules.reduce((sum, rule) => {
        const base = (rule.on.includes(kind) ? net : 0) + (rule.on.includes('freight') ? freight : 0);
        return sum + shareOf(base, rule.rate, rule.rounding);
      }, 0);
      // One minor unit is left to the vendor, who may round on the whole bill.
      if (Math.abs(tax - due) <= 1) continue;
      yield {
        place: entry.placeAt([kind, i, 'tax']),
        reason: `Tax of ${moneyText(tax, currency)} was billed, and the rules of the day make it ${moneyText(due, currency)}.`,
        mend: 'Look at the bill again; if it is right, the rule in shop.md may not be.',
        related: fitting.map(({ place }) => place),
      };
    }
  }
}

/** Taxes of different names stand together; of one name, the newest that has begun. */
function paidRules({ tax = [] }: Shop, day: Day): TaxRule[] {
  const newest = new Map<string, TaxRule>();
  for (const rule of tax) {
    const held = newest.get(rule.name);
    if (rule.side === 'paid' && rule.from <= day && !(held && held.from > rule.from))
      newest.set(rule.name, rule);
  }
  return [...newest.values()];
}
