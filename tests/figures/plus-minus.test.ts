import { describe, expect, it } from 'vitest';
import { millimetres } from '../../src/figures/lengths.ts';
import { readLengthWithPlusMinus } from '../../src/figures/plus-minus.ts';

describe('a length with its ±', () => {
  it.each([
    ['1 5/16 in ± 1/64 in', 33.3375, 0.396875],
    ['1-5/16" +/- 1/64"', 33.3375, 0.396875],
    ['-3 mm ± 0.5 mm', -3, 0.5],
    ['33 mm +- 0.5mm', 33, 0.5],
    ['2\' 3 1/2" ± 1/16 in', 698.5, 1.5875],
    ['33 mm', 33, undefined],
  ])('`%s`', (text, value, plusMinus) => {
    const reading = readLengthWithPlusMinus(text);
    if (!reading.ok) throw new Error(reading.expected);
    expect(millimetres(reading.value.value)).toBeCloseTo(value, 12);
    expect(reading.value.plusMinus && millimetres(reading.value.plusMinus)).toBe(plusMinus);
  });

  it('takes the record’s units for both where it has them', () => {
    expect(readLengthWithPlusMinus('1 5/16 ± 1/64', 'inch')).toEqual({
      ok: true,
      value: { value: { n: 21, d: 16, unit: 'in' }, plusMinus: { n: 1, d: 64, unit: 'in' } },
    });
  });

  it.each(['1 in ±', '± 1 in', '1 in ± 1/64 in ± 1/64 in', '1 in ± -1/64 in', '1 in ± 5', '1 5/0 in ± 1 in'])(
    '`%s` is refused',
    (text) => {
      expect(readLengthWithPlusMinus(text)).toEqual({
        ok: false,
        expected: 'a length such as `1 5/16 in ± 1/64 in` or `33 mm ± 0.5 mm`',
      });
    },
  );
});
