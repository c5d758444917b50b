// Estimates are said with no more digits than are known: to two significant figures of how far they scatter.
import type { Currency } from '../../figures/currency.ts';
import { minutesText } from '../../figures/hours.ts';
import type { Minor } from '../../figures/money.ts';
import { amountText, moneyText } from '../../figures/money-text.ts';

/**
 * The step that shows two significant figures of a spread (p90 less p10), in minor units: 100.00 for 1,650.00.
 * One minor unit at least, so that what is certain keeps every digit.
 */
export const stepOf = (spread: number): number =>
  spread >= 100 ? 10 ** (Math.floor(Math.log10(spread)) - 1) : spread >= 10 ? STEP_OF_TENS : 1;

/** Likewise for hours: whole hours from a spread of ten, quarters below. */
export const hoursStepOf = (spread: number): number => (spread >= 10 ? stepOf(spread) : QUARTER);

/** The multiple of a step next to a value; halves go up in size. */
export const roundedTo = (value: number, step: number): number =>
  Math.sign(value) * Math.round(Math.abs(value) / step) * step + 0;

/** `$4,500`; cents only where the spread is below ten units. */
export function moneyAbout(value: number, spread: number, currency: Currency): string {
  const step = stepOf(spread);
  return bare(moneyText(roundedTo(value, step), currency), step, currency);
}

/** `$3,800 – 5,700`; one figure alone where both ends round to the same. */
export function moneySpan(low: number, high: number, currency: Currency): string {
  const step = stepOf(high - low);
  const [from, to] = [roundedTo(low, step), roundedTo(high, step)];
  const first = bare(moneyText(from, currency), step, currency);
  return from === to ? first : `${first} – ${bare(amountText(to, currency), step, currency)}`;
}

/** `43 h`, or `4 h 15 m` where quarters of an hour are known. */
export function hoursAbout(value: number, spread: number): string {
  const hours = roundedTo(value, hoursStepOf(spread));
  return Number.isInteger(hours) ? `${grouped(hours)} h` : minutesText(hours * 60);
}

/** `43 – 59 h`. */
export function hoursSpan(low: number, high: number): string {
  const step = hoursStepOf(high - low);
  const [from, to] = [roundedTo(low, step), roundedTo(high, step)];
  const whole = Number.isInteger(from) && Number.isInteger(to);
  const text = (hours: number) => (whole ? grouped(hours) : minutesText(hours * 60));
  const unit = whole ? ' h' : '';
  return from === to ? `${text(from)}${unit}` : `${text(from)} – ${text(to)}${unit}`;
}

const QUARTER = 0.25;
