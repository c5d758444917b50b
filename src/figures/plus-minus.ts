// A reading with its ±: `1 5/16 in ± 1/64 in`.
import { type Length, readLength, type Units } from './lengths.ts';
import { type Reading, read, unread } from './reading.ts';

/** A value as read, and how far the true one may be from it either way; left out when the writer doesn't say. */
export type WithPlusMinus<T> = { value: T; plusMinus?: T };

const EXPECTED = 'a length such as `1 5/16 in ± 1/64 in` or `33 mm ± 0.5 mm`';

/**
 * Reads a length with or without ±, written `±`, `+/-` or `+-`. What stands behind it is a length, not below
 * zero.
 */
export function readLengthWithPlusMinus(text: string, units?: Units): Reading<WithPlusMinus<Length>> {
  const [front = '', behind, ...more] = text.split(/±|\+\s*\/?\s*[-−]/);
  const value = readLength(front, units);
  if (behind === undefined) return value.ok ? read({ value: value.value }) : value;
  const plusMinus = readLength(behind, units);
  if (!value.ok || !plusMinus.ok || more.length > 0 || plusMinus.value.n < 0) return unread(EXPECTED);
  return read({ value: value.value, plusMinus: plusMinus.value });
}
