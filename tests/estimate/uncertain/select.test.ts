import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentilesOf } from '../../../src/estimate/uncertain/select.ts';
import { quantileOf, sortedDraws } from '../../../src/estimate/uncertain/summary.ts';

describe('percentiles without sorting', () => {
  it('lie between neighbors: place p (n - 1) along 1, 3, 7, 8, 20, by hand', () => {
    const found = percentilesOf([7, 1, 20, 3, 8], [0, 0.1, 0.5, 0.8, 1]);
    [1, 1.8, 7, 10.4, 20].forEach((value, i) => {
      expect(found[i]).toBeCloseTo(value, 12);
    });
  });

  it('are those of the sorted draws, whatever the draws', () => {
    const draws = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(draws, fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(99), (values, p, q) => {
        const chances = [p, q / 99].sort((a, b) => a - b);
        const sorted = sortedDraws(values);
        const before = [...values];
        expect(percentilesOf(values, chances)).toEqual(chances.map((chance) => quantileOf(sorted, chance)));
        expect(values).toEqual(before);
      }),
    );
  });

  it('refuses no draws, and what is no chance', () => {
    expect(() => percentilesOf([], [0.5])).toThrow(RangeError);
    expect(() => percentilesOf([1], [1.2])).toThrow(RangeError);
  });
});
