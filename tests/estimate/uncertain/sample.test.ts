import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../src/estimate/uncertain/curve.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { type Line, sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { meanAndDeviation } from '../../../src/estimate/uncertain/summary.ts';

const standard = curveFrom((z) => ({ value: z, slope: 1 }));
const lines: Line[] = [
  { id: 'sill', curve: pertCurve({ low: 6, likely: 9, high: 16 }) },
  { id: 'door', curve: pertCurve({ low: 10, likely: 14, high: 31 }) },
  { id: 'fender', curve: pertCurve({ low: 18, likely: 25, high: 44 }) },
];

describe('draws', () => {
  it('are the same at every run with one seed, and others with another', () => {
    const first = sampleLines(lines, { seed: 'aldermere', draws: 500 });
    expect(sampleLines(lines, { seed: 'aldermere', draws: 500 })).toEqual(first);
    expect(sampleLines(lines, { seed: 'aldermerf', draws: 500 }).totals[0]).not.toBe(first.totals[0]);
  });

  it('are kept by a line whatever stands beside it, in whatever order', () => {
    const all = sampleLines(lines, { seed: 's', draws: 300 });
    const turned = sampleLines([...lines].reverse(), { seed: 's', draws: 300 });
    expect(turned.totals).toEqual(all.totals);
    const [door] = sampleLines(lines.slice(1, 2), { seed: 's', draws: 300 }).lines;
    expect(door).toEqual(all.lines[1]);
  });

  it('number 20,000 unless told otherwise, and add up draw by draw', () => {
    const { draws, lines: drawn, totals } = sampleLines(lines, { seed: 's' });
    expect([draws, totals.length]).toEqual([20_000, 20_000]);
    for (const d of [0, 77, 19_999]) {
      expect(totals[d]).toBeCloseTo(
        drawn.reduce((sum, { values }) => sum + (values[d] ?? 0), 0),
        9,
      );
    }
  });

  // A normal copula on normal lines has the copula's parameter as its correlation. Standard error about (1-r^2)/sqrt(n).
  it.each([0, 0.25, 0.6, 1])('share a common cause of %d', (correlation) => {
    const pair = ['a', 'b'].map((id) => ({ id, curve: standard }));
    const { lines: drawn } = sampleLines(pair, { seed: 'pairs', draws: 100_000, correlation });
    const [a, b] = drawn.map(({ values }) => values) as [Float64Array, Float64Array];
    const found = a.reduce((sum, value, d) => sum + value * (b[d] ?? 0), 0) / a.length;
    expect(Math.abs(found - correlation)).toBeLessThan(4 / Math.sqrt(100_000) + correlation * 0.02);
  });

  it('have a quarter as their common cause unless told otherwise', () => {
    const told = sampleLines(lines, { seed: 's', draws: 50, correlation: 0.25 });
    expect(sampleLines(lines, { seed: 's', draws: 50 }).totals).toEqual(told.totals);
  });

  it('are the same to the last digit when their numbers were kept', () => {
    const kept = new Map();
    const fresh = (seed: string, draws: number) => sampleLines(lines, { seed, draws });
    for (const [seed, draws] of [
      ['s', 300],
      ['s', 300],
      ['s', 40],
      ['other', 300],
      ['s', 300],
    ] as const) {
      expect(sampleLines(lines, { seed, draws, kept })).toEqual(fresh(seed, draws));
    }
    const moved = lines.map(({ id }, i) => ({ id, curve: pertCurve({ low: 1, likely: 2 + i, high: 9 }) }));
    expect(sampleLines(moved, { seed: 's', draws: 300, kept })).toEqual(
      sampleLines(moved, { seed: 's', draws: 300 }),
    );
  });

  it('of one id move as one', () => {
    const { lines: drawn } = sampleLines(
      ['same', 'same'].map((id) => ({ id, curve: standard })),
      { seed: 's', draws: 100 },
    );
    expect(drawn[0]?.values).toEqual(drawn[1]?.values);
  });

  it('have the mean of their range', () => {
    const { lines: drawn } = sampleLines(lines, { seed: 'means', draws: 100_000 });
    const { mean, deviation } = meanAndDeviation(drawn[1]?.values ?? []);
    expect(Math.abs(mean - (10 + 4 * 14 + 31) / 6)).toBeLessThan((4 * deviation) / Math.sqrt(100_000));
  });

  it('of no lines are nothing', () => {
    expect(sampleLines([], { seed: 's', draws: 3 }).totals).toEqual(new Float64Array(3));
  });

  it.each([-0.01, 1.01, -0.6, Number.NaN])('refuse a common cause of %d', (correlation) => {
    expect(() => sampleLines(lines, { seed: 's', correlation })).toThrow(/between 0 and 1/);
  });

  it.each([0, 2.5, -4])('refuse to number %d', (draws) => {
    expect(() => sampleLines(lines, { seed: 's', draws })).toThrow(/whole number above zero/);
  });
});
