// Corner heights 0, 0, 0, 8 stand 2 mm off the plane nearest to all, up and down by turns (least squares by hand).
import { describe, expect, test } from 'vitest';
import { heightsDrawn } from '../../../src/views/drawn/heights.ts';
import { DESK, PHONE } from '../../../src/views/drawn/shapes.ts';
import { beyond, linesOf, mountsIn, textsOf, thingOf } from './things.ts';

const MOUNTS =
  'points: [{ mount: L1, x: 0 mm, y: 0 mm, z: 0 mm }, { mount: L2, x: 2000 mm, y: 0 mm, z: 0 mm }, { mount: R1, x: 0 mm, y: 900 mm, z: 8 mm }, { mount: R2, x: 2000 mm, y: 900 mm, z: 0 mm }]';

describe.each([DESK, PHONE])('heights on %i units', (width) => {
  test('stand off their plane larger by the stated factor, within the band of the tolerance', () => {
    const thing = thingOf('heights', `state: before, ${MOUNTS}, within: 3 mm`);
    const drawing = heightsDrawn(thing, mountsIn(), width);
    if (drawing?.factor === undefined) throw new Error('it can be drawn');
    const unit = drawing.scale * drawing.factor;
    const bases = linesOf(drawing, 'ref').map(({ points }) => points[0]?.[1] ?? 0);
    const offs = linesOf(drawing, 'now').map(({ points }, i) =>
      points.map(([, y]) => ((bases[i] ?? 0) - y) / unit),
    );
    // Right above left, front first.
    expect(offs).toEqual([
      [expect.closeTo(2, 6), expect.closeTo(-2, 6)],
      [expect.closeTo(-2, 6), expect.closeTo(2, 6)],
    ]);
    const [band] = linesOf(drawing, 'zone');
    const ys = band?.points.map(([, y]) => y) ?? [];
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(6 * unit, 6);
    const [first] = linesOf(drawing, 'now');
    expect((first?.points[1]?.[0] ?? 0) - (first?.points[0]?.[0] ?? 0)).toBeCloseTo(2000 * drawing.scale, 6);
    expect(textsOf(drawing).filter((text) => /^[LR]\d$/.test(text))).toEqual(['R1', 'R2', 'L1', 'L2']);
    expect(beyond(drawing)).toEqual([]);
  });

  test('of corners are drawn as they went round', () => {
    const thing = thingOf('heights', 'state: before, corners: [0 mm, 0 mm, 0 mm, 8 mm]');
    const drawing = heightsDrawn(thing, new Map(), width);
    expect(textsOf(drawing ?? { width, height: 0, shapes: [], scale: 1 }).slice(0, 4)).toEqual([
      '4',
      '3',
      '1',
      '2',
    ]);
  });
});
