// Estimates are said with no more digits than are known: two significant figures of how far they scatter.
import type { Currency } from '../../figures/currency.ts';
import { minutesText } from '../../figures/hours.ts';
import { amountText, moneyText } from '../../figures/money-text.ts';

/**
 * The step that keeps two significant figures of a spread (p90 less p10) in minor units: 100.00 for 1,650.00. One
 * minor unit at least, so that what is certain keeps every digit.
 */
export const stepOf = (spread: number): number =>
  spread < 10 ? 1 : 10 ** (Math.floor(Math.log10(spread)) - 1);

/** Likewise for a spread in hours: whole hours from ten up, quarters below. */
export const hoursStepOf = (spread: number): number => (spread < 10 ? 0.25 : stepOf(spread));

/** The multiple of a step next to a value; halves go up in size. */
export const roundedTo = (value: number, step: number): number =>
  Math.sign(value) * Math.round(Math.abs(value) / step) * step + 0;

/** `$4,500` of minor units; cents only where the step is less than a whole unit. */
export function moneyAbout(value: number, spread: number, currency: Currency): string {
  const step = stepOf(spread);
  return withoutCents(moneyText(roundedTo(value, step), currency), step, currency);
}

/** `$3,800 – 5,700`; one figure where both ends come to the same. */
export function moneySpan(low: number, high: number, currency: Currency): string {
  const step = stepOf(high - low);
  const [from, to] = [roundedTo(low, step), roundedTo(high, step)];
  const first = withoutCents(moneyText(from, currency), step, currency);
  return from === to ? first : `${first} – ${withoutCents(amountText(to, currency), step, currency)}`;
}

/** `43 h`; `4 h 15 m` where quarters of an hour are known. */
export function hoursAbout(value: number, spread: number): string {
  return hoursText(roundedTo(value, hoursStepOf(spread)));
}

/** `43 – 59 h`. */
export function hoursSpan(low: number, high: number): string {
  const step = hoursStepOf(high - low);
  const [from, to] = [roundedTo(low, step), roundedTo(high, step)];
  if (from === to) return hoursText(from);
  if (Number.isInteger(from) && Number.isInteger(to)) return `${from} – ${to} h`;
  return `${minutesText(from * 60)} – ${minutesText(to * 60)}`;
}

const hoursText = (hours: number): string =>
  Number.isInteger(hours) ? `${hours} h` : minutesText(hours * 60);

const withoutCents = (text: string, step: number, { digits }: Currency): string =>
  step >= 10 ** digits ? text.replace(/\.0+$/, '') : text;
