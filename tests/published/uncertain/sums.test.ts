// Sums of equal elements, whose answers are known in closed form.
import { describe, expect, it } from 'vitest';
import { type Curve, curveFrom } from '../../../src/estimate/uncertain/curve.ts';
import { normalCdf, normalDensity, normalQuantile } from '../../../src/estimate/uncertain/normal.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { deviationOfSum } from '../../../src/estimate/uncertain/spread.ts';
import { quantileOf, sortedDraws, summarize } from '../../../src/estimate/uncertain/summary.ts';

/** Uniform from `low` over `width`. */
const uniform = (low: number, width: number): Curve =>
  curveFrom((z) => ({ value: low + width * normalCdf(z), slope: width * normalDensity(z) }));
const summed = (count: number, curve: Curve, draws: number) =>
  sampleLines(
    Array.from({ length: count }, (_, i) => ({ id: `uniform ${i}`, curve })),
    { seed: 'uniform', draws, correlation: 0 },
  ).totals;

describe('leaving shared causes out', () => {
  // Book, Why Correlation Matters in Cost Estimating, 1999 (the chart from memory); formula 1 - 1/sqrt(1 + (n-1) r).
  it.each([
    [10, 0.2, 40.24],
    [10, 0.5, 57.36],
    [10, 1, 68.38],
    [30, 0.1, 49.36],
    [30, 0.2, 61.65],
    [30, 0.5, 74.6],
    [30, 1, 81.74],
    [100, 0.2, 78.07],
    [100, 1, 90],
    [1000, 0.2, 92.94],
  ])('A15: %d equal elements with correlation %d lose %d%% of the deviation', (n, correlation, percent) => {
    const equal = Array<number>(n).fill(3);
    const lost = 1 - deviationOfSum(equal, 0) / deviationOfSum(equal, correlation);
    expect(Math.abs(100 * lost - percent)).toBeLessThan(0.0051);
  });
});

describe('uniform numbers', () => {
  // JCGM 101:2008 (GUM Supplement 1), 9.2.3: the example is known, its figures from memory; closed form by Irwin-Hall.
  it('A16: four of mean 0 and deviation 1 add to an interval of 3.879407 either way', () => {
    const sorted = sortedDraws(summed(4, uniform(-Math.sqrt(3), 2 * Math.sqrt(3)), 1_000_000));
    const half = (quantileOf(sorted, 0.975) - quantileOf(sorted, 0.025)) / 2;
    expect(Math.abs(half - 2 * Math.sqrt(3) * (2 - (3 / 5) ** 0.25))).toBeLessThan(0.01);
    expect(Math.abs(half - 3.879407)).toBeLessThan(0.01);
    const { mean, deviation } = summarize(sorted);
    expect(Math.abs(mean)).toBeLessThan(4 * 0.002);
    expect(Math.abs(deviation - 2)).toBeLessThan(0.01);
    // The normal curve would say more.
    expect(2 * normalQuantile(0.975)).toBeCloseTo(3.919928, 6);
  });

  // Elementary: P(sum <= x) = 1 - (2 - x)^2 / 2 above 1.
  it('A17: two have P80 at 2 - sqrt(0.4), not at 1.6', () => {
    const { p80, error } = summarize(summed(2, uniform(0, 1), 400_000));
    expect(Math.abs(p80 - 1.367544)).toBeLessThan(4 * error.p80);
    expect(error.p80).toBeLessThan(0.002);
  });
});
