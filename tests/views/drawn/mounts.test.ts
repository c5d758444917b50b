import { describe, expect, test } from 'vitest';
import { type MountShown, mountsDrawn } from '../../../src/views/drawn/mounts.ts';
import { DESK, PHONE } from '../../../src/views/drawn/shapes.ts';
import { beyond, boxesOf, linesOf, mountsIn, textsOf } from './things.ts';

const NAMES = ['L1', 'L2', 'L3', 'R1', 'R2', 'R3'];
const PLACES = mountsIn(
  `state: before, points: [${NAMES.map((mount, i) => `{ mount: ${mount}, x: ${[0, 22, 88][i % 3]} in, y: ${i < 3 ? 0 : 41} in, z: 0 in }`).join(', ')}]`,
);
const shown = (changed: Partial<MountShown> & { mount: string }): MountShown[] =>
  NAMES.map((mount) => ({
    mount,
    stays: [3.175],
    putIn: [],
    takeOut: [],
    says: '',
    ...(mount === changed.mount && changed),
  }));
const CHANGED = shown({
  mount: 'L2',
  stays: [3.175, 1.5875],
  putIn: [1.5875],
  takeOut: [3.175],
  says: '1/8 out, 1/16 in',
});

describe.each([DESK, PHONE])('mounts on %i units', (width) => {
  const drawing = mountsDrawn(CHANGED, PLACES, width);
  if (drawing?.factor === undefined) throw new Error('it can be drawn');
  const unit = drawing.scale * drawing.factor;

  test('have pads as thick as they are, larger by the stated factor, one on the other', () => {
    const stays = boxesOf(drawing, 'pad');
    expect(stays).toHaveLength(7);
    const at = (mount: string) => {
      const text = drawing.shapes.find((shape) => shape.is === 'text' && shape.text === mount);
      return text?.is === 'text' ? text.at[0] : Number.NaN;
    };
    const own = stays.filter(
      (pad) => Math.abs(pad.at[0] + pad.width / 2 - at('L2')) < 1e-6 && pad.at[1] > drawing.height / 2,
    );
    expect(own.map(({ height }) => height / unit)).toEqual([
      expect.closeTo(3.175, 6),
      expect.closeTo(1.5875, 6),
    ]);
    const [lower, upper] = own;
    expect((upper?.at[1] ?? 0) + (upper?.height ?? 0)).toBeCloseTo(lower?.at[1] ?? 0, 6);
    const [into] = boxesOf(drawing, 'pad in');
    const [out] = boxesOf(drawing, 'pad out');
    expect((into?.at[1] ?? 0) + (into?.height ?? 0)).toBeCloseTo(upper?.at[1] ?? 0, 6);
    expect((out?.at[1] ?? 0) + (out?.height ?? 0)).toBeCloseTo(upper?.at[1] ?? 0, 6);
    expect(textsOf(drawing)).toEqual(
      expect.arrayContaining([...NAMES, '1/8 out, 1/16 in', `pads × ${drawing.factor}`]),
    );
  });

  test('stand along the frame to scale', () => {
    const feet = linesOf(drawing, 'now').map(
      ({ points }) => ((points[0]?.[0] ?? 0) + (points[1]?.[0] ?? 0)) / 2,
    );
    const [one = 0, two = 0, three = 0, right = 0] = feet;
    expect(two - one).toBeCloseTo(22 * 25.4 * drawing.scale, 6);
    expect(three - one).toBeCloseTo(88 * 25.4 * drawing.scale, 6);
    expect(right).toBeCloseTo(one, 6);
  });

  test('keep within the edges, with their stacks clear of each other', () => {
    expect(beyond(drawing)).toEqual([]);
    const tall = NAMES.map((mount) => ({
      mount,
      stays: [3.175, 3.175, 3.175, 3.175],
      putIn: [],
      takeOut: [],
      says: '',
    }));
    expect(beyond(mountsDrawn(tall, PLACES, width) ?? drawing)).toEqual([]);
  });

  test('close together keep their stacks apart, and their words on rows of their own', () => {
    const many = ['L', 'R'].flatMap((side) =>
      Array.from({ length: 10 }, (_, i) => ({
        mount: `${side}${i + 1}`,
        stays: [3.175],
        putIn: [1.5875],
        takeOut: [],
        says: '1/16 goes in',
      })),
    );
    const crowded = mountsDrawn(many, new Map(), width);
    if (!crowded) throw new Error('it can be drawn');
    const apart = (spans: readonly (readonly [from: number, to: number, y: number])[]) =>
      spans.every(([from, to, y], i) =>
        spans.every(([start, end, at], j) => i === j || y !== at || to <= start || end <= from),
      );
    const stacks = boxesOf(crowded, 'pad').map(
      ({ at, width: wide }) => [at[0], at[0] + wide, at[1]] as const,
    );
    const said = crowded.shapes.flatMap((shape) =>
      shape.is === 'text' && shape.text === '1/16 goes in'
        ? [[shape.at[0] - 36, shape.at[0] + 36, shape.at[1]] as const]
        : [],
    );
    expect(said).toHaveLength(20);
    expect(apart(stacks)).toBe(true);
    expect(apart(said)).toBe(true);
    expect(beyond(crowded)).toEqual([]);
  });

  test('whose places nobody wrote down stand evenly', () => {
    const even = mountsDrawn(shown({ mount: 'L1' }), new Map(), width);
    const feet = linesOf(even ?? drawing, 'now').map(({ points }) => points[0]?.[0] ?? 0);
    expect((feet[1] ?? 0) - (feet[0] ?? 0)).toBeCloseTo((feet[2] ?? 0) - (feet[1] ?? 0), 6);
  });
});

test('without mounts there is nothing to draw', () => {
  expect(mountsDrawn([], new Map(), DESK)).toBeUndefined();
});
