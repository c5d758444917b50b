import { describe, expect, test } from 'vitest';
import { millimetres } from '../../../src/figures/lengths.ts';
import { gapsDrawn } from '../../../src/views/drawn/gaps.ts';
import { DESK, PHONE } from '../../../src/views/drawn/shapes.ts';
import { beyond, linesOf, textsOf, thingsOf } from './things.ts';

const gap = (where: string, state: string, readings: string, more = ', length: 600 mm') =>
  `state: ${state}, where: "${where}", readings: [${readings}]${more}`;
const drawn = (width: number, ...lines: string[]) =>
  gapsDrawn(
    thingsOf('gaps', ...lines).map((thing) => ({ thing, title: thing.name })),
    (length) => String(millimetres(length)),
    width,
  );

describe.each([DESK, PHONE])('a gap on %i units', (width) => {
  const drawing = drawn(
    width,
    gap('left', 'before', '8 mm, 4 mm'),
    gap('left', 'after', '4 mm, 4 mm, 5 mm'),
    gap('right', 'after', '4 mm, 3 mm, 2 mm', ', length: 600 mm, target: 4 mm'),
  );
  const { scale, factor = 0 } = drawing;
  const walls = linesOf(drawing, 'wall').map(({ points }) => points[0]?.[0] ?? 0);
  const edges = linesOf(drawing, 'now').map(({ points }) => points);

  test('is to scale along, its width larger by the stated factor', () => {
    expect(factor).toBe(10);
    const [left] = edges;
    expect((left?.[2]?.[1] ?? 0) - (left?.[0]?.[1] ?? 0)).toBeCloseTo(600 * scale, 6);
    expect(left?.map(([x]) => (x - (walls[0] ?? 0)) / (scale * factor))).toEqual(
      [4, 4, 5].map((size) => expect.closeTo(size, 6)),
    );
    expect(textsOf(drawing)).toContain('width × 10');
  });

  test('opens inward from its outer edge on both sides', () => {
    const right = edges[1]?.map(([x]) => ((walls[1] ?? 0) - x) / (scale * factor));
    expect(right).toEqual([4, 3, 2].map((size) => expect.closeTo(size, 6)));
    expect(walls[1]).toBeGreaterThan(walls[0] ?? 0);
  });

  test('shows what was, what it should be, and every reading', () => {
    expect(linesOf(drawing, 'was')[0]?.points.map(([x]) => (x - (walls[0] ?? 0)) / (scale * factor))).toEqual(
      [expect.closeTo(8, 6), expect.closeTo(4, 6)],
    );
    expect(linesOf(drawing, 'aim')[0]?.points[0]?.[0]).toBeCloseTo((walls[1] ?? 0) - 4 * scale * factor, 6);
    expect(textsOf(drawing)).toEqual(
      expect.arrayContaining(['5', '8', '2', 'before', 'after', 'should be 4']),
    );
    expect(beyond(drawing)).toEqual([]);
  });

  test('whose length nobody wrote down has no factor, and widths to one scale', () => {
    const bare = drawn(
      width,
      gap('left', 'after', '4 mm, 2 mm', ''),
      gap('right', 'after', '1 mm, 4 mm', ''),
    );
    expect(bare.factor).toBeUndefined();
    const [wall = 0, other = 0] = linesOf(bare, 'wall').map(({ points }) => points[0]?.[0] ?? 0);
    const [left, right] = linesOf(bare, 'now').map(({ points }) => points.map(([x]) => x));
    const unit = ((left?.[0] ?? 0) - wall) / 4;
    expect((left?.[1] ?? 0) - wall).toBeCloseTo(2 * unit, 6);
    expect(other - (right?.[1] ?? 0)).toBeCloseTo(4 * unit, 6);
    expect(beyond(bare)).toEqual([]);
  });
});
