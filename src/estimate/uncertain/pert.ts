// Low, likely, high read as a PERT-beta range of weight 4. Its variance is the beta's own, (mean-low)(high-mean)/7;
// the older rule ((high-low)/6)^2 is not used.
import type { Range } from '../../figures/ranges.ts';
import { betaAt, betaWeight } from './beta.ts';
import { valueAt } from './curve.ts';
import { normalQuantile } from './normal.ts';
import { pertCurve } from './pert-curve.ts';

/** (low + 4 likely + high) / 6, in the unit of the range. Malcolm, Roseboom, Clark and Fazar 1959. */
export function pertMean(range: Range): number {
  return range.low === range.high ? range.low : (range.low + 4 * range.likely + range.high) / 6;
}

/** (mean - low)(high - mean) / 7, in the unit squared: the variance of a beta with alpha + beta = 6. */
export function pertVariance(range: Range): number {
  const mean = pertMean(range);
  return ((mean - range.low) * (range.high - mean)) / 7;
}

/** The two parameters of the beta; null for a range without width. */
export function pertShape({ low, likely, high }: Range): { alpha: number; beta: number } | null {
  if (low === high) return null;
  return { alpha: 1 + (4 * (likely - low)) / (high - low), beta: 1 + (4 * (high - likely)) / (high - low) };
}

/** Chance of at most x. A range without width steps from 0 to 1 at its value. */
export function pertCdf(range: Range, x: number): number {
  if (x >= range.high) return 1;
  if (x <= range.low) return 0;
  const { alpha } = pertShape(range) as { alpha: number };
  return betaAt((x - range.low) / (range.high - range.low), alpha, betaWeight(alpha)).chance;
}

/**
 * The value with chance p below it, from the table of its shape: relative error below 1e-6 of the distance from the
 * low end in the middle 99.8%.
 * @throws RangeError when p is not a chance or the range is out of order.
 */
export function pertQuantile(range: Range, p: number): number {
  const z = normalQuantile(p);
  if (z === -Infinity) return range.low;
  if (z === Infinity) return range.high;
  return valueAt(pertCurve(range), z);
}
