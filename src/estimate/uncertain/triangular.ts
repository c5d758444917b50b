// Low, likely, high read as a triangle: for estimates that were published as one. Our own ranges are PERT.
import type { Range } from '../../figures/ranges.ts';
import { type Curve, constantCurve, curveFrom } from './curve.ts';
import { normalCdf, normalDensity } from './normal.ts';

/** (low + likely + high) / 3. Closed forms of this file: any textbook of simulation. */
export function triangularMean({ low, likely, high }: Range): number {
  return low === high ? low : (low + likely + high) / 3;
}

/** (a^2 + m^2 + b^2 - am - ab - bm) / 18, written in differences so that nothing cancels. */
export function triangularVariance({ low, likely, high }: Range): number {
  const left = likely - low;
  const right = high - likely;
  return (left * left + left * right + right * right) / 18;
}

/** Chance of at most x. */
export function triangularCdf({ low, likely, high }: Range, x: number): number {
  if (x >= high) return 1;
  if (x <= low) return 0;
  if (x <= likely) return (x - low) ** 2 / ((high - low) * (likely - low));
  return 1 - (high - x) ** 2 / ((high - low) * (high - likely));
}

/**
 * The value with chance p below it.
 * @throws RangeError when p is not a chance.
 */
export function triangularQuantile({ low, likely, high }: Range, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a chance lies between 0 and 1, not ${p}`);
  const width = high - low;
  if (p * width <= likely - low) return low + Math.sqrt(p * width * (likely - low));
  return high - Math.sqrt((1 - p) * width * (high - likely));
}

/** The triangle as a curve for sampling; its corner at the mode is rounded by less than 1e-4 of the width. */
export function triangularCurve({ low, likely, high }: Range): Curve {
  if (!(low <= likely && likely <= high && high - low < Infinity)) {
    throw new RangeError(`a range runs low, likely, high, not ${low}, ${likely}, ${high}`);
  }
  if (low === high) return constantCurve(low);
  const mode = (likely - low) / (high - low);
  const unit = curveFrom((z) => {
    const below = normalCdf(z);
    if (below <= mode) {
      return { value: Math.sqrt(below * mode), slope: (normalDensity(z) * Math.sqrt(mode / below)) / 2 };
    }
    const above = normalCdf(-z);
    return {
      value: 1 - Math.sqrt(above * (1 - mode)),
      slope: (normalDensity(z) * Math.sqrt((1 - mode) / above)) / 2,
    };
  });
  return { ...unit, base: low, span: high - low };
}
