// The rises of a mount that bring its height between two limits.
import { costOf } from './problem.ts';
import type { Rise, Way } from './stacks.ts';

/** Rises from one place in a mount's list up to another, with the least cost and the least lift among them. */
export type Window = { from: number; to: number; cheapest: number; lowest: number };

/** `low` and `high` in millimeters above the height as read. Without any rise between them the cost is Infinity. */
export function windowOf(rises: readonly Rise[], low: number, high: number): Window {
  const from = firstFrom(rises, low);
  let moved = Infinity;
  let to = from;
  for (; to < rises.length; to++) {
    const each = rises[to] as Rise;
    if (each.rise > high) break;
    if (each.moved < moved) moved = each.moved;
  }
  return { from, to, cheapest: costOf(moved), lowest: rises[from]?.rise ?? 0 };
}

/** The ways of a window, those that move fewest pads first, then those nearest to its middle. */
export function waysIn(rises: readonly Rise[], { from, to }: Window, middle: number): Way[] {
  return rises
    .slice(from, to)
    .flatMap(({ ways }) => ways)
    .sort(
      (one, other) => one.moved - other.moved || Math.abs(one.rise - middle) - Math.abs(other.rise - middle),
    );
}

export function countIn(rises: readonly Rise[], { from, to }: Window): number {
  let count = 0;
  for (let i = from; i < to; i++) count += (rises[i] as Rise).ways.length;
  return count;
}

/** The rises of a mount, with staying as it is as a way that moves nothing. */
export function withStaying(rises: readonly Rise[]): Rise[] {
  const stay: Way = { stack: [], rise: 0, moved: 0, taken: [] };
  const others = rises.filter(({ rise }) => rise !== 0);
  const same = rises.find(({ rise }) => rise === 0)?.ways ?? [];
  return [...others, { rise: 0, moved: 0, ways: [stay, ...same] }].sort(
    (one, other) => one.rise - other.rise,
  );
}

/** Place of the first rise that isn't below a height. */
function firstFrom(rises: readonly Rise[], low: number): number {
  let from = 0;
  let to = rises.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((rises[middle] as Rise).rise < low) from = middle + 1;
    else to = middle;
  }
  return from;
}
