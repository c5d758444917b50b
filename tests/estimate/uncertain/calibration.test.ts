import { describe, expect, it } from 'vitest';
import { calibrationFrom, correctedCurve, TAIL_UNTOLD } from '../../../src/estimate/uncertain/calibration.ts';
import { curveMean, valueAt } from '../../../src/estimate/uncertain/curve.ts';
import { pertQuantile } from '../../../src/estimate/uncertain/pert.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { certain } from '../../../src/figures/ranges.ts';

const took = (...ratios: number[]) => ratios.map((ratio) => ({ range: certain(10), actual: 10 * ratio }));
const range = { low: 6, likely: 9, high: 16 };

describe('what finished lines say', () => {
  it('is nothing below five', () => {
    const found = calibrationFrom(took(2, 2, 2, 2));
    expect(found).toEqual({
      n: 4,
      used: false,
      median: 2,
      shift: 0,
      factor: 1,
      widening: 0,
      tail: TAIL_UNTOLD,
    });
    expect(valueAt(correctedCurve(pertCurve(range), found), 1)).toBe(valueAt(pertCurve(range), 1));
  });

  it('counts half at five and three quarters at fifteen: weight n / (n + 5)', () => {
    expect(calibrationFrom(took(...Array<number>(5).fill(1.44))).factor).toBeCloseTo(1.2, 12);
    expect(calibrationFrom(took(...Array<number>(15).fill(16))).factor).toBeCloseTo(8, 11);
  });

  it('has the middle ratio 1.1 of 0.9, 1.0, 1.1, 1.3, 1.7', () => {
    const { n, used, median } = calibrationFrom(took(1.7, 0.9, 1.1, 1, 1.3));
    expect([n, used]).toEqual([5, true]);
    expect(median).toBeCloseTo(1.1, 12);
  });

  it('can be switched off, and still shows how many lines there are', () => {
    expect(calibrationFrom(took(2, 2, 2, 2, 2, 2), false)).toMatchObject({
      n: 6,
      used: false,
      factor: 1,
      median: 2,
    });
  });

  it('leaves out lines with nothing planned or nothing worked', () => {
    const odd = [
      { range: certain(0), actual: 4 },
      { range: certain(4), actual: 0 },
    ];
    expect(calibrationFrom([...took(1, 1, 1, 1), ...odd])).toMatchObject({ n: 4, used: false });
    expect(calibrationFrom([]).median).toBeNull();
  });

  it('moves every value by the factor when all ran over alike', () => {
    const found = calibrationFrom(took(...Array<number>(5).fill(1.44)));
    expect(found.widening).toBe(0);
    const corrected = correctedCurve(pertCurve(range), found);
    expect(valueAt(corrected, 0.7)).toBeCloseTo(1.2 * valueAt(pertCurve(range), 0.7), 10);
    expect(curveMean(corrected)).toBeCloseTo(1.2 * curveMean(pertCurve(range)), 7);
  });

  it('widens certain values by the scatter of the ratios', () => {
    // ln ratio is -0.2 or 0.2: deviation 0.2 sqrt(6/5) of six, at weight 6/11.
    const up = Math.exp(0.2);
    const found = calibrationFrom(took(up, up, up, 1 / up, 1 / up, 1 / up));
    expect(found.shift).toBeCloseTo(0, 12);
    expect(found.widening).toBeCloseTo((0.2 * Math.sqrt(6 / 5) * 6) / 11, 12);
    expect(found.tail ** 2).toBeCloseTo((6 * 0.04 * 1.2 + 5 * TAIL_UNTOLD ** 2) / 11, 12);
  });

  it('does not count twice what the ranges said themselves', () => {
    // 400 lines that ended where their own leaning range says: next to no correction, although the middle ratio is above 1.
    const { totals } = sampleLines([{ id: 'took', curve: pertCurve(range) }], { seed: 'honest', draws: 400 });
    const found = calibrationFrom(Array.from(totals, (actual) => ({ range, actual })));
    expect(found.median).toBeGreaterThan(pertQuantile(range, 0.4) / 9);
    // Four standard errors of the mean ln ratio: 4 x 0.19 / 20.
    expect(Math.abs(found.shift)).toBeLessThan(0.04);
    expect(found.widening).toBeLessThan(0.03);
  });
});
