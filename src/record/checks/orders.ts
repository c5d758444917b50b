// Orders and what was received against them: each receipt closes the oldest order of the same words from the same vendor.
import type { CarRecord, Entry } from '../record.ts';
import { thing } from './back-from-vendors.ts';

/** A line of `ordered` or `received`, and where it stands. */
export type Order = { entry: Entry; index: number };

/** Orders still open, and receipts that close none. */
export function matchedOrders({ entries }: CarRecord): { open: Order[]; unordered: Order[] } {
  const queues = new Map<string, { orders: Order[]; closed: number }>();
  const unordered: Order[] = [];
  for (const entry of entries) {
    for (const [index, { from, what }] of (entry.ordered ?? []).entries()) {
      const key = thing(from, what);
      const queue = queues.get(key) ?? { orders: [], closed: 0 };
      queue.orders.push({ entry, index });
      queues.set(key, queue);
    }
    for (const [index, { from, what }] of (entry.received ?? []).entries()) {
      const queue = queues.get(thing(from, what));
      if (queue && queue.closed < queue.orders.length) queue.closed += 1;
      else unordered.push({ entry, index });
    }
  }
  return { open: [...queues.values()].flatMap(({ orders, closed }) => orders.slice(closed)), unordered };
}
