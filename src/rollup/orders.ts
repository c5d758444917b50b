// Orders, from the day they were placed until they came.
import type { Day } from '../figures/days.ts';
import { type CarRecord, lineName } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { key } from './returns.ts';

/** An order; `came` is the day on which it was received, missing while it is open. */
export type Order = Rollup['openOrders'][number] & { entry: string; came?: Day };

/** Each received line closes the oldest open order of the same words from the same vendor. By the day of the order. */
export function everyOrder({ entries }: Pick<CarRecord, 'entries'>): Order[] {
  const all: Order[] = [];
  const open = new Map<string, Order[]>();
  for (const entry of entries) {
    for (const line of entry.ordered ?? []) {
      const name = key(line.from, line.what);
      const { what, from: vendor, part, expected, price, choice, place } = line;
      const order: Order = {
        what,
        vendor,
        ...(part !== undefined && { part }),
        ...(line.line !== undefined && { line: lineName(line.line, part) }),
        ...(choice !== undefined && { choice }),
        ordered: entry.day,
        ...(expected !== undefined && { expected }),
        ...(price !== undefined && { price }),
        entry: entry.id,
        place,
      };
      all.push(order);
      open.set(name, [...(open.get(name) ?? []), order]);
    }
    for (const line of entry.received ?? []) {
      const oldest = open.get(key(line.from, line.what))?.shift();
      if (oldest) oldest.came = entry.day;
    }
  }
  return all.sort((a, b) => (a.ordered < b.ordered ? -1 : a.ordered > b.ordered ? 1 : 0));
}

/** Orders that have not come yet. */
export function openOrders(record: Pick<CarRecord, 'entries'>): Rollup['openOrders'] {
  return everyOrder(record)
    .filter(({ came }) => came === undefined)
    .map(({ entry, ...order }) => order);
}
