import { describe, expect, it } from 'vitest';
import {
  constantCurve,
  curveMean,
  scaledCurve,
  shiftedCurve,
  slopeAt,
  valueAt,
} from '../../../src/estimate/uncertain/curve.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';

const hours = pertCurve({ low: 6, likely: 9, high: 16 });

describe('a curve', () => {
  it('of hours times a rate is money that moves with the hours, draw by draw', () => {
    const id = 'sill/lower-edge';
    const [worked, paid] = [hours, scaledCurve(hours, 85)].map(
      (curve) => sampleLines([{ id, curve }], { seed: 's', draws: 200 }).totals,
    );
    worked?.forEach((each, d) => {
      expect(paid?.[d]).toBeCloseTo(each * 85, 9);
    });
  });

  it('shifts with its mean', () => {
    // (6 + 4 x 9 + 16) / 6 = 9.6667, less 2.
    expect(curveMean(shiftedCurve(hours, -2))).toBeCloseTo(7.666667, 6);
  });

  it('has the slope of its values, and none beyond the table', () => {
    for (const z of [-2.31, 0.017, 1.9]) {
      const rise = (valueAt(hours, z + 1e-5) - valueAt(hours, z - 1e-5)) / 2e-5;
      expect(slopeAt(hours, z)).toBeCloseTo(rise, 6);
    }
    expect([slopeAt(hours, 8.1), slopeAt(hours, -9)]).toEqual([0, 0]);
    expect(valueAt(hours, 50)).toBeCloseTo(16, 2);
    expect(valueAt(constantCurve(3), 50)).toBe(3);
  });

  it('is not turned upside down', () => {
    expect(() => scaledCurve(hours, -1)).toThrow(RangeError);
    expect(valueAt(scaledCurve(hours, 0), 1)).toBe(0);
  });
});
