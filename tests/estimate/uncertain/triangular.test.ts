import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { curveMean, valueAt } from '../../../src/estimate/uncertain/curve.ts';
import { normalQuantile } from '../../../src/estimate/uncertain/normal.ts';
import {
  triangularCdf,
  triangularCurve,
  triangularMean,
  triangularQuantile,
  triangularVariance,
} from '../../../src/estimate/uncertain/triangular.ts';
import { certain } from '../../../src/figures/ranges.ts';

const { triangular } = jstat.jStat;
const RANGES = [
  { low: 10, likely: 20, high: 60 },
  { low: -5, likely: 0, high: 3 },
  { low: 100, likely: 100, high: 160 },
  { low: 40, likely: 100, high: 100 },
];

describe.each(RANGES)('the triangle $low, $likely, $high', (range) => {
  const { low, likely, high } = range;

  it('has mean, variance and chances of jstat', () => {
    expect(triangularMean(range)).toBeCloseTo(triangular.mean(low, high, likely), 10);
    expect(triangularVariance(range)).toBeCloseTo(triangular.variance(low, high, likely), 8);
    for (const share of [0.05, 0.3, 0.62, 0.97]) {
      const x = low + share * (high - low);
      expect(triangularCdf(range, x)).toBeCloseTo(triangular.cdf(x, low, high, likely), 10);
    }
  });

  it('turns a chance into a value and back', () => {
    for (const p of [0.01, 0.2, 0.5, 0.77, 0.99]) {
      expect(triangularCdf(range, triangularQuantile(range, p))).toBeCloseTo(p, 10);
    }
    expect([triangularQuantile(range, 0), triangularQuantile(range, 1)]).toEqual([low, high]);
  });

  it('is drawn as the same triangle', () => {
    const curve = triangularCurve(range);
    for (const p of [0.001, 0.05, 0.2, 0.5, 0.8, 0.95, 0.999]) {
      const off = valueAt(curve, normalQuantile(p)) - triangularQuantile(range, p);
      expect(Math.abs(off) / (high - low)).toBeLessThan(1e-4);
    }
    expect(Math.abs(curveMean(curve) - triangularMean(range)) / (high - low)).toBeLessThan(1e-6);
  });
});

describe('a triangle', () => {
  it('without width is a constant, never NaN', () => {
    const range = certain(7);
    expect([triangularMean(range), triangularVariance(range), triangularQuantile(range, 0.4)]).toEqual([
      7, 0, 7,
    ]);
    expect([triangularCdf(range, 6.9), triangularCdf(range, 7)]).toEqual([0, 1]);
    expect(valueAt(triangularCurve(range), 1)).toBe(7);
  });

  it('out of order, or a chance that is none, is refused', () => {
    expect(() => triangularCurve({ low: 3, likely: 2, high: 5 })).toThrow(RangeError);
    expect(() => triangularQuantile({ low: 1, likely: 2, high: 5 }, 1.2)).toThrow(RangeError);
  });
});
