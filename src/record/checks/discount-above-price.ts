// Finds discounts that leave less than nothing to pay.
import { times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Check } from './check.ts';

export const discountAbovePrice: Check = {
  rule: 'discount-above-price',
  severity: 'error',
  why: 'A vendor takes off a part of the price; more than the whole is a slip of the pen.',
  run: ({ entries, currency }) =>
    entries.flatMap(({ bought = [], placeAt }) =>
      bought.flatMap(({ price, count = '1', discount = 0 }, i) => {
        const whole = times(price, count);
        if (discount <= whole) return [];
        return [
          {
            place: placeAt(['bought', i, 'discount']),
            reason: `${moneyText(discount, currency)} is taken off ${moneyText(whole, currency)}.`,
            mend: 'Write as `price` what one costs before the discount.',
          },
        ];
      }),
    ),
};
