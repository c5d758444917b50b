// Straightness and flatness by the definitions of ISO 12780-1 and 12781-1 (2011). The values were worked out for this
// project by closed form and by linear programming: no published reference set for these was found.
import { describe, expect, it } from 'vitest';
import { flatnessOf } from '../../../src/measure/heights.ts';
import { evenlyAlong, straightOf } from '../../../src/measure/straight.ts';
import { type Corners, twistOfCorners } from '../../../src/measure/twist.ts';
import { answered } from '../../measure/answered.ts';
import { norris } from './norris.ts';

const straight = (length: number, offsets: readonly number[]) =>
  answered(
    straightOf(
      evenlyAlong(
        length,
        offsets.map((value) => ({ value })),
      ),
    ),
  );
const corners = (...z: [number, number, number, number]) =>
  z.map((value) => ({ value })) as unknown as Corners;
/** Going round 1200 by 900. */
const round = (z: readonly number[]) =>
  [
    [0, 0],
    [1200, 0],
    [1200, 900],
    [0, 900],
  ].map(([x = 0, y = 0], i) => ({ x, y, z: z[i] ?? 0 }));

describe('twist of four corners', () => {
  it('D9: 0, 0, 0, 8 is twisted by 8 and lies in a layer of 4', () => {
    const { twist, zone, residuals } = twistOfCorners(corners(0, 0, 0, 8));
    expect(twist.value).toBe(-8);
    expect(zone.value).toBe(4);
    expect(residuals).toEqual([-2, 2, -2, 2]);
    const flat = answered(flatnessOf(round([0, 0, 0, 8])));
    expect(flat.zone.width.value).toBeCloseTo(4, 9);
    expect(flat.zone.square).toBeCloseTo(3.999938, 6);
    expect(flat.best.range.value).toBeCloseTo(4, 9);
    expect(flat.twist?.value).toBeCloseTo(-8, 9);
    flat.best.residuals.forEach((each, i) => {
      expect(each).toBeCloseTo(residuals[i] ?? 0, 9);
    });
  });

  it('D10: 1, 3, 6, 2 and 0, 4, 0, 4', () => {
    const one = twistOfCorners(corners(1, 3, 6, 2));
    expect([one.twist.value, one.residuals[0], one.zone.value]).toEqual([2, 0.5, 1]);
    const two = twistOfCorners(corners(0, 4, 0, 4));
    expect([two.twist.value, two.zone.value]).toEqual([-8, 4]);
  });
});

describe('straightness', () => {
  it('D11: 0, 3, 0, 0, 0 by hundreds', () => {
    const { leastSquares, zone, ends, bow } = straight(400, [0, 3, 0, 0, 0]);
    expect(leastSquares.slope).toBeCloseTo(-0.003, 12);
    expect(leastSquares.intercept).toBeCloseTo(1.2, 12);
    expect(leastSquares.range.value).toBeCloseTo(3.3, 9);
    expect(zone.width.value).toBeCloseTo(3, 9);
    expect(ends.range.value).toBeCloseTo(3, 9);
    expect(bow).toEqual({ value: 3, along: 100 });
  });

  it('D12: nine offsets over 2 m', () => {
    const { leastSquares, zone, ends, high, low } = straight(
      2000,
      [0, 0.4, 1.1, 1.3, 1.2, 0.9, 0.8, 0.2, -0.1],
    );
    expect(leastSquares.slope).toBeCloseTo(-0.000133333, 9);
    expect(leastSquares.intercept).toBeCloseTo(0.777778, 6);
    expect(leastSquares.range.value).toBeCloseTo(1.4, 9);
    expect(zone.width.value).toBeCloseTo(1.3375, 9);
    expect(ends.range.value).toBeCloseTo(1.3375, 9);
    expect(high.map(({ along }) => along)).toEqual([750]);
    expect(low.map(({ along }) => along)).toEqual([0, 2000]);
  });

  it('D15: the least-squares range of the Norris readings, and their narrowest strip', () => {
    const { leastSquares, zone } = answered(straightOf(norris.map(({ x, y }) => ({ along: x, off: y }))));
    expect(leastSquares.range.value).toBeCloseTo(4.142163982, 6);
    expect(zone.width.value).toBeCloseTo(3.96935435, 6);
  });
});

describe('flatness', () => {
  it('D13: a grid of 500 by 400', () => {
    const grid = [
      [0, 2, 1],
      [1, 5, 2],
      [0, 3, 4],
    ].flatMap((row, j) => row.map((z, i) => ({ x: i * 500, y: j * 400, z })));
    const { best, zone, furthest } = answered(flatnessOf(grid));
    expect(best.plane.alongX).toBeCloseTo(0.002, 12);
    expect(best.plane.acrossY).toBeCloseTo(0.00166666667, 11);
    expect(best.plane.height).toBeCloseTo(0.333333, 6);
    expect(best.range.value).toBeCloseTo(4.666667, 6);
    expect(best.deviation).toBeCloseTo(1.598611, 6);
    expect(zone.width.value).toBeCloseTo(4.5, 9);
    expect(furthest.value).toBeCloseTo(2.25, 9);
  });
});
