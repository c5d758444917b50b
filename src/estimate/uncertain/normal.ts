// The standard normal curve: the scale on which every uncertain quantity of this folder is placed.

/** Density at z. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) * DENSITY_AT_ZERO;
}

/**
 * Chance of at most z; relative error below 1e-12 down to z = -8 and beyond.
 * Middle: the series of Abramowitz & Stegun 26.2.11; tails: the continued fraction 26.2.14.
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  if (z <= -SERIES_ENDS) return tail(-z);
  if (z >= SERIES_ENDS) return 1 - tail(z);
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

/**
 * The z with chance p below it; -Infinity at 0, Infinity at 1. First guess: Abramowitz & Stegun 26.2.23 (4.5e-4),
 * then two steps of Halley on `normalCdf`, which leave an error below 1e-13.
 * @throws RangeError when p is not a chance.
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a chance lies between 0 and 1, not ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);
  if (p === 0) return -Infinity;
  const t = Math.sqrt(-2 * Math.log(p));
  let z =
    (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let step = 0; step < 2; step++) {
    const off = (normalCdf(z) - p) / normalDensity(z);
    z -= off / (1 + (z * off) / 2);
  }
  return z;
}

const DENSITY_AT_ZERO = 1 / Math.sqrt(2 * Math.PI);
const SERIES_ENDS = 3;

/** Chance above z, for z of 3 and more, where sixty levels of the fraction are exact to the last digits. */
function tail(z: number): number {
  if (z === Infinity) return 0;
  let fraction = z;
  for (let level = 60; level >= 1; level--) fraction = z + level / fraction;
  return normalDensity(z) / fraction;
}
