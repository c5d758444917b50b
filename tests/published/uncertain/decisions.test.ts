// Decisions under uncertainty against worked answers. Payoffs of the sources enter as costs below zero.
import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../src/estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../../src/estimate/uncertain/choice/compare.ts';
import {
  chancesOfCheapest,
  expectedOf,
  valueOfKnowing,
} from '../../../src/estimate/uncertain/choice/knowing.ts';
import { curveFrom } from '../../../src/estimate/uncertain/curve.ts';
import { normalCdf, normalDensity } from '../../../src/estimate/uncertain/normal.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';

const outcome = (choice: Choice, draws: number) => {
  const result = compareOptions(choice, { seed: 'published', draws, correlation: 0, shape: 'triangular' });
  if (!result.sound) throw new Error('not sound');
  return result.comparison;
};

describe('payoffs by state', () => {
  // Heizer and Render, Module A slides (coursehero.com/file/8871057): 120,000, 52,000 and 68,000 seen, table from memory.
  it('B4: a large plant, a small one or none: 48,000, 52,000, 0; knowing is worth 68,000', () => {
    const costs = [
      [-200_000, 180_000],
      [-100_000, 20_000],
      [0, 0],
    ];
    const chances = [0.6, 0.4];
    expect(costs.map((cost) => 0 - expectedOf(cost, chances))).toEqual([48_000, 52_000, 0]);
    expect(valueOfKnowing(costs, chances).worth).toBeCloseTo(68_000, 8);
  });

  // docstoc.com/docs/51902980: 0.10 seen, the rest follows.
  it('B5: a coin that wins 1.00 or loses 0.80: 0.10; knowing is worth 0.40', () => {
    const costs = [
      [-1, 0.8],
      [0, 0],
    ];
    expect(0 - expectedOf(costs[0] ?? [], [0.5, 0.5])).toBeCloseTo(0.1, 12);
    expect(valueOfKnowing(costs, [0.5, 0.5]).worth).toBeCloseTo(0.4, 12);
  });

  // slideplayer 5165249: chances 0.5, 0.3, 0.2; expected 1030 when knowing, 680 at best without; the payoffs are ours.
  it('B6: 1030 when knowing and 680 without make knowing worth 350', () => {
    const chances = [0.5, 0.3, 0.2];
    const payoffs = [
      [1_000, 400, 300],
      [200, 1_100, 500],
      [300, 100, 1_000],
    ];
    const costs = payoffs.map((row) => row.map((payoff) => -payoff));
    expect(Math.max(...costs.map((cost) => 0 - expectedOf(cost, chances)))).toBeCloseTo(680, 9);
    const knowing = chances.map((_, state) => Math.max(...payoffs.map((row) => row[state] ?? 0)));
    expect(expectedOf(knowing, chances)).toBeCloseTo(1_030, 9);
    expect(valueOfKnowing(costs, chances).worth).toBeCloseTo(350, 9);
  });
});

describe('two uncertain costs', () => {
  // Exact symbolic integration with sympy, confirmed with scipy.
  it('B7: repair Tri(2000,3000,7000), reproduction Tri(3500,4000,5000)', () => {
    const { options, knowing } = outcome(
      {
        drivers: [
          { id: 'repair', kind: 'price', range: { low: 2_000, likely: 3_000, high: 7_000 } },
          { id: 'reproduction', kind: 'price', range: { low: 3_500, likely: 4_000, high: 5_000 } },
        ],
        options: ['repair', 'reproduction'].map((id) => ({ id, terms: [{ amount: id }] })),
      },
      400_000,
    );
    const [repair, reproduction] = options;
    expect(repair?.cost.expected).toBeCloseTo(4_000, 9);
    expect(reproduction?.cost.expected).toBeCloseTo(4_166.667, 3);
    expect(Math.abs((repair?.cheapest.chance ?? 0) - 19 / 32)).toBeLessThan(0.003);
    expect(Math.abs(knowing.worth - 9_425 / 24)).toBeLessThan(5);
    expect((repair?.cost.expected ?? 0) - knowing.worth).toBeCloseTo(86_575 / 24, -1);
  });

  // Raiffa and Schlaifer 1961, unit normal loss, from memory; values computed.
  it.each([
    [0, 0.398942],
    [0.5, 0.197797],
    [1, 0.083315],
    [2, 0.008491],
  ])('B8: unit normal loss at %d is %d', (k, loss) => {
    expect(normalDensity(k) - k * normalCdf(-k)).toBeCloseTo(loss, 6);
  });

  it('B8: normals whose difference has mean 150 and deviation 300: 0.691462, and knowing is worth 59.338967', () => {
    expect(normalCdf(0.5)).toBeCloseTo(0.691462, 6);
    expect(300 * (normalDensity(0.5) - 0.5 * normalCdf(-0.5))).toBeCloseTo(59.338967, 6);
    // 180 and 240 make 300 (3-4-5).
    const normal = (mean: number, deviation: number) =>
      curveFrom((z) => ({ value: mean + deviation * z, slope: deviation }));
    const { lines } = sampleLines(
      [
        { id: 'first', curve: normal(1_000, 180) },
        { id: 'second', curve: normal(1_150, 240) },
      ],
      { seed: 'published', draws: 400_000, correlation: 0 },
    );
    const costs = lines.map(({ values }) => values);
    const { worth, error } = valueOfKnowing(costs);
    expect(Math.abs(worth - 59.338967)).toBeLessThan(4 * error);
    expect(error).toBeLessThan(0.3);
    const chance = chancesOfCheapest(costs)[0] ?? 0;
    expect(Math.abs(chance - 0.691462)).toBeLessThan(4 * Math.sqrt((0.69 * 0.31) / 400_000));
  });
});
