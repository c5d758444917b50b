// The one place where a length becomes text, in the record's units with the other beside it.
import Fraction from 'fraction.js';
import { type Length, millimetres, type Units } from './lengths.ts';

/** `1 5/16 in (33.3 mm)` in an inch record, `33.3 mm (1 5/16 in)` in a metric one. */
export function lengthText(length: Length, units: Units): string {
  return units === 'inch'
    ? `${inchText(length)} (${metricText(length)})`
    : `${metricText(length)} (${inchText(length)})`;
}

/** Inches as they were written where they were, else to the nearest 64th, marked as near. */
export function inchText(length: Length): string {
  if (length.unit === 'mm') {
    const near = new Fraction(Math.round((millimetres(length) / 25.4) * 64), 64);
    return `about ${mixed(near)} in`;
  }
  const value = new Fraction(length.n, length.d);
  const ruled = 64 % Number(value.d) === 0;
  return `${ruled ? mixed(value) : `${value.valueOf()}`.replace('-', '−')} in`;
}

function metricText(length: Length): string {
  const exact = length.unit === 'mm' && 10 % length.d === 0;
  const size = millimetres(length);
  return `${(exact ? String(size) : size.toFixed(1)).replace('-', '−')} mm`;
}

function mixed(value: Fraction): string {
  return value.toFraction(true).replace('-', '−');
}
