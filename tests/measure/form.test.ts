// What must hold of straightness, flatness and twist, whatever was read.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatnessOf, type HeightReading } from '../../src/measure/heights.ts';
import { narrowestLayer } from '../../src/measure/narrowest-layer.ts';
import { evenlyAlong, type OffsetReading, straightOf } from '../../src/measure/straight.ts';
import { type Corners, twistOfCorners, twistOfHeights } from '../../src/measure/twist.ts';
import { answered } from './answered.ts';

const hundredths = (most: number) =>
  fc.integer({ min: -most * 100, max: most * 100 }).map((each) => each / 100);
const offsets = fc.array(hundredths(20), { minLength: 2, maxLength: 30 });
const tilt = hundredths(3).map((each) => each / 100);
const factor = fc.integer({ min: 1, max: 500 }).map((each) => each / 50);
const straight = (readings: readonly OffsetReading[]) => answered(straightOf(readings));
const along = (values: readonly number[]) =>
  evenlyAlong(
    2000,
    values.map((value) => ({ value })),
  );

/** Heights over a grid of places with some left out, at least three not in one line. */
const heights = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 4 }), hundredths(10)), {
    minLength: 3,
    maxLength: 20,
  })
  .map((list) => list.map(([x, y, z]): HeightReading => ({ x: x * 400, y: y * 300, z })))
  .filter((list) => narrowestLayer(list).ok);

describe('straightness', () => {
  it('by the narrowest strip is never wider than by least squares or through the ends', () => {
    fc.assert(
      fc.property(offsets, (values) => {
        const { zone, leastSquares, ends } = straight(along(values));
        expect(zone.width.value).toBeLessThanOrEqual(leastSquares.range.value + 1e-9);
        expect(zone.width.value).toBeLessThanOrEqual(ends.range.value + 1e-9);
      }),
    );
  });

  it('is the least width over every line through two readings', () => {
    fc.assert(
      fc.property(fc.array(hundredths(20), { minLength: 2, maxLength: 9 }), (values) => {
        const readings = along(values);
        const slopes = readings.flatMap((one, i) =>
          readings.slice(i + 1).map((other) => (other.off - one.off) / (other.along - one.along)),
        );
        const widths = slopes.map((slope) => {
          const rests = readings.map((each) => each.off - slope * each.along);
          return Math.max(...rests) - Math.min(...rests);
        });
        expect(straight(readings).zone.width.value).toBeCloseTo(Math.min(...widths), 9);
      }),
    );
  });

  it('is the same whichever way the string hangs and wherever it begins', () => {
    fc.assert(
      fc.property(offsets, hundredths(50), tilt, hundredths(900), (values, up, slope, shift) => {
        const plain = straight(along(values));
        const moved = straight(
          along(values).map((each) => ({
            along: each.along + shift,
            off: each.off + up + slope * each.along,
          })),
        );
        expect(moved.zone.width.value).toBeCloseTo(plain.zone.width.value, 7);
        expect(moved.leastSquares.range.value).toBeCloseTo(plain.leastSquares.range.value, 7);
        expect(moved.bow.value).toBeCloseTo(plain.bow.value, 7);
        expect(Math.max(...moved.high.map(({ off }) => off))).toBeCloseTo(plain.zone.width.value / 2, 7);
      }),
    );
  });

  it('mirrors, turns over and scales with its readings', () => {
    fc.assert(
      fc.property(offsets, factor, (values, by) => {
        const plain = straight(along(values));
        const back = straight(along(values.toReversed()));
        expect(back.zone.width.value).toBeCloseTo(plain.zone.width.value, 9);
        expect(back.leastSquares.slope).toBeCloseTo(-plain.leastSquares.slope, 9);
        const over = straight(along(values.map((value) => -value)));
        expect(over.zone.width.value).toBeCloseTo(plain.zone.width.value, 9);
        expect(over.high.map((spot) => spot.along)).toEqual(plain.low.map((spot) => spot.along));
        const scaled = straight(along(values.map((value) => value * by)));
        expect(scaled.zone.width.value).toBeCloseTo(plain.zone.width.value * by, 7);
        expect(Math.abs(scaled.bow.value)).toBeCloseTo(Math.abs(plain.bow.value) * by, 7);
      }),
    );
  });

  it('carries the ± of its readings: twice at most for the strip, and no more than its own where a reading stands alone', () => {
    const read = (value: number) => ({ value, plusMinus: 0.5 });
    const { zone, bow, leastSquares } = straight(evenlyAlong(400, [0, 3, 0, 0, 0].map(read)));
    expect(zone.width.plusMinus).toBe(1);
    // The bow at a quarter of the length takes 3/4 of the first reading and 1/4 of the last.
    expect(bow.plusMinus).toBeCloseTo(2 * 0.5 * Math.sqrt((1 + 9 / 16 + 1 / 16) / 3), 12);
    expect(leastSquares.range.plusMinus).toBeGreaterThan(0.5);
    expect(leastSquares.range.plusMinus).toBeLessThanOrEqual(1);
  });

  it('needs two places', () => {
    expect(straightOf([{ along: 0, off: 1 }])).toMatchObject({ ok: false });
    expect(
      straightOf([
        { along: 5, off: 1 },
        { along: 5, off: 2 },
      ]),
    ).toMatchObject({ why: 'Straightness needs offsets at two places along the length or more.' });
  });

  it('judges the strip', () => {
    expect(answered(straightOf(along([0, 3, 0]), 3)).verdict).toBe('within');
    expect(answered(straightOf(along([0, 3, 0]), 2.9)).verdict).toBe('not within');
  });
});

describe('flatness', () => {
  it('by the narrowest layer is never thicker than by least squares', () => {
    fc.assert(
      fc.property(heights, (list) => {
        const { zone, best } = answered(flatnessOf(list));
        expect(zone.width.value).toBeLessThanOrEqual(best.range.value + 1e-9);
      }),
    );
  });

  it('is the least thickness over every plane through three readings or along two pairs', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(hundredths(9), hundredths(9), hundredths(9)), { minLength: 3, maxLength: 7 }),
        (list) => {
          const places = list.map(([x, y, z]) => ({ x, y, z }));
          const layer = narrowestLayer(places);
          fc.pre(layer.ok);
          expect(answered(layer).width).toBeCloseTo(leastByTrial(places), 6);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('is the same however the car stands: turned, moved and tilted', () => {
    fc.assert(
      fc.property(heights, hundredths(3), tilt, tilt, hundredths(50), (list, turn, p, q, up) => {
        const plain = answered(flatnessOf(list));
        const moved = list.map(({ x, y, z }) => ({
          x: x * Math.cos(turn) - y * Math.sin(turn) + 77,
          y: x * Math.sin(turn) + y * Math.cos(turn) - 13,
          z: z + up + p * x + q * y,
        }));
        const other = answered(flatnessOf(moved));
        expect(other.zone.width.value).toBeCloseTo(plain.zone.width.value, 6);
        expect(other.best.range.value).toBeCloseTo(plain.best.range.value, 6);
      }),
    );
  });

  it('mirrors and scales with its readings', () => {
    fc.assert(
      fc.property(heights, factor, (list, by) => {
        const plain = answered(flatnessOf(list));
        const mirrored = answered(flatnessOf(list.map((each) => ({ ...each, y: -each.y }))));
        expect(mirrored.zone.width.value).toBeCloseTo(plain.zone.width.value, 7);
        expect(mirrored.best.plane.acrossY).toBeCloseTo(-plain.best.plane.acrossY, 7);
        const scaled = answered(flatnessOf(list.map((each) => ({ ...each, z: each.z * by }))));
        expect(scaled.zone.width.value).toBeCloseTo(plain.zone.width.value * by, 6);
      }),
    );
  });

  it('holds every height in its layer, and lifts each to the highest', () => {
    fc.assert(
      fc.property(heights, (list) => {
        const { zone, furthest, shims } = answered(flatnessOf(list));
        for (const off of zone.offs) expect(Math.abs(off)).toBeLessThanOrEqual(furthest.value + 1e-9);
        const lifted = list.map(({ z }, i) => z + (shims[i] ?? 0));
        for (const z of lifted) expect(z).toBeCloseTo(Math.max(...lifted), 9);
        expect(Math.min(...shims)).toBe(0);
      }),
    );
  });

  it('needs three places apart', () => {
    const line = [0, 1, 2].map((i) => ({ x: i * 100, y: i * 50, z: i * i }));
    expect(flatnessOf(line)).toEqual({
      ok: false,
      why: 'A plane needs three places that don’t lie in one line.',
    });
    expect(flatnessOf([])).toMatchObject({ ok: false });
  });

  it('judges how far the furthest height is from the middle of the layer', () => {
    const square = [0, 0, 0, 8].map((z, i) => ({ x: i === 1 || i === 2 ? 900 : 0, y: i > 1 ? 600 : 0, z }));
    expect(answered(flatnessOf(square, 2)).verdict).toBe('within');
    expect(answered(flatnessOf(square, 1.9)).verdict).toBe('not within');
    const read = square.map((each) => ({ ...each, plusMinus: 0.5 }));
    const { zone, verdict, twist } = answered(flatnessOf(read, 2));
    expect(zone.width.plusMinus).toBe(1);
    expect(verdict).toBe('too close to tell');
    // Four readings of half a millimeter each: 2 x 0.5 x sqrt(4/3).
    expect(twist?.plusMinus).toBeCloseTo(2 / Math.sqrt(3), 12);
  });
});

describe('twist', () => {
  it('of four corners is that of the four heights on their rectangle', () => {
    fc.assert(
      fc.property(fc.tuple(hundredths(9), hundredths(9), hundredths(9), hundredths(9)), (z) => {
        const corners = z.map((value) => ({ value })) as unknown as Corners;
        const places = z.map((each, i) => ({
          x: i === 1 || i === 2 ? 2200 : 0,
          y: i > 1 ? 1000 : 0,
          z: each,
        }));
        expect(answered(twistOfHeights(places)).value).toBeCloseTo(twistOfCorners(corners).twist.value, 7);
        expect(twistOfCorners(corners).zone.value).toBeCloseTo(answered(narrowestLayer(places)).width, 7);
      }),
    );
  });

  it('seen in a mirror is as much the other way', () => {
    fc.assert(
      fc.property(heights, (list) => {
        const plain = twistOfHeights(list);
        fc.pre(plain.ok);
        const mirrored = answered(twistOfHeights(list.map((each) => ({ ...each, y: -each.y }))));
        expect(mirrored.value).toBeCloseTo(-answered(plain).value, 5);
      }),
    );
  });

  it('is not known from three heights', () => {
    const three = [0, 1, 2].map((i) => ({ x: i === 1 ? 100 : 0, y: i * 50, z: 0 }));
    expect(twistOfHeights(three)).toMatchObject({ ok: false });
    expect(answered(flatnessOf(three)).twist).toBeUndefined();
  });
});

/** The thinnest layer among all that three heights on one plane, or two on each, can hold. */
function leastByTrial(places: readonly { x: number; y: number; z: number }[]): number {
  let least = Infinity;
  const steps = places.flatMap((one, i) =>
    places.slice(i + 1).map((other) => ({ x: other.x - one.x, y: other.y - one.y, z: other.z - one.z })),
  );
  for (const [i, one] of steps.entries()) {
    for (const other of steps.slice(i + 1)) {
      const area = one.x * other.y - one.y * other.x;
      if (Math.abs(area) < 1e-9) continue;
      const p = (one.z * other.y - one.y * other.z) / area;
      const q = (one.x * other.z - one.z * other.x) / area;
      const rests = places.map(({ x, y, z }) => z - p * x - q * y);
      least = Math.min(least, Math.max(...rests) - Math.min(...rests));
    }
  }
  return least;
}
