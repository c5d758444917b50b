// What is asked when pads are to be proposed, and what is wrong with it.
import type { Pads } from './stacks.ts';

/**
 * A mount with its place in plan, the height read over it with its stack in place, and that stack's pads. A thicker
 * stack lifts its own height by as much and no other: the frame is taken as stiff and the body as lying on it.
 */
export type Mount = {
  id: string;
  x: number;
  y: number;
  z: number;
  stack: readonly number[];
  plusMinus?: number;
};

/**
 * `tolerance` is how far a height may be, either way, from one common plane, or with the target `level` from one common
 * level. `most` is how many pads a stack may have: 4, or as many as the highest stack has now, unless told otherwise.
 */
export type PadsAsked = {
  mounts: readonly Mount[];
  stock: readonly Pads[];
  tolerance: number;
  target: 'plane' | 'level';
  most?: number;
};

/** One sentence for what can't be asked, or nothing. */
export function faultOf({ mounts, stock, tolerance, most }: PadsAsked): string | undefined {
  const ids = mounts.map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (mounts.length === 0) return 'There are no mounts to put pads under.';
  if (twice !== undefined) return `Mount ${twice} is given twice.`;
  if (!(tolerance >= 0)) return 'A tolerance is zero or more.';
  if (!(Number.isInteger(most ?? 0) && (most ?? 0) >= 0)) return 'A stack has a whole number of pads.';
  const pads = [...stock.map(({ thickness }) => thickness), ...mounts.flatMap(({ stack }) => stack)];
  if (!pads.every((pad) => pad > 0 && pad < 1e6)) return 'A pad is thicker than nothing.';
  if (!stock.every(({ count = 0 }) => Number.isInteger(count) && count >= 0)) {
    return 'Pads in stock are counted in whole numbers, from zero.';
  }
  const placed = mounts.every(({ x, y, z }) => [x, y, z].every(Number.isFinite));
  return placed ? undefined : 'Every mount has a place and a height.';
}
