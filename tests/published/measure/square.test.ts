// Diagonals against the parallelogram law and the cosine rule; the values were worked out for this project (no published
// reference set for squareness was found).
import { describe, expect, it } from 'vitest';
import { type Opening, squareOf } from '../../../src/measure/square.ts';
import { answered } from '../../measure/answered.ts';

const opening = (a: number, b: number, d1: number, d2: number): Opening => ({
  a: { value: a },
  b: { value: b },
  d1: { value: d1 },
  d2: { value: d2 },
});
const square = (...sides: [number, number, number, number]) => answered(squareOf(opening(...sides)));

describe('an opening', () => {
  it('D5: 1200 × 900 with diagonals 1502 and 1498 is 0.159155° out, 2.5 mm over the 900 side', () => {
    const { outOfSquare, rack, amiss } = square(1200, 900, 1502, 1498);
    expect(outOfSquare.value).toBeCloseTo(0.159155, 6);
    expect(Math.sin((outOfSquare.value * Math.PI) / 180)).toBeCloseTo(1 / 360, 12);
    expect(rack.overB.value).toBeCloseTo(2.5, 9);
    expect(rack.overA.value).toBeCloseTo(3.333333, 6);
    // 4,500,008 against 4,500,000: the readings agree to a hundredth of a millimeter.
    expect(amiss.value).toBeCloseTo((Math.sqrt(4_500_008) - Math.sqrt(4_500_000)) / Math.SQRT2, 9);
    expect(Math.abs(amiss.value)).toBeLessThan(0.01);
  });

  it.each([
    [0.1, 1501.25611, 1498.742837],
    [0.5, 1506.270001, 1493.70368],
    [1, 1512.513536, 1487.381189],
  ])('D6: a parallelogram out by %f° is found out by as much', (degrees, d1, d2) => {
    expect(square(1200, 900, d1, d2).outOfSquare.value).toBeCloseTo(degrees, 6);
  });

  // The carpenter's triangles (boulderlibrary.net/framing/checking-reference.html: 15, 20, 25).
  it.each([
    [900, 1200, 1500],
    [6, 8, 10],
    [15, 20, 25],
    [5, 12, 13],
    [2400, 1200, 2683.281573],
  ])('D7: %f by %f with diagonals %f is right in every way', (a, b, d) => {
    const sides = opening(a, b, d, d);
    const result = answered(squareOf({ ...sides, a2: sides.a, b2: sides.b }));
    expect(result.outOfSquare.value).toBe(0);
    expect(result.amiss.value).toBeCloseTo(0, 6);
    for (const corner of result.corners ?? []) expect(corner.value).toBeCloseTo(0, 6);
    expect(result.square).toBe('square');
  });

  it('D8: equal diagonals with unequal opposite sides are not called square', () => {
    // An isosceles trapezoid with sides 1200 and 1180 and legs 900: diagonal^2 = leg^2 + long x short (Ptolemy).
    const d = Math.sqrt(900 ** 2 + 1200 * 1180);
    const result = answered(
      squareOf({ ...opening(1200, 900, d, d), a2: { value: 1180 }, b2: { value: 900 } }),
    );
    expect(result.diagonals.verdict).toBe('within');
    expect(result.sides.a?.off.value).toBe(20);
    expect(result.square).toBe('not square');
    // Its corners are out by asin(10 / 900) at the long side, and as much the other way at the short one.
    const corners = result.corners?.map(({ value }) => value) ?? [];
    const out = (Math.asin(10 / 900) * 180) / Math.PI;
    [-out, out, out, -out].forEach((expected, i) => {
      expect(corners[i]).toBeCloseTo(expected, 6);
    });
  });

  it('D8: equal diagonals alone don’t make it square', () => {
    expect(square(1200, 900, 1500, 1500).square).toBe('not known');
    expect(square(1200, 900, 1502, 1498).square).toBe('not square');
  });
});
