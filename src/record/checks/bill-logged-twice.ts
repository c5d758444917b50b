// Finds bill lines with the vendor, number, words, price and count of an earlier one.
import { moneyText } from '../../figures/money-text.ts';
import type { Place } from '../place.ts';
import type { BoughtLine, CarRecord, OutsideLine } from '../record.ts';
import type { Check, Found } from './check.ts';

export const billLoggedTwice: Check = {
  rule: 'bill-logged-twice',
  severity: 'error',
  why: 'The same line of the same bill in two entries is paid once and charged twice.',
  run: (record) => {
    const first = new Map<string, { file: string; part: string | undefined; place: Place }>();
    const found: Found[] = [];
    for (const { line, file } of billed(record)) {
      if (line.bill === undefined) continue;
      const count = 'count' in line ? line.count : undefined;
      const key = JSON.stringify([
        line.from,
        line.bill,
        line.what.trim().toLowerCase(),
        line.price,
        count ?? '1',
      ]);
      const before = first.get(key);
      if (!before) {
        first.set(key, { file, part: line.part, place: line.place });
        continue;
      }
      // One bill often holds the same thing for the left and the right side, a line each.
      if (before.file === file && before.part !== line.part) continue;
      found.push({
        place: line.place,
        reason: `\`${line.what}\` at ${moneyText(line.price, record.currency)} on bill \`${line.bill}\` of \`${line.from}\` is logged already.`,
        mend: 'Take one of the two out, or mend the bill number.',
        related: [before.place],
      });
    }
    return found;
  },
};

function* billed({ entries }: CarRecord): Generator<{ line: BoughtLine | OutsideLine; file: string }> {
  for (const { file, bought = [], outside = [] } of entries) {
    for (const line of [...bought, ...outside]) yield { line, file };
  }
}
