// Which pads to put under which mount, so that a body sits level and untwisted with the fewest stacks changed.
import { type Answer, answer, noAnswer } from '../answer.ts';
import { type Figure, figureOf, widestPlusMinus } from '../figure.ts';
import { twistOfHeights } from '../twist.ts';
import { layFrame } from './frame.ts';
import { CHANGE, type Choice, type Found, furthestOf, type Problem, SAME, searchStacks } from './search.ts';
import { countedStack, fine, type Pads, possibleStacks, type Rack, rackOf, waysFrom } from './stacks.ts';

/**
 * A mount with its place in plan, the height read over it with its stack in place, and that stack's pads. A thicker stack
 * lifts its own height by as much and no other: the frame is taken as stiff and the body as lying on it.
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
 * `changes` counts the stacks touched and `moved` the pads taken out and put in. `furthest` is the largest distance from the
 * plane that remains; `twist` as for heights. `taken` is what the stock gives, below zero what goes back into it.
 */
export type PadsPlan = {
  mounts: MountPlan[];
  changes: number;
  moved: number;
  furthest: Figure;
  twist?: Figure;
  taken: { thickness: number; count: number }[];
};

/**
 * `possible` false: no stacks bring every height within the tolerance, `why` says so, and the plan is the nearest there is,
 * again with the fewest changes. `proved` false: the search was cut short, and a better plan may exist.
 */
export type PadsProposal = { possible: boolean; proved: boolean; plan: PadsPlan; why?: string };

/**
 * The plan with the fewest stacks changed; among those the fewest pads moved; among those the least distance left. A change
 * is a stack touched at all, also one that only gives a pad up for a thinner pair.
 */
export function proposePads(asked: PadsAsked): Answer<PadsProposal> {
  const fault = faultOf(asked);
  if (fault !== undefined) return noAnswer(fault);
  const { mounts, tolerance, target } = asked;
  const most = asked.most ?? Math.max(4, ...mounts.map(({ stack }) => stack.length));
  const rack = rackOf(
    asked.stock,
    mounts.map(({ stack }) => stack),
  );
  const stacks = mounts.map(({ stack }) => countedStack(rack, stack));
  const possible = possibleStacks(rack, stacks, most);
  const problem: Problem = {
    heights: mounts.map(({ z }) => z),
    rises: stacks.map((stack) => waysFrom(rack, stack, possible)),
    inStock: rack.inStock,
    inStacks: stacks,
    ...layFrame(mounts, target),
  };
  const within = best(problem, tolerance);
  if (within.best) {
    return answer({
      possible: true,
      proved: within.whole,
      plan: planOf(mounts, rack, problem, within.best),
    });
  }
  const nearest = nearestTo(problem);
  return answer({
    possible: false,
    proved: within.whole && nearest.whole,
    plan: planOf(mounts, rack, problem, nearest.best),
    why: within.whole
      ? `It cannot be done with these pads: no stacks of up to ${most} bring every mount near enough.`
      : 'No stacks were found that bring every mount near enough; the search was cut short.',
  });
}

/** Fewest changes first, then among plans of that cost the flattest. */
function best(problem: Problem, tolerance: number): Found {
  const guess = changesNeeded(problem, tolerance);
  let fewest = searchStacks(problem, { aim: 'fewest', tolerance, atMost: (guess + 1) * CHANGE - 1 });
  if (!fewest.best) {
    const any = searchStacks(problem, { aim: 'first', tolerance, atMost: Infinity, free: true });
    if (!any.best) return any;
    fewest = searchStacks(problem, { aim: 'fewest', tolerance, atMost: costNow(any.best) });
    fewest = { ...fewest, best: fewest.best ?? any.best };
  }
  if (!fewest.best) return fewest;
  const { cost, furthest } = fewest.best;
  const flattest = searchStacks(problem, { aim: 'flattest', tolerance: furthest - SAME, atMost: cost });
  return { ...flattest, best: flattest.best ?? fewest.best, whole: fewest.whole && flattest.whole };
}

/** The least distance that any stacks leave, and then the best plan that leaves it. */
function nearestTo(problem: Problem): Found & { best: Choice } {
  const asIs: Choice = {
    ways: problem.heights.map(() => undefined),
    cost: 0,
    furthest: furthestOf(problem.offsOf(problem.heights)),
  };
  const flattest = searchStacks(problem, {
    aim: 'flattest',
    tolerance: asIs.furthest - SAME,
    atMost: Infinity,
    free: true,
  });
  const found = best(problem, (flattest.best ?? asIs).furthest + SAME);
  return { ...found, best: found.best ?? flattest.best ?? asIs, whole: flattest.whole && found.whole };
}

const costNow = (choice: Choice): number =>
  choice.ways.reduce((sum, way) => sum + (way && way.moved > 0 ? CHANGE + way.moved : 0), 0);

/** How many changes would do if every height could be had: again and again drops the mount that holds the rest up most. */
function changesNeeded({ heights, offsOf }: Problem, tolerance: number): number {
  let left = heights.map((_, j) => j);
  const spread = (mounts: readonly number[]): number => furthestOf(offsOf(heights, mounts));
  while (left.length > 1 && spread(left) > tolerance) {
    const drops = left.map((_, i) => left.toSpliced(i, 1));
    left = drops.reduce((least, each) => (spread(each) < spread(least) ? each : least));
  }
  return heights.length - left.length;
}

function planOf(mounts: readonly Mount[], rack: Rack, problem: Problem, { ways }: Choice): PadsPlan {
  const heights = mounts.map(({ z }, j) => z + (ways[j]?.rise ?? 0));
  const offs = problem.offsOf(heights);
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

function faultOf({ mounts, stock, tolerance, most }: PadsAsked): string | undefined {
  const ids = mounts.map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (mounts.length === 0) return 'There are no mounts to put pads under.';
  if (twice !== undefined) return `Mount ${twice} is given twice.`;
  if (!(tolerance >= 0)) return 'A tolerance is zero or more.';
  if (most !== undefined && !(Number.isInteger(most) && most >= 0))
    return 'A stack has a whole number of pads.';
  const pads = [...stock.map(({ thickness }) => thickness), ...mounts.flatMap(({ stack }) => stack)];
  if (!pads.every((pad) => pad > 0 && pad < 1e6)) return 'A pad is thicker than nothing.';
  if (!stock.every(({ count = 0 }) => Number.isInteger(count) && count >= 0)) {
    return 'Pads in stock are counted in whole numbers, from zero.';
  }
  if (!mounts.every(({ x, y, z }) => [x, y, z].every(Number.isFinite)))
    return 'Every mount has a place and a height.';
  return undefined;
}
