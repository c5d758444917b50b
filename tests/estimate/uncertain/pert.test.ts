import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { curveMean, placeOf, valueAt } from '../../../src/estimate/uncertain/curve.ts';
import { normalCdf, normalQuantile } from '../../../src/estimate/uncertain/normal.ts';
import {
  pertCdf,
  pertMean,
  pertQuantile,
  pertShape,
  pertVariance,
} from '../../../src/estimate/uncertain/pert.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { certain } from '../../../src/figures/ranges.ts';

const { beta } = jstat.jStat;
const MODES = [0, 1e-5, 0.03, 0.1, 0.25, 1 / 3, 0.5, 0.62, 0.75, 0.9, 0.9999, 1];
const CHANCES = [0.001, 0.003, 0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.8, 0.9, 0.95, 0.99, 0.997, 0.999];

describe('a PERT range', () => {
  it.each(MODES)('with its mode at %d of the width has the quantiles of jstat within 1e-6', (mode) => {
    for (const p of CHANCES) {
      const expected = beta.inv(p, 1 + 4 * mode, 5 - 4 * mode);
      const relative = pertQuantile({ low: 0, likely: mode, high: 1 }, p) / expected - 1;
      expect(Math.abs(relative), `p ${p}`).toBeLessThan(1e-6);
    }
  });

  // Computed with scipy.stats.beta (ppf, cdf at 0.3): a second program, good to more digits.
  it.each([
    [0.03, 0.01, 0.0035072343852570282, 0.7952952822450678],
    [0.2, 0.001, 0.006313974167847011, 0.5482303042619047],
    [0.2, 0.8, 0.45025861381574517, 0.5482303042619047],
    [0.62, 0.5, 0.5894302151313117, 0.07977280894795252],
    [0.9, 0.999, 0.9982417834520649, 0.007714406365884076],
  ])('with its mode at %d has at p %d the quantile of scipy, and its chance', (mode, p, quantile, chance) => {
    const range = { low: 0, likely: mode, high: 1 };
    expect(Math.abs(pertQuantile(range, p) / quantile - 1)).toBeLessThan(1e-6);
    expect(pertCdf(range, 0.3)).toBeCloseTo(chance, 13);
  });

  it.each(MODES)('with its mode at %d has the chances of jstat, which are good to 1e-9', (mode) => {
    for (const x of [0.001, 0.02, 0.2, 0.5, 0.77, 0.98, 0.999]) {
      const expected = beta.cdf(x, 1 + 4 * mode, 5 - 4 * mode);
      expect(Math.abs(pertCdf({ low: 0, likely: mode, high: 1 }, x) - expected)).toBeLessThan(2e-9);
    }
  });

  it.each(MODES)('with its mode at %d rises all the way, and has its mean as a curve', (mode) => {
    const range = { low: 10, likely: 10 + 50 * mode, high: 60 };
    const curve = pertCurve(range);
    let last = -Infinity;
    for (let z = -8; z <= 8; z += 0.01) {
      const value = valueAt(curve, z);
      expect(value).toBeGreaterThanOrEqual(last);
      last = value;
    }
    expect(valueAt(curve, -8)).toBeGreaterThanOrEqual(10);
    expect(last).toBeLessThanOrEqual(60);
    expect(curveMean(curve)).toBeCloseTo(pertMean(range), 7);
  });

  it('has the closed form at an end: with the mode at the low end, x = 1 - (1-p)^(1/5)', () => {
    for (const p of CHANCES) {
      const exact = 1 - (1 - p) ** 0.2;
      expect(Math.abs(pertQuantile({ low: 0, likely: 0, high: 1 }, p) / exact - 1)).toBeLessThan(1e-6);
      expect(pertQuantile({ low: 0, likely: 1, high: 1 }, p)).toBeCloseTo(p ** 0.2, 8);
    }
  });

  it('reaches its ends at 0 and 1', () => {
    const range = { low: 10, likely: 20, high: 60 };
    expect([pertQuantile(range, 0), pertQuantile(range, 1)]).toEqual([10, 60]);
    expect([pertCdf(range, 10), pertCdf(range, 60), pertCdf(range, 99)]).toEqual([0, 1, 1]);
  });

  it('finds the place of a value on the curve', () => {
    const range = { low: 10, likely: 20, high: 60 };
    expect(normalCdf(placeOf(pertCurve(range), 31))).toBeCloseTo(pertCdf(range, 31), 8);
    expect(placeOf(pertCurve(range), 9)).toBe(-Infinity);
    expect(placeOf(pertCurve(range), 61)).toBe(Infinity);
  });

  it('without width is a constant, never NaN', () => {
    const range = certain(0.1);
    expect(pertMean(range)).toBe(0.1);
    expect(pertVariance(range)).toBe(0);
    expect(pertShape(range)).toBeNull();
    expect([0, 0.3, 1].map((p) => pertQuantile(range, p))).toEqual([0.1, 0.1, 0.1]);
    expect([0.09, 0.1].map((x) => pertCdf(range, x))).toEqual([0, 1]);
    expect(valueAt(pertCurve(range), normalQuantile(0.9))).toBe(0.1);
  });

  it.each([
    { low: 3, likely: 2, high: 5 },
    { low: 1, likely: 6, high: 5 },
    { low: Number.NaN, likely: 1, high: 2 },
    { low: 0, likely: 1, high: Infinity },
  ])('refuses $low, $likely, $high', (range) => {
    expect(() => pertCurve(range)).toThrow(RangeError);
  });
});
