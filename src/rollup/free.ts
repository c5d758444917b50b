// What is still free of what was agreed: less what is spent, less what open orders will come to.
import { billSums } from '../estimate/bill.ts';
import { lineTaxes, taxSums } from '../estimate/charged-tax.ts';
import type { Minor } from '../figures/money.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { handlingRules, taxRules } from './shop-rules.ts';

/** Whole minor units; `free` is below zero where more is spent and bespoken than agreed. */
export type Free = {
  agreed: Minor;
  spent: Minor;
  /** What the open orders that name a price will be charged at, by the rules of the last day written. */
  committed: Minor;
  free: Minor;
  orders: number;
  /** Open orders that name no price, and so are in no sum. */
  unpriced: number;
};

export function freeOf(record: CarRecord, { agreed, total, openOrders }: Rollup): Free {
  const prices = openOrders.flatMap(({ price }) => price ?? []);
  const committed = prices.reduce((sum, price) => sum + chargedAt(price, record), 0);
  return {
    agreed,
    spent: total.charged,
    committed,
    free: agreed - total.charged - committed,
    orders: openOrders.length,
    unpriced: openOrders.length - prices.length,
  };
}

/** A price with the tax that the vendor will add, handling, and the tax charged on it. */
function chargedAt(price: Minor, { shop, entries, car }: CarRecord): Minor {
  const day = entries.at(-1)?.day ?? car.opened;
  const rules = { handling: handlingRules(shop), tax: taxRules(shop) };
  const [sums] = billSums([{ kind: 'bought', rulesOf: day, price }], rules);
  const goods = sums?.charged.goods ?? 0;
  const taxes = taxSums(lineTaxes([{ day, charged: { bought: goods } }], rules.tax).flat());
  return taxes.reduce((sum, { within, amount }) => sum + (within === undefined ? amount : 0), goods);
}
