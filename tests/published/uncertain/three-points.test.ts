// Three-point estimates against published and independently computed values.
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../../src/estimate/uncertain/normal.ts';
import { pertMean, pertQuantile, pertShape, pertVariance } from '../../../src/estimate/uncertain/pert.ts';
import {
  triangularCdf,
  triangularMean,
  triangularQuantile,
  triangularVariance,
} from '../../../src/estimate/uncertain/triangular.ts';

const RANGE = { low: 10, likely: 20, high: 60 };

describe('triangles', () => {
  // Simple Statistical Methods for Software Engineering, eq. 15.6, p. 245: prints 4.17 and 2.0412.
  it('A1: 0, 5, 10 has variance 4.166667 and deviation 2.041241', () => {
    const variance = triangularVariance({ low: 0, likely: 5, high: 10 });
    expect(variance).toBeCloseTo(4.166667, 6);
    expect(Math.sqrt(variance)).toBeCloseTo(2.041241, 6);
    expect(Math.sqrt(variance).toFixed(4)).toBe('2.0412');
  });

  // Closed forms, confirmed with jstat and scipy.
  it('A2: 10, 20, 60', () => {
    expect(triangularMean(RANGE)).toBe(30);
    expect(triangularVariance(RANGE)).toBeCloseTo(116.666667, 6);
    expect(triangularQuantile(RANGE, 0.5)).toBeCloseTo(28.377223, 6);
    expect(triangularQuantile(RANGE, 0.1)).toBeCloseTo(17.071068, 6);
    expect(triangularQuantile(RANGE, 0.8)).toBeCloseTo(40, 12);
    expect(triangularQuantile(RANGE, 0.9)).toBeCloseTo(45.857864, 6);
    expect(triangularCdf(RANGE, 20)).toBeCloseTo(0.2, 12);
  });

  // Closed forms, confirmed with scipy.
  it.each([
    [{ low: 100, likely: 100, high: 160 }, 120, 133.167184],
    [{ low: 40, likely: 100, high: 100 }, 80, 93.665631],
  ])('A3: the mode at an end', (range, mean, p80) => {
    expect(triangularMean(range)).toBe(mean);
    expect(triangularVariance(range)).toBeCloseTo(200, 9);
    expect(triangularQuantile(range, 0.8)).toBeCloseTo(p80, 6);
  });
});

describe('PERT ranges', () => {
  // Closed form and beta inverse; octave betainc, jstat.
  it('A4: 10, 20, 60', () => {
    expect(pertShape(RANGE)).toEqual({ alpha: 1.8, beta: 4.2 });
    expect(pertMean(RANGE)).toBe(25);
    expect(pertVariance(RANGE)).toBe(75);
    expect(pertQuantile(RANGE, 0.1)).toBeCloseTo(14.495107, 5);
    expect(pertQuantile(RANGE, 0.5)).toBeCloseTo(23.833613, 5);
    expect(pertQuantile(RANGE, 0.8)).toBeCloseTo(32.512931, 5);
    expect(pertQuantile(RANGE, 0.9)).toBeCloseTo(37.266702, 5);
  });

  // Closed form: the older convention would give 69.444444.
  it('A5: the variance is the beta’s, not ((high-low)/6)^2', () => {
    expect(pertVariance(RANGE)).not.toBeCloseTo(69.444444, 1);
    expect(pertVariance(RANGE) - ((60 - 10) / 6) ** 2).toBeCloseTo(75 - 69.444444, 6);
  });
});

describe('a network and a path', () => {
  // Worked problem at flylib.com/books/en/3.287.1.117/1 (from memory Taylor, Introduction to Management Science, ch. 8).
  const activities = [
    [5, 8, 17],
    [7, 10, 13],
    [3, 5, 7],
    [1, 3, 5],
    [4, 6, 8],
    [3, 3, 3],
    [3, 4, 5],
  ].map(([low = 0, likely = 0, high = 0]) => ({ low, likely, high }));

  it('A6: times 9, 10, 5, 3, 6, 3, 4; path 1-3-5-7 takes 24; done within 28 with 0.963181', () => {
    expect(activities.map(pertMean)).toEqual([9, 10, 5, 3, 6, 3, 4]);
    const path = [0, 2, 4, 6].flatMap((i) => activities[i] ?? []);
    const mean = path.reduce((sum, activity) => sum + pertMean(activity), 0);
    // The problem takes the older variance, ((high-low)/6)^2, which the tool does not use.
    const variance = path.reduce((sum, { low, high }) => sum + ((high - low) / 6) ** 2, 0);
    expect([mean, variance]).toEqual([24, expect.closeTo(5, 12)]);
    const z = (28 - mean) / Math.sqrt(variance);
    expect(z).toBeCloseTo(1.788854, 6);
    expect(normalCdf(z)).toBeCloseTo(0.963181, 6);
    expect(Math.abs(normalCdf(z) - 0.9633)).toBeLessThan(2e-4);
  });

  // curioustab.com item 64878: prints 0.84.
  it('A7: N(3,1), N(8,2) and N(6,2) in a row end within 20 with 0.841345', () => {
    const z = (20 - (3 + 8 + 6)) / Math.sqrt(1 + 4 + 4);
    expect(normalCdf(z)).toBeCloseTo(0.841345, 6);
  });
});
