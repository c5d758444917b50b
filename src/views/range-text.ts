// Ranges in words: what is estimated never looks like what was paid.
import type { Currency } from '../figures/currency.ts';
import { minutesText } from '../figures/hours.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { Range } from '../figures/ranges.ts';

/** `$2,900 – 4,600, most likely 3,400`; one figure alone when it is certain. */
export function moneyRangeText(range: Range, currency: Currency): string {
  const whole = (text: string) => text.replace(/\.0+$/, '');
  const { low, likely, high } = range;
  if (low === high) return whole(moneyText(likely, currency));
  return `${whole(moneyText(low, currency))} – ${whole(amountText(high, currency))}, most likely ${whole(amountText(likely, currency))}`;
}

/** `6 – 16 h, most likely 9`; hours with a part of an hour keep their minutes. */
export function hoursRangeText({ low, likely, high }: Range): string {
  const even = [low, likely, high].every((minutes) => minutes % 60 === 0);
  const text = (minutes: number) => (even ? String(minutes / 60) : minutesText(minutes));
  const unit = even ? ' h' : '';
  return low === high
    ? `${text(likely)}${unit}`
    : `${text(low)} – ${text(high)}${unit}, most likely ${text(likely)}`;
}

/** `20 – 60 days, most likely 30`. */
export function daysRangeText({ low, likely, high }: Range): string {
  if (low === high) return `${likely} ${likely === 1 ? 'day' : 'days'}`;
  return `${low} – ${high} days, most likely ${likely}`;
}
