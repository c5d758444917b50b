import { describe, expect, it } from 'vitest';
import { normalDensity, normalQuantile } from '../../../src/estimate/uncertain/normal.ts';
import { fillNormals } from '../../../src/estimate/uncertain/normals.ts';
import { streamFor } from '../../../src/estimate/uncertain/stream.ts';
import {
  chanceAtMost,
  chanceError,
  meanAndDeviation,
  quantileError,
  quantileOf,
  sortedDraws,
  summarize,
} from '../../../src/estimate/uncertain/summary.ts';

describe('a summary of draws', () => {
  it('takes percentiles between neighbors, as definition 7 of Hyndman and Fan does', () => {
    // By hand: place p (n - 1) along 1, 3, 7, 8, 20.
    const sorted = sortedDraws([7, 1, 20, 3, 8]);
    expect([0, 0.1, 0.5, 1].map((p) => quantileOf(sorted, p))).toEqual([1, 1.8, 7, 20]);
    expect(quantileOf(sorted, 0.8)).toBeCloseTo(10.4, 12);
  });

  it('counts the chance of at most a value, the value included', () => {
    const sorted = sortedDraws([1, 2, 2, 2, 5]);
    expect([0.9, 1, 2, 4.9, 5, 9].map((x) => chanceAtMost(sorted, x))).toEqual([0, 0.2, 0.8, 0.8, 1, 1]);
    expect(chanceError(0.2, 400)).toBeCloseTo(0.02, 12);
  });

  it('has the standard errors that theory gives for normal draws', () => {
    // sd / sqrt(n), and sqrt(p (1-p) / n) / density at the quantile.
    const draws = new Float64Array(40_000);
    fillNormals(draws, streamFor('s', 'errors'));
    const { error } = summarize(draws);
    expect(error.mean / 0.005).toBeCloseTo(1, 1);
    for (const [p, found] of [
      [0.1, error.p10],
      [0.5, error.p50],
      [0.8, error.p80],
      [0.9, error.p90],
    ] as const) {
      const theory = Math.sqrt((p * (1 - p)) / 40_000) / normalDensity(normalQuantile(p));
      expect(found / theory).toBeGreaterThan(0.8);
      expect(found / theory).toBeLessThan(1.25);
    }
  });

  it('finds its percentiles within four of its own errors', () => {
    const draws = new Float64Array(40_000);
    fillNormals(draws, streamFor('s', 'percentiles'));
    const { p10, p80, error } = summarize(draws);
    expect(Math.abs(p10 - normalQuantile(0.1))).toBeLessThan(4 * error.p10);
    expect(Math.abs(p80 - normalQuantile(0.8))).toBeLessThan(4 * error.p80);
  });

  it('of equal draws has that very mean and no spread', () => {
    const { mean, deviation, p10, p90, error } = summarize([0.1, 0.1, 0.1]);
    expect([mean, deviation, p10, p90, error.p80]).toEqual([0.1, 0, 0.1, 0.1, 0]);
  });

  it('divides squares by n - 1', () => {
    // By hand: 2, 4, 9 lie 3, 1 and 4 from 5; 26 / 2 = 13.
    expect(meanAndDeviation([2, 4, 9])).toEqual({ mean: 5, deviation: Math.sqrt(13) });
    expect(meanAndDeviation([4])).toEqual({ mean: 4, deviation: 0 });
  });

  it('needs draws, and a chance that is one', () => {
    expect(() => summarize([])).toThrow(RangeError);
    expect(() => quantileOf(sortedDraws([1]), 1.5)).toThrow(/between 0 and 1/);
    expect(quantileError(sortedDraws([3]), 0.5)).toBe(0);
  });
});
