// What came back, matched to what was bought: by vendor and bill where the bill is named, else by vendor and words.
import type { BoughtLine, Entry, ReturnedLine } from '../record/record.ts';

export type Bought = { entry: Entry; line: BoughtLine };
export type Returned = { entry: Entry; line: ReturnedLine };

/** Finds, for a line that came back, the bought lines that it may belong to, the likeliest first. */
export function boughtFor(entries: readonly Entry[]): (returned: Returned) => Bought[] {
  const byBill = new Map<string, Bought[]>();
  const byWords = new Map<string, Bought[]>();
  for (const entry of entries) {
    for (const line of entry.bought ?? []) {
      const bought = { entry, line };
      if (line.bill !== undefined) add(byBill, key(line.from, line.bill), bought);
      add(byWords, key(line.from, line.what), bought);
    }
  }
  return ({ entry, line }) => {
    const earlier = (found: Bought[] | undefined) =>
      (found ?? []).filter((bought) => bought.entry.day <= entry.day);
    const onBill = line.bill === undefined ? [] : earlier(byBill.get(key(line.from, line.bill)));
    if (onBill.length === 0) return earlier(byWords.get(key(line.from, line.what)));
    const same = (bought: Bought) => sameWords(bought.line.what, line.what);
    return [...onBill.filter(same), ...onBill.filter((bought) => !same(bought))];
  };
}

/** A vendor and words, without regard to capitals and spaces at the ends. */
export function key(vendor: string, words: string): string {
  return `${vendor} ${words.trim().toLowerCase()}`;
}

const sameWords = (a: string, b: string) => key('', a) === key('', b);

function add(map: Map<string, Bought[]>, name: string, bought: Bought): void {
  const list = map.get(name);
  if (list) list.push(bought);
  else map.set(name, [bought]);
}
