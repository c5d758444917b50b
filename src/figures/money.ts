// Money: whole minor units of one currency. Every product is exact and rounded once, at the end of its line.
import type { Currency } from './currency.ts';
import { type Reading, read, unread } from './reading.ts';
import { type Decimal, Exact, type Rounding, roundWhole } from './rounding.ts';

/** An amount in whole minor units (cents); the record's one currency gives it its name. May be negative. */
export type Minor = number;

/** Reads `84.50`, `$84.50` or `1,084.50`. More digits than the currency has are refused, not rounded. */
export function readMoney(text: string, currency: Currency): Reading<Minor> {
  const bare = text.trim().replace(currency.sign.trim(), '').replace(currency.code, '').trim();
  const sample =
    currency.digits === 0 ? '1,085' : `1,084.${'50'.padEnd(currency.digits, '0').slice(0, currency.digits)}`;
  const expected = `an amount of ${currency.code} such as \`${sample}\``;
  const written = /^(-?)(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d+))?$/.exec(bare);
  if (!written) return unread(expected);
  const [, sign = '', whole = '', part = ''] = written;
  if (part.length > currency.digits) {
    return unread(`${expected}: ${currency.code} has ${currency.digits} digits after the point`);
  }
  const minor = Number(whole.replaceAll(',', '') + part.padEnd(currency.digits, '0'));
  if (!Number.isSafeInteger(minor) || minor > MOST)
    return unread(`${expected}: this is more than any car costs`);
  return read(sign ? -minor + 0 : minor);
}

const MOST = 1e12;

/** A price times a count (`12.5` feet at 4.90), rounded half up unless told otherwise. */
export function times(price: Minor, count: Decimal, rule: Rounding = 'half-up'): Minor {
  return roundWhole(new Exact(price).times(count), rule);
}

/** An hourly rate over whole minutes. */
export function overMinutes(rate: Minor, minutes: number, rule: Rounding = 'half-up'): Minor {
  return roundWhole(new Exact(rate).times(minutes).div(60), rule);
}

/** A share (`0.0725`) of an amount: tax added, handling. */
export function shareOf(amount: Minor, share: Decimal, rule: Rounding = 'half-up'): Minor {
  return roundWhole(new Exact(amount).times(share), rule);
}

/** The tax contained in a gross amount: gross × rate / (1 + the rate of all taxes in it, this one's unless more). */
export function contained(
  gross: Minor,
  rate: Decimal,
  rule: Rounding = 'half-up',
  within: Decimal = rate,
): Minor {
  return roundWhole(new Exact(gross).times(rate).div(new Exact(within).plus(1)), rule);
}

/**
 * Splits an amount by weights so that the parts sum to the whole. Each part takes its whole share rounded
 * down in size; what is left goes, a minor unit each, to the first parts that have a weight.
 */
export function split(amount: Minor, weights: readonly number[]): Minor[] {
  const total = weights.reduce((sum, weight) => sum.plus(weight), new Exact(0));
  if (total.lte(0) || weights.some((weight) => weight < 0)) {
    throw new RangeError('split needs weights of zero or more, and one above zero');
  }
  const parts = weights.map((weight) => roundWhole(new Exact(amount).times(weight).div(total), 'down'));
  let left = amount - parts.reduce((sum, part) => sum + part, 0);
  const step = Math.sign(left);
  for (let i = 0; left !== 0; i = (i + 1) % parts.length) {
    if ((weights[i] ?? 0) === 0) continue;
    parts[i] = (parts[i] ?? 0) + step;
    left -= step;
  }
  return parts;
}
