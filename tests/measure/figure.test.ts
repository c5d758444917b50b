import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Figure, figureFrom, keeps, widestPlusMinus } from '../../src/measure/figure.ts';

const size = fc.integer({ min: 0, max: 10_000 }).map((each) => each / 100);
const slope = fc.integer({ min: -1000, max: 1000 }).map((each) => each / 100);

describe('the ± of a result', () => {
  it('of one reading is its own', () => {
    expect(figureFrom(3, [{ reading: { value: 3, plusMinus: 0.2 }, slope: 1 }])).toEqual({
      value: 3,
      plusMinus: 0.2,
    });
  });

  it('of four like readings’ mean is twice h / (sqrt 3 sqrt 4)', () => {
    // JCGM 100:2008: u = h / sqrt 3 (4.3.7), u / sqrt n for a mean of independent readings (5.1.2), twice that (6.2.1).
    const readings = [1, 2, 3, 4].map((value): Figure => ({ value, plusMinus: 0.6 }));
    const mean = figureFrom(
      2.5,
      readings.map((reading) => ({ reading, slope: 1 / 4 })),
    );
    expect(mean.plusMinus).toBeCloseTo(0.6 / Math.sqrt(3), 12);
  });

  it('is not known when one reading doesn’t say its own', () => {
    const pulls = [
      { reading: { value: 1, plusMinus: 0.1 }, slope: 1 },
      { reading: { value: 2 }, slope: -1 },
    ];
    expect(figureFrom(-1, pulls)).toEqual({ value: -1 });
    expect(widestPlusMinus(pulls.map(({ reading }) => reading))).toBeUndefined();
  });

  it('is never wider than all readings at their ends, nor narrower than the one that pulls most', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(size, slope), { minLength: 1, maxLength: 6 }), (parts) => {
        const { plusMinus = Number.NaN } = figureFrom(
          0,
          parts.map(([h, by]) => ({ reading: { value: 0, plusMinus: h }, slope: by })),
        );
        const ends = parts.reduce((sum, [h, by]) => sum + h * Math.abs(by), 0);
        const most = Math.max(...parts.map(([h, by]) => h * Math.abs(by)));
        expect(plusMinus).toBeLessThanOrEqual(ends * (1 + 1e-12));
        expect(plusMinus).toBeGreaterThanOrEqual(most * (1 - 1e-12));
      }),
    );
  });
});

describe('a limit', () => {
  it.each([
    [{ value: -0.5 }, 0.5, 'within'],
    [{ value: 0.1 + 0.2 }, 0.3, 'within'],
    [{ value: 0.6 }, 0.5, 'not within'],
    [{ value: 0.3, plusMinus: 0.2 }, 0.5, 'within'],
    [{ value: 0.4, plusMinus: 0.2 }, 0.5, 'too close to tell'],
    [{ value: 0.6, plusMinus: 0.2 }, 0.5, 'too close to tell'],
    [{ value: -0.8, plusMinus: 0.2 }, 0.5, 'not within'],
  ] as const)('%j against %f: %s', (off, limit, verdict) => {
    expect(keeps(off, limit)).toBe(verdict);
  });
});
