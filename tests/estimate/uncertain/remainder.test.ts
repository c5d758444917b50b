import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { calibrationFrom, TAIL_UNTOLD } from '../../../src/estimate/uncertain/calibration.ts';
import { curveMean, valueAt } from '../../../src/estimate/uncertain/curve.ts';
import { normalCdf, normalQuantile } from '../../../src/estimate/uncertain/normal.ts';
import { pertMean } from '../../../src/estimate/uncertain/pert.ts';
import { remainderOf } from '../../../src/estimate/uncertain/remainder.ts';
import { certain, type Range } from '../../../src/figures/ranges.ts';

const none = calibrationFrom([]);
const range = { low: 6, likely: 9, high: 16 };

/** Chance that the whole is above x, from jstat. */
function above({ low, likely, high }: Range, x: number): number {
  const alpha = 1 + (4 * (likely - low)) / (high - low);
  return 1 - jstat.jStat.beta.cdf((x - low) / (high - low), alpha, 6 - alpha);
}

describe('what is left of a line', () => {
  it('before the low end is the whole less what is spent', () => {
    for (const spent of [0, 2, 6]) {
      const { left, overrun } = remainderOf(range, spent, none);
      expect(overrun).toBe(false);
      expect(curveMean(left)).toBeCloseTo(pertMean(range) - spent, 6);
    }
  });

  it.each([7, 9, 11, 12.5])('with %d spent has the mean of the range cut there', (spent) => {
    // Mean excess = integral of the chance above x from spent to high, over the chance above spent; midpoint rule.
    let area = 0;
    for (let k = 0; k < 4000; k++) area += above(range, spent + ((k + 0.5) * (16 - spent)) / 4000);
    const expected = (area * (16 - spent)) / 4000 / above(range, spent);
    expect(curveMean(remainderOf(range, spent, none).left)).toBeCloseTo(expected, 5);
  });

  it('with 9 spent has the percentiles of the range cut there', () => {
    const { left } = remainderOf(range, 9, none);
    for (const p of [0.1, 0.5, 0.9]) {
      const value = valueAt(left, normalQuantile(p));
      expect(above(range, 9 + value) / above(range, 9)).toBeCloseTo(1 - p, 6);
    }
  });

  it.each([16, 24])(
    'with %d spent is an overrun: the upper half of a log-normal about what is spent',
    (spent) => {
      const { left, overrun } = remainderOf(range, spent, none);
      expect(overrun).toBe(true);
      // E exp(t|z|) = 2 exp(t^2/2) F(t); median at the 75% point.
      const mean = spent * (2 * Math.exp(TAIL_UNTOLD ** 2 / 2) * normalCdf(TAIL_UNTOLD) - 1);
      expect(curveMean(left)).toBeCloseTo(mean, 6);
      expect(valueAt(left, 0)).toBeCloseTo(spent * (Math.exp(TAIL_UNTOLD * normalQuantile(0.75)) - 1), 7);
    },
  );

  it('does not leap at the high end', () => {
    const at = (spent: number) => curveMean(remainderOf(range, spent, none).left);
    expect(Math.abs(at(15.9999) - at(16))).toBeLessThan(0.001);
    for (let spent = 0; spent < 20; spent += 0.02) {
      expect(Math.abs(at(spent + 0.02) - at(spent))).toBeLessThan(0.06);
    }
  });

  it('of a certain value is the rest of it, then an overrun', () => {
    expect(valueAt(remainderOf(certain(9), 4, none).left, 1)).toBe(5);
    expect(remainderOf(certain(9), 9, none).overrun).toBe(true);
    expect(valueAt(remainderOf(certain(9), 9, none).left, 1)).toBeGreaterThan(0);
    expect(remainderOf(certain(0), 0, none)).toMatchObject({ overrun: false });
  });

  it('follows the record’s experience: a shop that runs over has more left', () => {
    const over = calibrationFrom(
      [1.2, 1.5, 1.9, 2.4, 1.4, 1.7, 1.6].map((ratio) => ({ range: certain(10), actual: 10 * ratio })),
    );
    for (const spent of [3, 9]) {
      const [plain, taught] = [none, over].map((c) => curveMean(remainderOf(range, spent, c).left));
      expect(taught, `${spent} spent`).toBeGreaterThan(plain as number);
    }
    expect(remainderOf(range, 17, over).overrun).toBe(true);
  });

  it('has the longer tail past the end, the more the finished lines scattered', () => {
    const wild = calibrationFrom(
      [0.4, 0.6, 0.8, 1, 1.5, 2, 3].map((ratio) => ({ range: certain(10), actual: 10 * ratio })),
    );
    const [plain, taught] = [none, wild].map((c) => curveMean(remainderOf(range, 60, c).left));
    expect(taught).toBeGreaterThan(plain as number);
  });

  it('refuses less than nothing spent', () => {
    expect(() => remainderOf(range, -1, none)).toThrow(RangeError);
  });
});
