// Holds the price on a bill against the one that was named when the thing was ordered.
import { type Minor, times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Path } from '../front-matter.ts';
import type { CarRecord, Entry } from '../record.ts';
import { thing } from './back-from-vendors.ts';
import type { Check } from './check.ts';

export const priceDiffersFromOrder: Check = {
  rule: 'price-differs-from-order',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A price that isn’t the one named when it was ordered is worth a call before the bill is paid.',
  run: (record) => {
    const lines = billLines(record);
    const byWords = Map.groupBy(lines, ({ from, what }) => thing(from, what));
    const byBill = Map.groupBy(lines, ({ from, bill }) =>
      bill === undefined ? undefined : billOf(from, bill),
    );
    const billed = new Set<Line>();
    return orders(record).flatMap(({ order, entry, index, bills }) => {
      const { from, what, price } = order;
      const isSince = (line: Line) => line.entry.day >= entry.day;
      const found =
        byWords.get(thing(from, what))?.find((line) => isSince(line) && !billed.has(line)) ??
        onlyOne(
          [...new Set(bills)].flatMap((bill) => (byBill.get(billOf(from, bill)) ?? []).filter(isSince)),
        );
      if (found) billed.add(found);
      if (!found || price === undefined || price === found.each || price === found.net) return [];
      const money = (amount: Minor) => moneyText(amount, record.currency);
      const named = found.bill === undefined ? 'The bill' : `Bill \`${found.bill}\``;
      return [
        {
          place: found.entry.placeAt(found.path),
          reason: `${named} of \`${from}\` charges ${money(found.net)} for \`${found.what}\`, and the order of ${entry.day} named ${money(price)}.`,
          mend: 'Ask the vendor; where the new price was agreed, mend the `price` of the order.',
          related: [entry.placeAt(['ordered', index, 'price'])],
        },
      ];
    });
  },
};

type Line = {
  entry: Entry;
  path: Path;
  from: string;
  what: string;
  bill: string | undefined;
  each: Minor;
  net: Minor;
};

function billLines({ entries }: CarRecord): Line[] {
  return entries.flatMap((entry) => [
    ...(entry.bought ?? []).map(({ from, what, bill, price, count, discount }, i): Line => {
      const net = times(price, count ?? '1') - (discount ?? 0);
      return { entry, path: ['bought', i, 'price'], from, what, bill, each: price, net };
    }),
    ...(entry.outside ?? []).map(({ from, what, bill, price }, i): Line => {
      return { entry, path: ['outside', i, 'price'], from, what, bill, each: price, net: price };
    }),
  ]);
}

/** Orders, each with the numbers of bills that it or its receipt names. */
function orders({ entries }: CarRecord) {
  const receipts = Map.groupBy(
    entries.flatMap(({ day, received = [] }) => received.map((line) => ({ day, line }))),
    ({ line }) => thing(line.from, line.what),
  );
  return entries.flatMap((entry) =>
    (entry.ordered ?? []).map((order, index) => {
      const same = receipts.get(thing(order.from, order.what)) ?? [];
      const own = same.filter(({ day }) => day >= entry.day);
      const bills = [order.bill, ...own.map(({ line }) => line.bill)];
      return { order, entry, index, bills: bills.filter((bill) => bill !== undefined) };
    }),
  );
}

/** A bill by its number: two vendors may write the same. */
const billOf = (from: string, bill: string) => `${from} ${bill}`;

/** On a bill of several lines nobody knows which was ordered. */
function onlyOne(lines: readonly Line[]): Line | undefined {
  return lines.length === 1 ? lines[0] : undefined;
}
