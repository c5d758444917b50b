// What is agreed, spent, bespoken and still free, in one sentence for the front page and the owner's.
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { freeOf } from '../rollup/free.ts';

/** `Of $92,000.00 agreed, $84,992.91 is spent and $56.53 is committed by one open order; $6,950.56 is still free.` */
export function freeSentence(record: CarRecord, rollup: Rollup): string {
  const { agreed, spent, committed, free, orders, unpriced } = freeOf(record, rollup);
  const money = (amount: number) => moneyText(amount, record.currency);
  const priced = orders - unpriced;
  const bespoken =
    priced === 0
      ? ''
      : ` and ${money(committed)} is committed by ${priced === 1 ? 'one open order' : `${priced} open orders`}`;
  const lacking =
    unpriced === 0
      ? ''
      : ` ${unpriced === 1 ? 'One open order names' : `${unpriced} open orders name`} no price and ${unpriced === 1 ? 'is' : 'are'} not counted.`;
  if (agreed === 0) return `${money(spent)} is spent${bespoken}; no budget is agreed.${lacking}`;
  const rest = free < 0 ? `that is ${money(-free)} more than was agreed` : `${money(free)} is still free`;
  return `Of ${money(agreed)} agreed, ${money(spent)} is spent${bespoken}; ${rest}.${lacking}`;
}
