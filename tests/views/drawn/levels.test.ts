import { describe, expect, test } from 'vitest';
import { bracketsDrawn, slopesDrawn, steepnessFor } from '../../../src/views/drawn/levels.ts';
import { DESK, type Drawn, PHONE, type Point } from '../../../src/views/drawn/shapes.ts';
import { beyond, linesOf, mountsIn, textsOf, thingsOf } from './things.ts';

const level = (at: string, state: string, reading: string) =>
  `state: ${state}, at: ${at}, reading: ${reading}`;
/** The slope of a drawn line in degrees, up to the right above zero. */
const slopeOf = ([from, to]: readonly Point[]) =>
  from && to ? (Math.atan2(from[1] - to[1], to[0] - from[0]) * 180) / Math.PI : Number.NaN;
const slopes = (drawing: Drawn, look: string) => linesOf(drawing, look).map(({ points }) => slopeOf(points));

const THINGS = thingsOf(
  'level',
  level('L1', 'before', '0.2°'),
  level('L3', 'before', '1.4°'),
  level('R1', 'before', '-0.5°'),
  level('L3', 'after', '0.3°'),
);

describe.each([DESK, PHONE])('brackets on %i units', (width) => {
  const places = mountsIn(
    'state: before, points: [{ mount: L1, x: 0 in, y: 0 in, z: 0 in }, { mount: L3, x: 44 in, y: 0 in, z: 0 in }, { mount: R1, x: 0 in, y: 41 in, z: 0 in }]',
  );
  const drawing = bracketsDrawn(THINGS, places, width);

  test('slope as read, steeper by the stated factor: the right rail first', () => {
    expect(drawing.factor).toBe(10);
    expect(slopes(drawing, 'now')).toEqual([-5, 2, 3].map((degrees) => expect.closeTo(degrees, 6)));
    expect(slopes(drawing, 'was')).toEqual([expect.closeTo(14, 6)]);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['L3', '+0.3°', 'R1', '−0.5°', 'slope × 10']));
  });

  test('stand where their mounts are', () => {
    const [right, left, third] = linesOf(drawing, 'now').map(
      ({ points }) => ((points[0]?.[0] ?? 0) + (points[1]?.[0] ?? 0)) / 2,
    );
    expect(right).toBeCloseTo(left ?? 0, 6);
    expect(third).toBeGreaterThan(left ?? 0);
    expect(beyond(drawing)).toEqual([]);
  });

  test('stand evenly by number where nobody wrote their places down', () => {
    const even = bracketsDrawn(
      thingsOf('level', ...['L1', 'L2', 'L4'].map((at) => level(at, 'before', '0.1°'))),
      new Map(),
      width,
    );
    const [one = 0, two = 0, four = 0] = linesOf(even, 'now').map(({ points }) => points[0]?.[0] ?? 0);
    expect((four - one) / (two - one)).toBeCloseTo(3, 6);
  });

  test('other places stand under each other with their words', () => {
    const rows = slopesDrawn(
      thingsOf(
        'level',
        level('front', 'before', '1.5°'),
        level('front', 'after', '-0.3°'),
        level('rear', 'after', '0.2°'),
      ),
      width,
    );
    expect(rows.factor).toBe(10);
    expect(slopes(rows, 'was')).toEqual([expect.closeTo(15, 6)]);
    expect(slopes(rows, 'now')).toEqual([expect.closeTo(-3, 6), expect.closeTo(2, 6)]);
    expect(textsOf(rows)).toEqual(expect.arrayContaining(['front', 'was +1.5°, now −0.3°', 'rear', '+0.2°']));
    expect(beyond(rows)).toEqual([]);
  });
});

test('no slope is drawn steeper than 18 degrees', () => {
  for (const reading of ['0.1°', '0.9°', '2°', '17°', '40°']) {
    const things = thingsOf('level', level('L1', 'before', reading));
    const drawn = Number.parseFloat(reading) * steepnessFor(things);
    expect(drawn <= 18 || steepnessFor(things) === 1).toBe(true);
  }
});
