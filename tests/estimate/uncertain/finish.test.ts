import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constantCurve } from '../../../src/estimate/uncertain/curve.ts';
import { type DrawnItem, finishOf, type Item } from '../../../src/estimate/uncertain/finish.ts';
import { pertMean, pertQuantile } from '../../../src/estimate/uncertain/pert.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import type { Range } from '../../../src/figures/ranges.ts';

const spent = { hours: 100, money: 5_000 };
const sampling = { seed: 'finish', draws: 20_000 };
const sill = { low: 6, likely: 9, high: 16 };
const cloth = { low: 380, likely: 560, high: 820 };
const hours = (id: string, range: Range, perHour: number): Item => ({
  id,
  hours: pertCurve(range),
  perHour,
  money: [],
});
const bought = (id: string, range: Range, factor: number): Item => ({
  id,
  perHour: 0,
  money: [{ id: 'spend', curve: pertCurve(range), factor }],
});

describe('the finish', () => {
  it('of certain items is their sum, with no spread', () => {
    const items: Item[] = [
      { id: 'fit', hours: constantCurve(4), perHour: 80, money: [] },
      {
        id: 'paint',
        hours: constantCurve(7),
        perHour: 50,
        money: [{ id: 'spend', curve: constantCurve(90), factor: 1.1 }],
      },
      { id: 'plate', perHour: 0, money: [{ id: 'outside', curve: constantCurve(300), factor: 1.08 }] },
    ];
    const { left, finish, within, items: each } = finishOf({ spent, items }, sampling);
    // 4 x 80 + 7 x 50 + 90 x 1.1 + 300 x 1.08 = 1,093.
    for (const p of ['mean', 'p10', 'p50', 'p80', 'p90'] as const) {
      expect(left.hours[p]).toBeCloseTo(11, 9);
      expect(left.money[p]).toBeCloseTo(1_093, 9);
      expect(finish.hours[p]).toBeCloseTo(111, 9);
      expect(finish.money[p]).toBeCloseTo(6_093, 9);
    }
    expect(each.map(({ money }) => Math.round(money.mean))).toEqual([320, 449, 324]);
    expect(each.map(({ share }) => share)).toEqual([0, 0, 0]);
    expect([within(6_094).chance, within(6_092).chance]).toEqual([1, 0]);
  });

  it('of nothing left is what is spent', () => {
    const { left, finish, quantiles, items } = finishOf({ spent, items: [] }, sampling);
    expect([left.money.p90, finish.money.p10, finish.money.p90, finish.hours.p50]).toEqual([
      0, 5_000, 5_000, 100,
    ]);
    expect(new Set(quantiles)).toEqual(new Set([5_000]));
    expect(items).toEqual([]);
  });

  it('of one item is its own curve', () => {
    const { left, quantiles, items } = finishOf({ spent, items: [hours('sill', sill, 80)] }, sampling);
    for (const [p, found, error] of [
      [0.1, left.hours.p10, left.hours.error.p10],
      [0.8, left.hours.p80, left.hours.error.p80],
      [0.8, left.money.p80 / 80, left.hours.error.p80],
      [0.5, ((quantiles[49] ?? 0) - 5_000) / 80, left.hours.error.p50],
    ] as const) {
      expect(Math.abs(found - pertQuantile(sill, p))).toBeLessThan(4 * error);
    }
    // Read off the curve, not the draws.
    expect(items[0]?.hours.p90).toBeCloseTo(pertQuantile(sill, 0.9), 5);
    expect(items[0]?.money.mean).toBeCloseTo(80 * pertMean(sill), 4);
    expect(items[0]?.share).toBeCloseTo(1, 9);
  });

  it('counts hours at their price and purchases at their factor in one item', () => {
    const item = { ...hours('top', sill, 80), money: bought('top', cloth, 1.177).money };
    const { items, left } = finishOf({ spent, items: [item] }, sampling);
    const mean = 80 * pertMean(sill) + 1.177 * pertMean(cloth);
    expect(items[0]?.money.mean).toBeCloseTo(mean, 3);
    expect(Math.abs(left.money.mean - mean)).toBeLessThan(4 * left.money.error.mean);
    expect(items[0]?.money.p10).toBeCloseTo(left.money.p10, 6);
    expect(items[0]?.money.p90).toBeCloseTo(left.money.p90, 6);
  });

  it('shares the spread out by line, nothing to what is certain', () => {
    const { items } = finishOf(
      {
        spent,
        items: [
          hours('wide', { low: 10, likely: 20, high: 60 }, 80),
          hours('sure', { ...sill, low: 9, high: 9 }, 80),
          bought('narrow', cloth, 1),
        ],
      },
      sampling,
    );
    const [wide, sure, narrow] = items.map(({ share }) => share) as [number, number, number];
    expect(wide + sure + narrow).toBeCloseTo(1, 9);
    expect(sure).toBe(0);
    expect(wide).toBeGreaterThan(0.9);
  });

  it('adds what was drawn elsewhere draw by draw', () => {
    const drawn: DrawnItem = {
      id: 'choice',
      hours: Float64Array.from({ length: 1_000 }, (_, d) => d % 2),
      money: Float64Array.from({ length: 1_000 }, (_, d) => (d % 2) * 100),
    };
    const { left, items, within } = finishOf(
      { spent, items: [], drawn: [drawn] },
      { seed: 's', draws: 1_000 },
    );
    expect([left.hours.mean, left.money.mean]).toEqual([0.5, 50]);
    expect(items[0]).toMatchObject({ id: 'choice', money: { mean: 50, p10: 0, p90: 100 } });
    expect(within(5_000).chance).toBe(0.5);
    expect(() => finishOf({ spent, items: [], drawn: [drawn] }, sampling)).toThrow(RangeError);
  });
});

const even = fc.array(fc.tuple(fc.integer({ min: 50, max: 500 }), fc.integer({ min: 1, max: 50 })), {
  minLength: 1,
  maxLength: 6,
});
const itemsOf = (lines: readonly [number, number][], wider = 1): Item[] =>
  lines.map(([middle, half], i) => {
    const range = { low: middle - half * wider, likely: middle, high: middle + half * wider };
    return i % 2 ? bought(`line ${i}`, range, 1.2) : hours(`line ${i}`, range, 60);
  });

describe('whatever the lines', () => {
  // With one seed, widening every even range by k moves each draw k times as far from the same mean.
  it('more risk at the same mean never lowers the P80 of the finish', () => {
    fc.assert(
      fc.property(even, fc.integer({ min: 10, max: 30 }), (lines, tenths) => {
        const p80 = (wider: number) =>
          finishOf({ spent, items: itemsOf(lines, wider) }, { seed: 'risk', draws: 2_000 }).finish.money.p80;
        expect(p80(tenths / 10)).toBeGreaterThanOrEqual(p80(1) - 1e-9 * p80(1));
      }),
      { numRuns: 40 },
    );
  });

  it('their order changes nothing', () => {
    fc.assert(
      fc.property(even, (lines) => {
        const small = { seed: 'order', draws: 500 };
        const [as, turned] = [itemsOf(lines), itemsOf(lines).reverse()].map((items) =>
          finishOf({ spent, items }, small),
        ) as [ReturnType<typeof finishOf>, ReturnType<typeof finishOf>];
        expect(turned.finish).toEqual(as.finish);
        expect(turned.quantiles).toEqual(as.quantiles);
        expect(turned.items.toReversed()).toEqual(as.items);
      }),
      { numRuns: 30 },
    );
  });
});
