// The shape of an opening from its sides and diagonals: how far each corner lies from that of a true rectangle.
import { type Length, millimetres } from '../../figures/lengths.ts';
import type { ReadingOf } from '../../rollup/measured.ts';
import type { Point } from './shapes.ts';

type Reading = ReadingOf<'diagonals'>;

/** The corners of an opening as shares of its sides, going round. */
export const UNIT: readonly Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/**
 * An opening read round: its mean sides, the names of its corners, and how far each corner lies from that of a true
 * rectangle, in millimeters along and across.
 */
export type Round = {
  along: number;
  across: number;
  names: readonly string[];
  order: readonly number[];
  offs: readonly Point[];
  byMounts: boolean;
};

/**
 * With corners at plus or minus U, V and UV W from the middle, sides are 2|U − W|, 2|V + W|, 2|U + W|, 2|V − W| and
 * diagonals 2|U ± V|: from that the lean of V, by the rule of `squareOf`, and W from the differences of the sides.
 */
export function roundOf(reading: Reading): Round {
  const order = orderOf(reading.corners);
  const between = distances(reading);
  const [p = 0, q = 1, r = 2, s = 3] = order;
  const mean = (one: number | undefined, other: number | undefined) =>
    ((one ?? other ?? 0) + (other ?? one ?? 0)) / 2;
  const [a, a2, b, b2] = [between(p, q), between(r, s), between(q, r), between(s, p)];
  const [d1, d2] = [between(p, r) ?? 0, between(q, s) ?? 0];
  const [along, across] = [mean(a, a2), mean(b, b2)];
  const lean = (d1 ** 2 - d2 ** 2) / (4 * along) / 2;
  const w: Point = [
    a !== undefined && a2 !== undefined ? (a2 - a) / 4 : 0,
    b !== undefined && b2 !== undefined ? (b - b2) / 4 : 0,
  ];
  const offs = UNIT.map(([u, v]): Point => {
    const [sideU, sideV] = [2 * u - 1, 2 * v - 1];
    return [sideV * lean + sideU * sideV * w[0], sideU * sideV * w[1]];
  });
  return {
    along,
    across,
    names: order.map((i) => reading.corners?.[i] ?? String(i + 1)),
    order,
    offs,
    byMounts: byMounts(reading.corners),
  };
}

/** The corner to begin with and the way round, so that mounts come as left front, left rear, right rear, right front. */
function orderOf(corners: readonly string[] | undefined): number[] {
  if (!corners || !byMounts(corners)) return [0, 1, 2, 3];
  const number = (mount: string) => Number(mount.slice(1));
  const on = (side: string) =>
    corners
      .map((mount, i) => ({ mount, i }))
      .filter(({ mount }) => mount.startsWith(side))
      .sort((one, other) => number(one.mount) - number(other.mount))
      .map(({ i }) => i);
  const [left, right] = [on('L'), on('R')];
  return [...left, ...right.toReversed()];
}

/** Two mounts of each side, those of one side next to each other. */
function byMounts(corners: readonly string[] | undefined): boolean {
  if (!corners?.every((corner) => /^[LR][1-9]\d?$/.test(corner))) return false;
  const sides = corners.map((corner) => corner[0]).join('');
  return ['LLRR', 'LRRL', 'RRLL', 'RLLR'].includes(sides) && new Set(corners).size === 4;
}

/** Millimeters between two corners, by their places in the reading. */
function distances({ a, b, a2, b2, d1, d2 }: Reading) {
  const mm = (length: Length | undefined) => length && millimetres(length);
  const known = new Map([
    ['01', mm(a)],
    ['12', mm(b)],
    ['23', mm(a2)],
    ['03', mm(b2)],
    ['02', mm(d1)],
    ['13', mm(d2)],
  ]);
  return (one: number, other: number) => known.get([one, other].sort().join(''));
}

/** Between the corners the offs run evenly, and on in the same way beyond them. */
export function offAt(offs: readonly Point[], u: number, v: number): Point {
  const share = [(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v];
  return [0, 1].map((axis) =>
    offs.reduce((sum, off, i) => sum + (share[i] ?? 0) * (off[axis] ?? 0), 0),
  ) as unknown as Point;
}
