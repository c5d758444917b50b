// Deposits that are still out: money to come back.
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { type Bought, boughtFor } from './returns.ts';

/** What is left of each deposit after what came back, largest first. What the owner paid is the owner's to get. */
export function depositsOut({ entries }: CarRecord): Rollup['depositsOut'] {
  const left = new Map<Bought['line'], number>();
  const bought = entries.flatMap((entry) => (entry.bought ?? []).map((line) => ({ entry, line })));
  for (const { line } of bought) {
    if (line.deposit && line['paid-by'] !== 'owner') left.set(line, line.deposit);
  }
  const matching = boughtFor(entries);
  for (const entry of entries) {
    for (const line of entry.returned ?? []) {
      let back = line.deposit ?? 0;
      for (const match of back > 0 ? matching({ entry, line }) : []) {
        const out = left.get(match.line) ?? 0;
        const taken = Math.min(out, back);
        if (taken > 0) left.set(match.line, out - taken);
        back -= taken;
      }
    }
  }
  return bought
    .map(({ entry, line }) => ({
      text: line.what,
      vendor: line.from,
      day: entry.day,
      amount: left.get(line) ?? 0,
      place: line.place,
    }))
    .filter(({ amount }) => amount > 0)
    .sort((a, b) => b.amount - a.amount);
}
