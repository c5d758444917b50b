// A plan for the pads as the shop floor reads it: mount by mount, what comes out and what goes in.
import { type Figure, figureOf, widestPlusMinus } from '../figure.ts';
import { twistOfHeights } from '../twist.ts';
import type { Mount } from './asked.ts';
import type { Laid } from './frame.ts';
import { type Choice, furthestOf } from './problem.ts';
import { fine, type Rack } from './stacks.ts';

/** One mount of a plan: pads to take out and put in, the height that follows, and how far that is off the plane. */
export type MountPlan = {
  id: string;
  before: number[];
  after: number[];
  takeOut: number[];
  putIn: number[];
  height: number;
  off: number;
};

/**
 * `changes` counts the stacks touched and `moved` the pads taken out and put in. `furthest` is the largest distance
 * from the plane that remains; `twist` as for heights. `taken` is what the stock gives, below zero what goes back into
 * it.
 */
export type PadsPlan = {
  mounts: MountPlan[];
  changes: number;
  moved: number;
  furthest: Figure;
  twist?: Figure;
  taken: { thickness: number; count: number }[];
};

export function planOf(
  mounts: readonly Mount[],
  rack: Rack,
  offsOf: Laid['offsOf'],
  { ways }: Choice,
): PadsPlan {
  const heights = mounts.map(({ z }, j) => z + (ways[j]?.rise ?? 0));
  const offs = offsOf(heights);
  const changed = ways.filter((way) => way !== undefined && way.moved > 0);
  const widest = widestPlusMinus(mounts);
  const twist = twistOfHeights(mounts.map((mount, j) => ({ ...mount, z: heights[j] as number })));
  return {
    mounts: mounts.map(({ id, stack }, j) => {
      const taken = ways[j]?.taken ?? [];
      const takeOut = padsOf(
        rack,
        taken.map((count) => Math.max(0, -count)),
      );
      const putIn = padsOf(
        rack,
        taken.map((count) => Math.max(0, count)),
      );
      return {
        id,
        before: [...stack],
        after: [...without(stack, takeOut), ...putIn],
        takeOut,
        putIn,
        height: heights[j] as number,
        off: offs[j] as number,
      };
    }),
    changes: changed.length,
    moved: changed.reduce((sum, way) => sum + (way?.moved ?? 0), 0),
    // A height can be further off than read by its ±, and the plane with it: by no more than the widest of them.
    furthest: figureOf(furthestOf(offs), widest),
    ...(twist.ok && { twist: twist.value }),
    taken: rack.thicknesses.flatMap((thickness, t) => {
      const count = changed.reduce((sum, way) => sum + (way?.taken[t] ?? 0), 0);
      return count === 0 ? [] : [{ thickness, count }];
    }),
  };
}

/** The pads counted, thickest first, as they are stacked. */
function padsOf({ thicknesses }: Rack, counts: readonly number[]): number[] {
  return thicknesses.flatMap((size, t) => new Array<number>(counts[t] ?? 0).fill(size)).reverse();
}

/** A stack less some of its pads, taken from the top. */
function without(stack: readonly number[], pads: readonly number[]): number[] {
  return pads.reduce<number[]>(
    (left, pad) => {
      const at = left.findLastIndex((each) => fine(each) === fine(pad));
      return at < 0 ? left : left.toSpliced(at, 1);
    },
    [...stack],
  );
}
