import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pertMean, pertQuantile } from '../../../src/estimate/uncertain/pert.ts';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { summarize } from '../../../src/estimate/uncertain/summary.ts';
import type { Range } from '../../../src/figures/ranges.ts';

const share = (max = 1) => fc.double({ min: 0, max, noNaN: true });
const range = fc
  .tuple(share(500), share(400), share(400))
  .map(([low, left, right]): Range => ({ low, likely: low + left, high: low + left + right }));
/** Middles and half widths of even ranges: mean and mode in the middle. */
const even = fc.array(fc.tuple(fc.integer({ min: 50, max: 500 }), fc.integer({ min: 1, max: 50 })), {
  minLength: 1,
  maxLength: 6,
});
const summed = (lines: [number, number][], correlation: number) =>
  summarize(
    sampleLines(
      lines.map(([middle, half], i) => ({
        id: `line ${i}`,
        curve: pertCurve({ low: middle - half, likely: middle, high: middle + half }),
      })),
      { seed: 'risk', draws: 4_000, correlation },
    ).totals,
  );

describe('whatever the figures', () => {
  it('a quantile rises with its chance and stays within the range', () => {
    fc.assert(
      fc.property(range, share(), share(), (r, p, q) => {
        const [low, high] = [Math.min(p, q), Math.max(p, q)].map((c) => pertQuantile(r, c)) as [
          number,
          number,
        ];
        const slack = 1e-12 * r.high;
        expect(low).toBeLessThanOrEqual(high + slack);
        expect(low).toBeGreaterThanOrEqual(r.low - slack);
        expect(high).toBeLessThanOrEqual(r.high + slack);
      }),
    );
  });

  it('the mean lies within the range, and draws do', () => {
    fc.assert(
      fc.property(range, (r) => {
        expect(pertMean(r)).toBeGreaterThanOrEqual(r.low - 1e-9);
        expect(pertMean(r)).toBeLessThanOrEqual(r.high + 1e-9);
        const { totals } = sampleLines([{ id: 'x', curve: pertCurve(r) }], { seed: 's', draws: 50 });
        for (const total of totals) expect(total >= r.low - 1e-9 && total <= r.high + 1e-9).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  // With one seed, widening every even range by k moves each draw k times as far from the same mean.
  it('more risk on all lines at the same mean never lowers the P80 of their sum', () => {
    fc.assert(
      fc.property(even, fc.double({ min: 1, max: 3, noNaN: true }), share(), (lines, wider, correlation) => {
        const before = summed(lines, correlation);
        const after = summed(
          lines.map(([middle, half]): [number, number] => [middle, half * wider]),
          correlation,
        );
        expect(after.p80).toBeGreaterThanOrEqual(before.p80 - 1e-9 * before.p80);
      }),
      { numRuns: 40 },
    );
  });

  // Independent lines, even and with one peak: Birnbaum 1948 orders their sums by peakedness, so P80 can't fall; the
  // draws of before and after are the same, and four standard errors cover what sampling adds.
  it('more risk on one line at the same mean never lowers the P80 of a sum of independent lines', () => {
    fc.assert(
      fc.property(even, fc.double({ min: 1, max: 3, noNaN: true }), (lines, wider) => {
        const [first, ...rest] = lines as [[number, number], ...[number, number][]];
        const before = summed(lines, 0);
        const after = summed([[first[0], first[1] * wider], ...rest], 0);
        expect(after.p80).toBeGreaterThanOrEqual(before.p80 - 4 * before.error.p80);
      }),
      { numRuns: 40 },
    );
  });
});
