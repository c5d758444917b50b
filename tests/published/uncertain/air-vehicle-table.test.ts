// A published table of seven cost elements. Inputs: GAO-20-195G (2020), Table 12, thousands of dollars for one vehicle
// (gaoinnovations.gov/cost-guide/cost-risk-analysis-data-and-methods.html). Results are not the publisher's: closed
// forms, an exact convolution on a grid of one, and four million draws with scipy.
import { describe, expect, it } from 'vitest';
import { constantCurve } from '../../../src/estimate/uncertain/curve.ts';
import { finishOf } from '../../../src/estimate/uncertain/finish.ts';
import { type Sampled, sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { deviationOfSum } from '../../../src/estimate/uncertain/spread.ts';
import { chanceAtMost, quantileOf, sortedDraws, summarize } from '../../../src/estimate/uncertain/summary.ts';
import {
  triangularCurve,
  triangularMean,
  triangularQuantile,
  triangularVariance,
} from '../../../src/estimate/uncertain/triangular.ts';

const ELEMENTS: [string, number, number, number][] = [
  ['airframe', 17_955, 19_645, 21_785],
  ['propulsion', 8_500, 10_553, 13_000],
  ['communications', 4_000, 4_306, 5_100],
  ['navigation', 4_100, 4_305, 4_650],
  ['central computer', 550, 600, 650],
  ['software', 32_300, 35_547, 52_500],
  ['integration', 1_950, 2_136, 2_600],
];
const ranges = ELEMENTS.map(([, low, likely, high]) => ({ low, likely, high }));
const deviations = ranges.map((range) => Math.sqrt(triangularVariance(range)));
const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
const MEAN = 82_244;

const DRAWS = 500_000;
const drawn = (correlation: number): Sampled =>
  sampleLines(
    ELEMENTS.map(([id], i) => ({ id, curve: triangularCurve(ranges[i] as (typeof ranges)[0]) })),
    { seed: 'seven elements', draws: DRAWS, correlation },
  );
/** Four standard errors: sqrt(p (1-p) / n) / density is 31 at P80 for 100,000 draws, 14 here. */
const PERCENTILE = 4 * 31 * Math.sqrt(100_000 / DRAWS);
/** Four standard errors of a chance near 0.15, and of a deviation. */
const CHANCE = 4 * Math.sqrt((0.15 * 0.85) / DRAWS);
const DEVIATION = 4 / Math.sqrt(2 * DRAWS);

describe('seven elements in closed form', () => {
  it('A8: most likely values add to 77,092, times 32 to 2,466,944 (printed 77 million, 2.47 billion)', () => {
    const certain = ELEMENTS.map(([id, _low, likely]) => ({ id, curve: constantCurve(likely) }));
    const [likely = 0] = sampleLines(certain, { seed: 's', draws: 1 }).totals;
    expect([likely, likely * 32]).toEqual([77_092, 2_466_944]);
  });

  it('A9: means add to 82,244 exactly, times 32 to 2,631,808; independent deviation 4,599.605810', () => {
    expect(sum(ranges.map(triangularMean))).toBeCloseTo(MEAN, 8);
    expect(32 * sum(ranges.map(triangularMean))).toBeCloseTo(2_631_808, 6);
    expect(deviationOfSum(deviations, 0)).toBeCloseTo(4599.60581, 6);
  });

  it.each([
    [0.1, 4841.675],
    [0.2, 5072.205],
    [0.25, 5183.626],
    [0.3, 5292.703],
    [0.5, 5708.204],
    [1, 6634.064],
  ])('A10: with correlation %d the deviation is %d', (correlation, deviation) => {
    expect(Math.abs(deviationOfSum(deviations, correlation) - deviation)).toBeLessThan(1e-3);
  });
});

describe('seven independent elements drawn', () => {
  const sorted = sortedDraws(drawn(0).totals);
  const { mean, deviation, error } = summarize(sorted);

  it('have mean and deviation of the closed forms', () => {
    expect(Math.abs(mean - MEAN)).toBeLessThan(4 * error.mean);
    expect(Math.abs(deviation / 4599.60581 - 1)).toBeLessThan(DEVIATION);
  });

  it.each([
    [0.1, 76_714.6],
    [0.2, 78_031.7],
    [0.5, 81_602.2],
    [0.7, 84_569.0],
    [0.8, 86_446.4],
    [0.9, 88_910.0],
    [0.95, 90_681.6],
  ])('A11: at %d lie at %d', (p, value) => {
    const found = quantileOf(sorted, p);
    expect(Math.abs(found - value)).toBeLessThan(PERCENTILE);
    expect(Math.abs(found / value - 1)).toBeLessThan(0.003);
  });

  it('A11: stay within the most likely sum with 0.1258, within the mean with 0.5476', () => {
    expect(Math.abs(chanceAtMost(sorted, 77_092) - 0.1258)).toBeLessThan(CHANCE);
    expect(Math.abs(chanceAtMost(sorted, MEAN) - 0.5476)).toBeLessThan(4 * Math.sqrt(0.25 / DRAWS));
  });

  // Rule: contingency is the chosen percentile less the point estimate, GAO-20-195G (…/cost-contingency.html).
  it('A12: need 9,354.4 over the most likely sum for P80, 5,152 for the mean', () => {
    expect(Math.abs(quantileOf(sorted, 0.8) - 77_092 - 9_354.4)).toBeLessThan(PERCENTILE);
    expect(sum(ranges.map(triangularMean)) - 77_092).toBeCloseTo(5_152, 6);
  });
});

describe('seven independent elements as a forecast', () => {
  const items = ELEMENTS.map(([id], i) => ({
    id,
    perHour: 0,
    money: [{ id: 'price', curve: triangularCurve(ranges[i] as (typeof ranges)[0]), factor: 1 }],
  }));
  const sampling = { seed: 'seven elements', draws: 100_000, correlation: 0 };
  const spent = { hours: 0, money: 10_000 };
  const { left, finish, within } = finishOf({ spent, items }, sampling);

  it('A9, A11: mean 82,244, P50 81,602, P80 86,446 within 0.3%, and so much higher with 10,000 spent', () => {
    for (const [found, value] of [
      [left.money.mean, MEAN],
      [left.money.p50, 81_602],
      [left.money.p80, 86_446],
      [finish.money.p80 - 10_000, 86_446],
    ] as const) {
      expect(Math.abs(found / value - 1)).toBeLessThan(0.003);
    }
  });

  it('A11: ends within spent and the most likely sum with 0.1258', () => {
    const { chance, error } = within(10_000 + 77_092);
    expect(error).toBeCloseTo(Math.sqrt((0.1258 * 0.8742) / 100_000), 4);
    expect(Math.abs(chance - 0.1258)).toBeLessThan(4 * error);
  });
});

describe('percentiles', () => {
  const added = sum(ranges.map((range) => triangularQuantile(range, 0.8)));

  it('A13: of the elements add to 88,354.8, which only one common cause makes the P80 of the sum', () => {
    expect(Math.abs(added - 88_354.8)).toBeLessThan(0.1);
    expect(Math.abs(summarize(drawn(1).totals).p80 - added)).toBeLessThan(1.5 * PERCENTILE);
    expect(added - summarize(drawn(0).totals).p80).toBeGreaterThan(1_800);
  });

  it.each([
    [0.25, 5_169, 86_934, 0.17],
    [0.5, 5_692, 87_414, 0.204],
  ])(
    'A14: with copula parameter %d deviation %d, P80 %d, chance of the likely sum %d',
    (r, spread, p80, chance) => {
      const sorted = sortedDraws(drawn(r).totals);
      const found = summarize(sorted);
      expect(Math.abs(found.deviation / spread - 1)).toBeLessThan(DEVIATION + 1e-4);
      expect(Math.abs(found.p80 - p80)).toBeLessThan(1.25 * PERCENTILE);
      expect(Math.abs(chanceAtMost(sorted, 77_092) - chance)).toBeLessThan(CHANCE + 0.0005);
    },
  );
});
