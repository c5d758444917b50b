import { describe, expect, it } from 'vitest';
import {
  chancesOfCheapest,
  expectedOf,
  valueOfKnowing,
} from '../../../../src/estimate/uncertain/choice/knowing.ts';

describe('what knowing is worth', () => {
  it('is the mean regret of the option with the least mean', () => {
    // Means 4 and 5; the least of each draw 1, 3, 5: mean 3.
    const { worth, error } = valueOfKnowing([
      [1, 4, 7],
      [7, 3, 5],
    ]);
    expect(worth).toBeCloseTo(1, 12);
    // Regrets 0, 1, 2: squares about the mean sum to 2.
    expect(error).toBeCloseTo(Math.sqrt(2) / 3, 12);
  });

  it('weighs states by their chances', () => {
    const chances = [0.25, 0.75];
    expect(expectedOf([8, 4], chances)).toBe(5);
    // 5 against 6: knowing saves 8 - 0 a quarter of the time.
    expect(
      valueOfKnowing(
        [
          [8, 4],
          [0, 8],
        ],
        chances,
      ),
    ).toEqual({ worth: 2, error: 0 });
  });

  it('is nothing for one option', () => {
    expect(valueOfKnowing([[1, 9, 4]]).worth).toBe(0);
  });

  it('needs options over the same draws', () => {
    expect(() => valueOfKnowing([])).toThrow(RangeError);
    expect(() => valueOfKnowing([[1], [1, 2]])).toThrow(RangeError);
  });

  it('lets options that tie share the draw', () => {
    expect(
      chancesOfCheapest([
        [1, 5, 2, 3],
        [1, 4, 2, 9],
        [1, 6, 8, 4],
      ]),
    ).toEqual([(1 / 3 + 0 + 1 / 2 + 1) / 4, (1 / 3 + 1 + 1 / 2) / 4, 1 / 3 / 4]);
  });
});
