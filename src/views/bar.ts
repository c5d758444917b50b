// The one figure of the front page: spent against agreed on a line of money.
import type { Currency } from '../figures/currency.ts';
import { moneyText } from '../figures/money-text.ts';

/** Places along a line of `width` units, with the words that stand at them. */
export type Bar = {
  width: number;
  spent: { to: number; text: string };
  agreed?: { at: number; text: string };
  ticks: { at: number; text: string }[];
};

/** Lays the figure out; the scale ends at a round amount above both. */
export function costBar(spent: number, agreed: number, currency: Currency, width: number): Bar {
  const one = 10 ** currency.digits;
  const most = Math.max(spent, agreed, one);
  const step = niceStep(most / 4 / one) * one;
  const end = Math.ceil(most / step) * step;
  const at = (amount: number) => Math.round((Math.max(0, amount) / end) * width * 10) / 10;
  const count = Math.round(end / step);
  return {
    width,
    spent: { to: at(spent), text: `spent ${moneyText(spent, currency)}` },
    ...(agreed > 0 ? { agreed: { at: at(agreed), text: `agreed ${moneyText(agreed, currency)}` } } : {}),
    ticks: Array.from({ length: count + 1 }, (_, i) => ({
      at: at(i * step),
      text: i === 0 ? '0' : moneyText(i * step, currency).replace(/\.0+$/, ''),
    })),
  };
}

function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(1, rough)));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= rough) ?? power;
}
