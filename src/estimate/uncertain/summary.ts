// What a reader is told about draws: mean, percentiles, chances, and how exact each of them is.
import { drawsInOrder } from './in-order.ts';

/** In the unit of the draws. `error` holds one standard error of each figure: it is the sampling's, not the estimate's. */
export type Summary = {
  draws: number;
  mean: number;
  deviation: number;
  p10: number;
  p50: number;
  p80: number;
  p90: number;
  error: { mean: number; p10: number; p50: number; p80: number; p90: number };
};

/** @throws RangeError without draws. */
export function summarize(values: ArrayLike<number>): Summary {
  const sorted = sortedDraws(values);
  const { mean, deviation } = meanAndDeviation(sorted);
  const at = (p: number) => quantileOf(sorted, p);
  const error = (p: number) => quantileError(sorted, p);
  return {
    draws: sorted.length,
    mean,
    deviation,
    p10: at(0.1),
    p50: at(0.5),
    p80: at(0.8),
    p90: at(0.9),
    error: {
      mean: deviation / Math.sqrt(sorted.length),
      p10: error(0.1),
      p50: error(0.5),
      p80: error(0.8),
      p90: error(0.9),
    },
  };
}

/** A sorted copy, for the functions below. */
export function sortedDraws(values: ArrayLike<number>): Float64Array {
  return values.length < MANY ? Float64Array.from(values).sort() : drawsInOrder(values);
}

/** From here on sorting by bits is quicker than comparing. */
const MANY = 5_000;

/**
 * The value with share p of the sorted draws below it, linear between neighbors: definition 7 of Hyndman and Fan 1996.
 * @throws RangeError without draws, or when p is not a chance.
 */
export function quantileOf(sorted: Float64Array, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a chance lies between 0 and 1, not ${p}`);
  if (sorted.length === 0) throw new RangeError('a percentile needs draws');
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const from = sorted[below] as number;
  const to = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return from + (place - below) * (to - from);
}

/**
 * Standard error sqrt(p(1-p)/n) / density at the quantile, the density read off the draws themselves: half the distance
 * between the draws that lie one binomial deviation either side.
 */
export function quantileError(sorted: Float64Array, p: number): number {
  const away = Math.sqrt((p * (1 - p)) / sorted.length);
  return (quantileOf(sorted, Math.min(1, p + away)) - quantileOf(sorted, Math.max(0, p - away))) / 2;
}

/** Share of the sorted draws that are at most x. Its standard error is `chanceError`. */
export function chanceAtMost(sorted: Float64Array, x: number): number {
  let from = 0;
  let to = sorted.length;
  while (from < to) {
    const middle = (from + to) >>> 1;
    if ((sorted[middle] as number) <= x) from = middle + 1;
    else to = middle;
  }
  return from / sorted.length;
}

/** Standard error of a chance counted in n draws: sqrt(p(1-p)/n). */
export function chanceError(p: number, draws: number): number {
  return Math.sqrt((p * (1 - p)) / draws);
}

/** Mean and standard deviation (divisor n - 1; zero for one draw). */
export function meanAndDeviation(values: ArrayLike<number>): { mean: number; deviation: number } {
  const count = values.length;
  if (count === 0) throw new RangeError('a mean needs draws');
  // Sums of the distance from the first value: draws that are all equal then have that very mean and no spread.
  const first = values[0] as number;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += (values[i] as number) - first;
  const mean = first + sum / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += ((values[i] as number) - mean) ** 2;
  return { mean, deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : 0 };
}
