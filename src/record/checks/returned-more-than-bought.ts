// Takes each return off what it was bought for, and finds what nothing is left for.
import { type Minor, times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { BoughtLine } from '../record.ts';
import { returns } from './back-from-vendors.ts';
import type { Check } from './check.ts';

export const returnedMoreThanBought: Check = {
  rule: 'returned-more-than-bought',
  severity: 'error',
  needsEveryEntry: true,
  why: 'More money back than was spent would make the car cheaper than it was.',
  run: (record) => {
    const goods = new Map<BoughtLine, Minor>();
    const deposits = new Map<BoughtLine, Minor>();
    return returns(record).flatMap(({ entry, index, line, of }) =>
      (['price', 'deposit'] as const).flatMap((key) => {
        const back = line[key] ?? 0;
        const left = key === 'price' ? goods : deposits;
        const spent = (bought: BoughtLine) => (key === 'price' ? goodsOf(bought) : (bought.deposit ?? 0));
        const over = taken(back, of, left, spent);
        if (over === 0) return [];
        const most = back - over;
        const what = key === 'price' ? 'what was bought' : 'the deposit';
        return [
          {
            place: entry.placeAt(['returned', index, key]),
            reason: `${moneyText(back, record.currency)} came back from \`${line.from}\` for \`${line.what}\`, and ${what} leaves ${moneyText(most, record.currency)} to come back.`,
            mend: 'Mend the amount, or name the `bill` that it was bought on.',
            related: of.slice(0, 3).map(({ place }) => place),
          },
        ];
      }),
    );
  },
};

/** What of an amount finds nothing more to come off. */
function taken(
  back: Minor,
  of: readonly BoughtLine[],
  left: Map<BoughtLine, Minor>,
  spent: (line: BoughtLine) => Minor,
): Minor {
  let over = back;
  for (const bought of of) {
    if (over === 0) break;
    const still = left.get(bought) ?? spent(bought);
    const now = Math.min(still, over);
    left.set(bought, still - now);
    over -= now;
  }
  return over;
}

const goodsOf = ({ price, count = '1', discount = 0, freight = 0 }: BoughtLine): Minor =>
  times(price, count) - discount + freight;
