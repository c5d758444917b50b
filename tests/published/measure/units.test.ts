// Lengths, fractions and slopes against their definitions: NIST SP 811, app. B (digits from memory) and trigonometry,
// worked out with two other programs.
import { describe, expect, it } from 'vitest';
import { type Length, millimetres, readLength } from '../../../src/figures/lengths.ts';
import { degreesOf, slopeOf } from '../../../src/measure/level.ts';

const millimeters = (text: string): number => {
  const read = readLength(text);
  if (!read.ok) throw new Error(read.expected);
  return millimetres(read.value);
};

describe('units', () => {
  it('D1: an inch is 25.4 mm and a foot 0.3048 m', () => {
    expect(millimeters('1 in')).toBe(25.4);
    expect(millimeters("1'")).toBe(304.8);
  });

  it.each([
    ['1/64 in', 0.396875],
    ['5/16 in', 7.9375],
    ['63/64 in', 25.003125],
  ])('D2: %s is %f mm', (text, expected) => {
    expect(millimeters(text)).toBe(expected);
  });

  it('D2: 7/64 and 5/32 make 17/64', () => {
    const parts = ['7/64 in', '5/32 in', '17/64 in'].map((text) => {
      const read = readLength(text);
      return (read.ok ? read.value : undefined) as Length;
    });
    const [one, two, sum] = parts.map(({ n, d }) => (n * 64) / d);
    expect((one ?? 0) + (two ?? 0)).toBe(sum);
  });
});

describe('slopes', () => {
  it.each([
    [0.05, 0.872665],
    [0.1, 1.745331],
    [0.2, 3.490673],
    [0.5, 8.726868],
    [1, 17.455065],
    [2, 34.920769],
    [5, 87.488664],
    [45, 1000],
  ])('D3: %f° rises %f mm in a meter', (degrees, rise) => {
    expect(slopeOf(degrees).mmPerMeter).toBeCloseTo(rise, 6);
  });

  it('D4: the other way', () => {
    expect(degreesOf(1, 1000)).toBeCloseTo(0.05729576, 8);
    expect(degreesOf(1 / 8, 12)).toBeCloseTo(0.596809, 6);
    expect(slopeOf(1 / 60).mmPerMeter).toBeCloseTo(0.290888, 6);
    expect(slopeOf(1 / 3600).mmPerMeter * 1000).toBeCloseTo(4.848137, 6);
  });
});
