// Offsets 0, 3, 0, 0, 0 along 400 have a narrowest strip of 3.0 (ISO 12780-1; worked out by hand).
import { describe, expect, test } from 'vitest';
import { DESK, PHONE } from '../../../src/views/drawn/shapes.ts';
import { straightDrawn } from '../../../src/views/drawn/straight.ts';
import { beyond, pointsOf, textsOf, thingOf } from './things.ts';

const SAID = { was: 'before: 3.0 mm', now: 'after: 1.0 mm', ends: ['0', '400 mm'] } as const;
const drawn = (width: number, ...lines: string[]) => {
  const drawing = straightDrawn(thingOf('straight', ...lines), SAID, width);
  if (drawing?.factor === undefined) throw new Error('it can be drawn');
  return { ...drawing, factor: drawing.factor };
};
const BOWED = 'state: before, length: 400 mm, offsets: [0 mm, 3 mm, 0 mm, 0 mm, 0 mm]';
const MENDED = 'state: after, length: 400 mm, offsets: [0 mm, 1 mm, 0 mm, 0 mm, 0 mm]';

describe.each([DESK, PHONE])('a line on %i units', (width) => {
  test('is to scale along, what it stands off larger by the stated factor', () => {
    const drawing = drawn(width, BOWED);
    const now = pointsOf(drawing, 'now');
    const [from, high] = [now[0] ?? [0, 0], now[1] ?? [0, 0]];
    expect((now.at(-1)?.[0] ?? 0) - from[0]).toBeCloseTo(400 * drawing.scale, 6);
    expect(high[0] - from[0]).toBeCloseTo(100 * drawing.scale, 6);
    expect(from[1] - high[1]).toBeCloseTo(3 * drawing.scale * drawing.factor, 6);
    expect(drawing.factor).toBe(8);
    expect(textsOf(drawing)).toContain('off the string × 8');
  });

  test('lies in the strip that its readings were found in, with its spots at the edges', () => {
    const drawing = drawn(width, BOWED);
    const ys = pointsOf(drawing, 'zone').map(([, y]) => y);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(3 * drawing.scale * drawing.factor, 6);
    const dots = (look: string) =>
      drawing.shapes.flatMap((shape) => (shape.is === 'dot' && shape.look === look ? [shape.at[1]] : []));
    for (const y of dots('dot')) expect(y).toBeCloseTo(Math.min(...ys), 6);
    for (const y of dots('open')) expect(y).toBeCloseTo(Math.max(...ys), 6);
    expect(dots('dot')).toHaveLength(1);
    expect(dots('open').length).toBeGreaterThanOrEqual(2);
  });

  test('as found and as left are drawn with one factor, from one string', () => {
    const drawing = drawn(width, BOWED, MENDED);
    const [was, now] = [pointsOf(drawing, 'was'), pointsOf(drawing, 'now')];
    const base = now[0]?.[1] ?? 0;
    expect(was[0]?.[1]).toBe(base);
    expect((base - (was[1]?.[1] ?? 0)) / (base - (now[1]?.[1] ?? 0))).toBeCloseTo(3, 9);
    expect(beyond(drawing)).toEqual([]);
  });

  test('read from a string that runs askew is drawn from end to end', () => {
    const askew = drawn(width, 'state: before, length: 400 mm, offsets: [10 mm, 15 mm, 14 mm, 16 mm, 18 mm]');
    const plain = drawn(width, BOWED);
    for (const [i, [x, y]] of pointsOf(askew, 'now').entries()) {
      expect(x).toBeCloseTo(pointsOf(plain, 'now')[i]?.[0] ?? 0, 6);
      expect(y).toBeCloseTo(pointsOf(plain, 'now')[i]?.[1] ?? 0, 6);
    }
  });
});
