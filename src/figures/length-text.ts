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

/** Thousandths for sheet and pins, where a 64th is coarse. */
export type Grain = 'rule' | 'fine';

/** A length worked out, in millimeters: `5/16 in (7.9 mm)`, `about 11/64 in (4.4 mm)`, `0.012 in (0.3 mm)`. */
export function workedText(mm: number, units: Units, grain: Grain = 'rule'): string {
  const [inch, metric] = [`${workedInches(mm, grain)} in`, `${workedMillimeters(mm, grain)} mm`];
  return units === 'inch' ? `${inch} (${metric})` : `${metric} (${inch})`;
}

/**
 * Inches of a length worked out, without the unit: whole 64ths as they are, what is below 1/16 in in thousandths,
 * the rest to the nearest 64th and marked as near.
 */
export function workedInches(mm: number, grain: Grain = 'rule'): string {
  const in64 = (mm / 25.4) * 64;
  const whole = Math.round(in64);
  if (grain === 'rule' && Math.abs(in64 - whole) < 1e-6) return mixed(new Fraction(whole, 64));
  if (grain === 'fine' || Math.abs(in64) < 4) return trimmed((mm / 25.4).toFixed(grain === 'fine' ? 4 : 3));
  return `about ${mixed(new Fraction(whole, 64))}`;
}

/** Millimeters of a length worked out, without the unit: tenths, and hundredths where a tenth is coarse. */
export function workedMillimeters(mm: number, grain: Grain = 'rule'): string {
  const digits = grain === 'fine' || (Math.abs(mm) < 0.1 && mm !== 0) ? 2 : 1;
  const text = mm.toFixed(digits);
  return (Number(text) === 0 ? '0' : text).replace('-', '−');
}

function trimmed(decimals: string): string {
  return (Number(decimals) === 0 ? '0' : decimals.replace(/(\.\d{3})0$/, '$1')).replace('-', '−');
}
