// An opening drawn from its sides and diagonals. 1200 x 900 with diagonals 1502 and 1498 is racked 2.5 mm over the 900
// side: the parallelogram law. A trapezoid of equal diagonals is not drawn as a rectangle.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ReadingOf } from '../../../src/rollup/measured.ts';
import { openingDrawn } from '../../../src/views/drawn/opening.ts';
import { roundOf, UNIT } from '../../../src/views/drawn/opening-round.ts';
import { DESK, type Drawn, PHONE, type Point } from '../../../src/views/drawn/shapes.ts';
import { beyond, linesOf, pointsOf, textsOf, thingOf } from './things.ts';

const drawn = (width: number, ...lines: string[]): Drawn & { factor: number } => {
  const drawing = openingDrawn(thingOf('diagonals', ...lines), 'mm', width);
  if (drawing?.factor === undefined) throw new Error('it can be drawn');
  return { ...drawing, factor: drawing.factor };
};
const RACKED = 'state: before, a: 1200 mm, b: 900 mm, a2: 1200 mm, b2: 900 mm, d1: 1502 mm, d2: 1498 mm';
const SQUARE = 'state: after, a: 1200 mm, b: 900 mm, a2: 1200 mm, b2: 900 mm, d1: 1500 mm, d2: 1500 mm';
const corners = (drawing: Drawn, look: string) =>
  pointsOf(drawing, look) as readonly [Point, Point, Point, Point];

describe.each([DESK, PHONE])('an opening on %i units', (width) => {
  test('is to scale, its rack larger by the stated factor', () => {
    const drawing = drawn(width, RACKED);
    const [p, q, r, s] = corners(drawing, 'shape');
    expect(q[0] - p[0]).toBeCloseTo(1200 * drawing.scale, 6);
    expect(p[1] - s[1]).toBeCloseTo(900 * drawing.scale, 6);
    expect(s[0] - p[0]).toBeCloseTo(2.5 * drawing.scale * drawing.factor, 6);
    expect(r[0] - q[0]).toBeCloseTo(2.5 * drawing.scale * drawing.factor, 6);
    expect(textsOf(drawing)).toContain(`out of square × ${drawing.factor}`);
  });

  test('shows what was in dashes and what is in ink', () => {
    const drawing = drawn(width, RACKED, SQUARE);
    const [, , r, s] = corners(drawing, 'was');
    const [p, , , now] = corners(drawing, 'shape');
    expect(now[0] - p[0]).toBeCloseTo(0, 9);
    expect(s[0] - now[0]).toBeCloseTo((2.5 / 2) * drawing.scale * drawing.factor, 6);
    expect(r[0]).toBeGreaterThan(s[0]);
    expect(linesOf(drawing, 'diag')).toHaveLength(2);
    expect(linesOf(drawing, 'diag was')).toHaveLength(2);
  });

  test('with one side longer than the side across from it is no rectangle', () => {
    const drawing = drawn(
      width,
      'state: before, a: 1200 mm, b: 900 mm, a2: 1204 mm, b2: 900 mm, d1: 1501 mm, d2: 1501 mm',
    );
    const [p, q, r, s] = corners(drawing, 'shape');
    expect(r[0] - s[0] - (q[0] - p[0])).toBeCloseTo(4 * drawing.scale * drawing.factor, 6);
  });

  test('keeps within its edges', () => {
    expect(beyond(drawn(width, RACKED, SQUARE))).toEqual([]);
    const mounts = 'corners: [L1, L5, R5, R1]';
    expect(beyond(drawn(width, `${RACKED}, ${mounts}`, `${SQUARE}, ${mounts}`))).toEqual([]);
    expect(beyond(drawn(width, 'state: before, a: 300 mm, b: 900 mm, d1: 950 mm, d2: 947 mm'))).toEqual([]);
  });
});

test('both drawings have the same factor', () => {
  expect(drawn(DESK, RACKED).factor).toBe(drawn(PHONE, RACKED).factor);
});

describe('a bay whose corners are mounts', () => {
  // The same frame, its corners written from four beginnings and both ways round.
  const sides = { L1L5: 1200, L5R5: 900, R1R5: 1200, L1R1: 900, L1R5: 1502, L5R1: 1498 } as Record<
    string,
    number
  >;
  const between = (one: string, other: string) => sides[[one, other].sort().join('')];
  const written = (names: readonly [string, string, string, string]) => {
    const [p, q, r, s] = names;
    return `state: before, corners: [${names.join(', ')}], a: ${between(p, q)} mm, b: ${between(q, r)} mm, a2: ${between(r, s)} mm, b2: ${between(s, p)} mm, d1: ${between(p, r)} mm, d2: ${between(q, s)} mm`;
  };

  test('lies with its front to the left and its left side below, wherever the writer began', () => {
    const first = drawn(DESK, written(['L1', 'L5', 'R5', 'R1']));
    for (const names of [
      ['L5', 'R5', 'R1', 'L1'],
      ['R5', 'R1', 'L1', 'L5'],
      ['R1', 'L1', 'L5', 'R5'],
      ['R1', 'R5', 'L5', 'L1'],
      ['L1', 'R1', 'R5', 'L5'],
    ] as const) {
      expect(drawn(DESK, written(names))).toEqual(first);
    }
    expect(textsOf(first)).toEqual(
      expect.arrayContaining(['L1', 'L5', 'R5', 'R1', '1502 mm', '1498 mm', 'front']),
    );
    expect(linesOf(first, 'shape')).toHaveLength(2);
  });
});

describe('the shape of an opening', () => {
  const mm = (n: number) => ({ n, d: 1, unit: 'mm' }) as const;

  test('has the sides and diagonals that were read, to second order', () => {
    const off = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.array(off, { minLength: 8, maxLength: 8 }), (by) => {
        const read = UNIT.map(
          ([u, v], i): Point => [1200 * u + (by[2 * i] ?? 0), 900 * v + (by[2 * i + 1] ?? 0)],
        );
        const apart = (points: readonly Point[], i: number, j: number) =>
          Math.hypot(
            (points[i]?.[0] ?? 0) - (points[j]?.[0] ?? 0),
            (points[i]?.[1] ?? 0) - (points[j]?.[1] ?? 0),
          );
        const pairs = { a: [0, 1], b: [1, 2], a2: [2, 3], b2: [3, 0], d1: [0, 2], d2: [1, 3] } as const;
        const reading = Object.fromEntries(
          Object.entries(pairs).map(([key, [i, j]]) => [key, mm(apart(read, i, j))]),
        ) as unknown as ReadingOf<'diagonals'>;
        const { along, across, offs } = roundOf(reading);
        const found = UNIT.map(
          ([u, v], i): Point => [along * u + (offs[i]?.[0] ?? 0), across * v + (offs[i]?.[1] ?? 0)],
        );
        for (const [i, j] of Object.values(pairs)) {
          expect(Math.abs(apart(found, i, j) - apart(read, i, j))).toBeLessThan(0.05);
        }
      }),
    );
  });
});
