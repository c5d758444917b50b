import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Opening, squareOf } from '../../src/measure/square.ts';
import { answered } from './answered.ts';

type Place = [number, number];
const far = ([x, y]: Place, [u, v]: Place) => ({ value: Math.hypot(x - u, y - v) });

/** Sides and diagonals of four corners in the plane, going round. */
function openingOf([p, q, r, s]: [Place, Place, Place, Place]): Opening &
  Required<Pick<Opening, 'a2' | 'b2'>> {
  return { a: far(p, q), b: far(q, r), a2: far(r, s), b2: far(s, p), d1: far(p, r), d2: far(q, s) };
}

/** An opening of about 1200 by 900, each corner moved by up to 60. */
const wander = fc.tuple(
  fc.double({ min: -60, max: 60, noNaN: true }),
  fc.double({ min: -60, max: 60, noNaN: true }),
);
const corners = fc.tuple(wander, wander, wander, wander).map(([p, q, r, s]): [Place, Place, Place, Place] => [
  [p[0], p[1]],
  [1200 + q[0], q[1]],
  [1200 + r[0], 900 + r[1]],
  [s[0], 900 + s[1]],
]);

describe('any opening', () => {
  it('is out of square by the angle between the lines that join the middles of its sides', () => {
    fc.assert(
      fc.property(corners, (places) => {
        const [p, q, r, s] = places;
        const along = [q[0] + r[0] - p[0] - s[0], q[1] + r[1] - p[1] - s[1]] as const;
        const up = [r[0] + s[0] - p[0] - q[0], r[1] + s[1] - p[1] - q[1]] as const;
        const sine = (along[0] * up[0] + along[1] * up[1]) / (Math.hypot(...along) * Math.hypot(...up));
        const { outOfSquare } = answered(squareOf(openingOf(places)));
        // Right but for the mean of two sides that aren't quite parallel: a tenth of a degree in ten here.
        expect(Math.abs(outOfSquare.value - (Math.asin(sine) * 180) / Math.PI)).toBeLessThan(0.1);
      }),
    );
  });

  it('has the corners that its places have', () => {
    fc.assert(
      fc.property(corners, (places) => {
        const found = answered(squareOf(openingOf(places))).corners?.map(({ value }) => value) ?? [];
        const at = (i: number): Place => places[(i + 4) % 4] as Place;
        found.forEach((off, i) => {
          const [from, here, to] = [at(i), at(i + 1), at(i + 2)];
          const one = Math.atan2(from[1] - here[1], from[0] - here[0]);
          const other = Math.atan2(to[1] - here[1], to[0] - here[0]);
          const turn = Math.abs(((((one - other) * 180) / Math.PI + 540) % 360) - 180);
          expect(off).toBeCloseTo(turn - 90, 6);
        });
        expect(found.reduce((sum, off) => sum + off, 0)).toBeCloseTo(0, 6);
      }),
    );
  });

  it('seen in a mirror is out as much the other way; twice as large, as many degrees and twice the rack', () => {
    fc.assert(
      fc.property(corners, fc.double({ min: 0.1, max: 10, noNaN: true }), (places, by) => {
        const opening = openingOf(places);
        const plain = answered(squareOf(opening));
        const mirrored = answered(squareOf({ ...opening, d1: opening.d2, d2: opening.d1 }));
        expect(mirrored.outOfSquare.value).toBeCloseTo(-plain.outOfSquare.value, 9);
        expect(mirrored.rack.overB.value).toBeCloseTo(-plain.rack.overB.value, 9);
        expect(mirrored.square).toBe(plain.square);
        const scaled = answered(
          squareOf(openingOf(places.map(([x, y]) => [x * by, y * by]) as typeof places)),
        );
        expect(scaled.outOfSquare.value).toBeCloseTo(plain.outOfSquare.value, 6);
        expect(scaled.rack.overA.value / by).toBeCloseTo(plain.rack.overA.value, 6);
      }),
    );
  });
});

describe('what is known of an opening', () => {
  const figure = (value: number, plusMinus?: number) =>
    plusMinus === undefined ? { value } : { value, plusMinus };
  const sides = { a: figure(1200), b: figure(900), a2: figure(1200), b2: figure(900) };

  it('is square when the diagonals agree and so do both pairs of sides', () => {
    expect(answered(squareOf({ ...sides, d1: figure(1500), d2: figure(1500) })).square).toBe('square');
    expect(answered(squareOf({ ...sides, d1: figure(1502), d2: figure(1499), within: 3 })).square).toBe(
      'square',
    );
    expect(answered(squareOf({ ...sides, d1: figure(1502), d2: figure(1498), within: 3 })).square).toBe(
      'not square',
    );
  });

  it('is not known with one pair of sides left out', () => {
    const { b2, ...three } = sides;
    expect(answered(squareOf({ ...three, d1: figure(1500), d2: figure(1500) })).square).toBe('not known');
    expect(b2.value).toBe(900);
  });

  it('can be too close to tell', () => {
    const read = Object.fromEntries(
      Object.entries(sides).map(([name, { value }]) => [name, figure(value, 1)]),
    );
    const opening = { ...sides, ...read, d1: figure(1501, 1), d2: figure(1499, 1), within: 3 };
    expect(answered(squareOf(opening)).square).toBe('too close to tell');
  });

  it('doesn’t call readings square that no flat opening has', () => {
    // The diagonals of 1200 by 900 are 1500; 1490 twice is a twisted frame or a slip of the tape.
    const result = answered(squareOf({ ...sides, d1: figure(1490), d2: figure(1490), within: 2 }));
    expect(result.amiss.value).toBeCloseTo(-10, 9);
    expect(result.square).toBe('readings disagree');
  });

  it('carries the ± of its readings', () => {
    const opening = { a: figure(1200, 1), b: figure(900, 1), d1: figure(1500, 1), d2: figure(1500, 1) };
    const { rack } = answered(squareOf(opening));
    // Rack = (d1^2 - d2^2)/(4a): each diagonal pulls with d/(2a) = 0.625, a with nothing; twice 0.625 sqrt(2/3).
    expect(rack.overB.plusMinus).toBeCloseTo(2 * 0.625 * Math.sqrt(2 / 3), 9);
    expect(rack.overB.plusMinus).toBeLessThan(1.25);
  });

  it('is refused when it can’t close', () => {
    expect(squareOf({ a: figure(10), b: figure(10), d1: figure(25), d2: figure(10) })).toMatchObject({
      why: expect.stringContaining('can’t close'),
    });
    expect(squareOf({ a: figure(0), b: figure(10), d1: figure(10), d2: figure(10) })).toMatchObject({
      why: expect.stringContaining('longer than nothing'),
    });
  });
});
