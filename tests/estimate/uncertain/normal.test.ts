import { describe, expect, it } from 'vitest';
import { normalCdf, normalDensity, normalQuantile } from '../../../src/estimate/uncertain/normal.ts';

describe('the standard normal curve', () => {
  // Computed with scipy.stats.norm (cdf, ppf).
  it.each([
    [-8, 6.22096057427174e-16],
    [-6, 9.865876450376946e-10],
    [-3, 0.0013498980316300933],
    [-1.5, 0.06680720126885806],
    [0, 0.5],
    [1, 0.8413447460685429],
    [2.999, 0.9986456634662729],
  ])('has the chance of at most %d to twelve digits', (z, chance) => {
    expect(Math.abs(normalCdf(z) / chance - 1)).toBeLessThan(1e-12);
  });

  it.each([
    [1e-15, -7.941345326170998],
    [0.001, -3.090232306167813],
    [0.1, -1.2815515655446008],
    [0.5, 0],
    [0.8, 0.8416212335729143],
    [0.975, 1.959963984540054],
  ])('turns the chance %d back into its z', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 11);
  });

  it('joins its two formulas without a step', () => {
    const rise = normalCdf(-3 + 1e-7) - normalCdf(-3 - 1e-7);
    expect(Math.abs(rise / (2e-7 * normalDensity(3)) - 1)).toBeLessThan(1e-6);
  });

  it('ends at 0 and 1, and keeps what is no number', () => {
    expect([normalCdf(-Infinity), normalCdf(Infinity)]).toEqual([0, 1]);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity]);
    expect(normalCdf(Number.NaN)).toBeNaN();
  });

  it.each([-0.1, 1.1, Number.NaN])('refuses %d as a chance', (p) => {
    expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});
