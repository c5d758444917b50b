import { describe, expect, test } from 'vitest';
import { factorFor, stating } from '../../../src/views/drawn/shapes.ts';

describe('the factor of a drawing', () => {
  // The share of the size over the deviation, down to a round number.
  test.each([
    [3, 400, 0.06, 8],
    [1, 1000, 0.05, 50],
    [0.001, 1000, 0.05, 1000],
    [100, 1000, 0.05, 1],
    [0, 1000, 0.05, 1],
  ])('for %f mm on %f mm is round and no larger than has room', (deviation, size, share, factor) => {
    expect(factorFor(deviation, size, share)).toBe(factor);
  });

  test('is stated in the drawing, unless nothing is drawn larger', () => {
    const plain = { width: 300, height: 100, shapes: [], scale: 1 };
    expect(stating('slope', { ...plain, factor: 10 }).shapes).toEqual([
      expect.objectContaining({ is: 'text', text: 'slope × 10' }),
    ]);
    expect(stating('slope', { ...plain, factor: 1 })).toEqual({ ...plain, factor: 1 });
    expect(stating('width', plain)).toEqual(plain);
  });
});
