// What came back from vendors, held against what was bought: by vendor and bill where the return names one
// that is known, else by vendor and words.
import type { BoughtLine, CarRecord, Entry, ReturnedLine } from '../record.ts';

/** A return and the bought lines that it can belong to, in order of the log. */
export type Back = { entry: Entry; index: number; line: ReturnedLine; of: BoughtLine[] };

/** Every return of the record. Lines with the same words stand first among those of one bill. */
export function returns({ entries }: CarRecord): Back[] {
  const byBill = new Map<string, BoughtLine[]>();
  const byWords = new Map<string, BoughtLine[]>();
  const back: Back[] = [];
  for (const entry of entries) {
    for (const line of entry.bought ?? []) {
      if (line.bill !== undefined) add(byBill, `${line.from} ${line.bill}`, line);
      add(byWords, thing(line.from, line.what), line);
    }
    for (const [index, line] of (entry.returned ?? []).entries()) {
      const onBill = line.bill === undefined ? [] : (byBill.get(`${line.from} ${line.bill}`) ?? []);
      const ofWords = byWords.get(thing(line.from, line.what)) ?? [];
      const same = (bought: BoughtLine) => sameWords(bought.what) === sameWords(line.what);
      const of =
        onBill.length > 0 ? [...onBill.filter(same), ...onBill.filter((one) => !same(one))] : [...ofWords];
      back.push({ entry, index, line, of });
    }
  }
  return back;
}

/** Words without regard to capitals and spaces at the ends. */
const sameWords = (words: string) => words.trim().toLowerCase();

/** What a vendor is asked for, billed for or sent back, by its words. */
export const thing = (from: string, what: string) => `${from} ${sameWords(what)}`;

function add(lists: Map<string, BoughtLine[]>, key: string, line: BoughtLine): void {
  const list = lists.get(key);
  if (list) list.push(line);
  else lists.set(key, [line]);
}
