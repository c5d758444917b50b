// What is left of a line that has begun: its total given that it is already past what is spent.
import type { Range } from '../../figures/ranges.ts';
import { type Calibration, correctedCurve } from './calibration.ts';
import { type Curve, curveFrom, placeOf, REACH, shiftedCurve, slopeAt, valueAt } from './curve.ts';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';
import { pertCurve } from './pert-curve.ts';

/** `left` in the unit of the range. `overrun`: spent has reached the high end as written, to be said plainly. */
export type Remainder = { left: Curve; overrun: boolean };

/**
 * Total - spent given total > spent: the corrected curve cut at what is spent and renewed. Past the high end the range
 * has nothing more to say, and the total is drawn log-normal about what is spent, cut there: left = spent x
 * (exp(tail z') - 1) over the upper half, `tail` being the record's own scatter. So that what is left does not sink
 * to nothing just before the end and leap up behind it, the second rule takes over evenly across the last 5% of chance.
 */
export function remainderOf(range: Range, spent: number, calibration: Calibration): Remainder {
  if (!(spent >= 0)) throw new RangeError(`what is spent is zero or more, not ${spent}`);
  const whole = correctedCurve(pertCurve(range), calibration);
  const overrun = isOverrun(range, spent);
  const atEnd = spent >= valueAt(whole, REACH);
  if (!atEnd && spent <= valueAt(whole, -REACH)) return { left: shiftedCurve(whole, -spent), overrun };
  const place = placeOf(whole, spent);
  const taken = atEnd ? 1 : Math.max(0, (normalCdf(place) - LAST) / (1 - LAST));
  const past = cutAbove(lognormal(spent, calibration.tail), 0, spent);
  if (taken === 1) return { left: past, overrun };
  const cut = cutAbove(whole, place, spent);
  return { left: taken === 0 ? cut : between(cut, past, taken), overrun };
}

/** Whether what is spent has reached the high end as written. */
export function isOverrun({ high }: Range, spent: number): boolean {
  return spent > 0 && spent >= high;
}

/** Share of the range's chance within which only the cut applies. */
const LAST = 0.95;

/** The curve above a place, less `spent`: chance above z' = chance above z times chance above the place. */
function cutAbove(curve: Curve, place: number, spent: number): Curve {
  const kept = normalCdf(-place);
  return curveFrom((z) => {
    const at = -normalQuantile(normalCdf(-z) * kept);
    const pace = (normalDensity(z) * kept) / normalDensity(at);
    return { value: Math.max(0, valueAt(curve, at) - spent), slope: slopeAt(curve, at) * pace };
  });
}

function lognormal(median: number, deviation: number): Curve {
  return curveFrom((z) => {
    const value = median * Math.exp(deviation * z);
    return { value, slope: value * deviation };
  });
}

function between(from: Curve, to: Curve, share: number): Curve {
  return curveFrom((z) => ({
    value: valueAt(from, z) + share * (valueAt(to, z) - valueAt(from, z)),
    slope: slopeAt(from, z) + share * (slopeAt(to, z) - slopeAt(from, z)),
  }));
}
