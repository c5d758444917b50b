import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { certain, type Range } from '../../../../src/figures/ranges.ts';
import { compared } from './fender.ts';

const share = (max = 1) => fc.double({ min: 0, max, noNaN: true });
const range = fc
  .tuple(share(500), share(400), share(400))
  .map(([low, left, right]): Range => ({ low, likely: low + left, high: low + left + right }));
const choiceOf = (ranges: Range[]): Choice => ({
  drivers: ranges.map((r, i) => ({ id: `price ${i}`, kind: 'price', range: r })),
  options: ranges.map((_, i) => ({ id: `way ${i}`, terms: [{ amount: `price ${i}` }] })),
});
const ranges = fc.array(range, { minLength: 2, maxLength: 4 });

describe('whatever the options', () => {
  it('their order changes nothing', () => {
    fc.assert(
      fc.property(ranges, (list) => {
        const choice = choiceOf(list);
        const there = compared(choice, { draws: 200 });
        const back = compared({ ...choice, options: [...choice.options].reverse() }, { draws: 200 });
        expect({ ...back, options: [...back.options].reverse() }).toEqual(there);
      }),
      { numRuns: 40 },
    );
  });

  it('knowing is never worth less than nothing, nor more than the widest regret', () => {
    fc.assert(
      fc.property(ranges, (list) => {
        const { knowing } = compared(choiceOf(list), { draws: 200 });
        expect(knowing.worth).toBeGreaterThanOrEqual(0);
        expect(knowing.worth).toBeLessThanOrEqual(Math.max(...list.map(({ high }) => high)));
      }),
      { numRuns: 60 },
    );
  });

  it('knowing is worth nothing when one option’s worst beats the other’s best', () => {
    fc.assert(
      fc.property(range, range, (cheap, dear) => {
        const by = cheap.high - dear.low + 1;
        const above = { low: dear.low + by, likely: dear.likely + by, high: dear.high + by };
        const { knowing, options } = compared(choiceOf([cheap, above]), { draws: 200 });
        expect(knowing.worth).toBe(0);
        expect(options.map(({ cheapest }) => cheapest.chance)).toEqual([1, 0]);
      }),
      { numRuns: 60 },
    );
  });

  it('a certain one has no spread', () => {
    fc.assert(
      fc.property(share(9_999), range, (price, other) => {
        const [sure] = compared(choiceOf([certain(price), other]), { draws: 100 }).options;
        const { expected, p10, p50, p90, deviation } = sure?.cost ?? {};
        expect([expected, p10, p50, p90, deviation]).toEqual([price, price, price, price, 0]);
      }),
      { numRuns: 40 },
    );
  });

  it('the same seed gives the same figures', () => {
    fc.assert(
      fc.property(ranges, fc.string(), (list, seed) => {
        const once = compared(choiceOf(list), { draws: 100, seed });
        expect(compared(choiceOf(list), { draws: 100, seed })).toEqual(once);
      }),
      { numRuns: 30 },
    );
  });
});
