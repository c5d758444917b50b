// Lengths as a shop writes them, kept exact: 1 5/16 in is 21/16 of an inch, not 1.3125 something.
import Fraction from 'fraction.js';
import { type Reading, read, unread } from './reading.ts';

/** An exact length: the fraction n/d of its unit. An inch is exactly 25.4 mm (NIST SP 811, app. B). */
export type Length = { n: number; d: number; unit: 'in' | 'mm' };

export type Units = 'inch' | 'mm';

const EXPECTED = 'a length such as `1 5/16 in`, `2\' 3 1/2"` or `33 mm`';

/** Reads a length; a bare number is in the record's units where it has them, and refused where it has none. */
export function readLength(text: string, units?: Units): Reading<Length> {
  const bare = text.trim().replace(/[”″]/g, '"').replace(/[’′]/g, "'").replace(/^−/, '-');
  const sign = bare.startsWith('-') ? -1 : 1;
  const size = bare.replace(/^-\s*/, '');
  const metric = /^(\d+(?:\.\d+)?|\.\d+)\s*(mm|cm|m)$/.exec(size);
  if (metric?.[1]) {
    return exact(new Fraction(metric[1]).mul(sign * { mm: 1, cm: 10, m: 1000 }[metric[2] as 'mm']), 'mm');
  }
  const feet = /^(\d+(?:\.\d+)?)\s*(?:'|ft\.?|feet|foot)(?:\s*(.+))?$/.exec(size);
  if (feet?.[1]) {
    const rest = feet[2] === undefined ? new Fraction(0) : inches(feet[2], true);
    return rest ? exact(new Fraction(feet[1]).mul(12).add(rest).mul(sign), 'in') : unread(EXPECTED);
  }
  const inch = inches(size, true);
  if (inch) return exact(inch.mul(sign), 'in');
  const plain = inches(size, false);
  if (!plain) return unread(EXPECTED);
  if (!units) return unread(`${EXPECTED}: the record says no units, so the length must`);
  return exact(plain.mul(sign), units === 'inch' ? 'in' : 'mm');
}

/** The length in millimetres, exact up to the division. */
export function millimetres(length: Length): number {
  return length.unit === 'mm' ? length.n / length.d : (length.n * 127) / (length.d * 5);
}

/** Inches, with or without the unit written: `1 5/16`, `1-5/16`, `5/16`, `1.25`. */
function inches(text: string, withUnit: boolean): Fraction | undefined {
  const unit = withUnit ? '\\s*(?:"|in\\.?|inch|inches)' : '';
  const whole = new RegExp(`^(\\d+(?:\\.\\d+)?|\\.\\d+)${unit}$`).exec(text);
  if (whole?.[1]) return new Fraction(whole[1]);
  const mixed = new RegExp(`^(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)/(\\d+)${unit}$`).exec(text);
  if (!mixed || Number(mixed[3]) === 0) return undefined;
  return new Fraction(Number(mixed[2]), Number(mixed[3])).add(Number(mixed[1] ?? 0));
}

function exact(value: Fraction, unit: 'in' | 'mm'): Reading<Length> {
  const n = Number(value.s * value.n);
  const d = Number(value.d);
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d) || Math.abs(n / d) > 1e6) return unread(EXPECTED);
  return read({ n, d, unit });
}
