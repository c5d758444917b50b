// Orders that have not come yet.
import { type CarRecord, lineName } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { key } from './returns.ts';

/** Each received line closes the oldest open order of the same words from the same vendor. */
export function openOrders({ entries }: CarRecord): Rollup['openOrders'] {
  const open = new Map<string, Rollup['openOrders']>();
  for (const entry of entries) {
    for (const line of entry.ordered ?? []) {
      const name = key(line.from, line.what);
      const { what, from: vendor, part, expected, price, choice, place } = line;
      const order = {
        what,
        vendor,
        ...(part !== undefined && { part }),
        ...(line.line !== undefined && { line: lineName(line.line, part) }),
        ...(choice !== undefined && { choice }),
        ordered: entry.day,
        ...(expected !== undefined && { expected }),
        ...(price !== undefined && { price }),
        place,
      };
      open.set(name, [...(open.get(name) ?? []), order]);
    }
    for (const line of entry.received ?? []) open.get(key(line.from, line.what))?.shift();
  }
  return [...open.values()]
    .flat()
    .sort((a, b) => (a.ordered < b.ordered ? -1 : a.ordered > b.ordered ? 1 : 0));
}
