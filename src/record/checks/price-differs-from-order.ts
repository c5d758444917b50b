// Holds the price on a bill against the one that was named when the thing was ordered.
import { type Minor, times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Path } from '../front-matter.ts';
import type { CarRecord, Entry } from '../record.ts';
import { sameWords } from './back-from-vendors.ts';
import type { Check } from './check.ts';

export const priceDiffersFromOrder: Check = {
  rule: 'price-differs-from-order',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A price that isn’t the one named when it was ordered is worth a call before the bill is paid.',
  run: (record) => {
    const lines = billLines(record);
    const billed = new Set<Line>();
    return orders(record).flatMap(({ order, entry, index, bills }) => {
      const { from, what, price } = order;
      const ofVendor = lines.filter((line) => line.from === from && line.entry.day >= entry.day);
      const found =
        ofVendor.find((line) => !billed.has(line) && sameWords(line.what) === sameWords(what)) ??
        onlyOne(ofVendor.filter(({ bill }) => bill !== undefined && bills.includes(bill)));
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
  const receipts = entries.flatMap(({ day, received = [] }) => received.map((line) => ({ day, line })));
  return entries.flatMap((entry) =>
    (entry.ordered ?? []).map((order, index) => {
      const own = receipts.filter(
        ({ day, line }) =>
          day >= entry.day && line.from === order.from && sameWords(line.what) === sameWords(order.what),
      );
      const bills = [order.bill, ...own.map(({ line }) => line.bill)];
      return { order, entry, index, bills: bills.filter((bill) => bill !== undefined) };
    }),
  );
}

/** On a bill of several lines nobody knows which was ordered. */
function onlyOne(lines: readonly Line[]): Line | undefined {
  return lines.length === 1 ? lines[0] : undefined;
}
