// Which pads to put under which mount, so that a body sits level and untwisted with the fewest stacks changed.
import { type Answer, answer, noAnswer } from '../answer.ts';
import { faultOf, type PadsAsked } from './asked.ts';
import { layFrame } from './frame.ts';
import { type PadsPlan, planOf } from './plan.ts';
import { CHANGE, type Choice, costOf, type Found, furthestOf, type Problem, SAME } from './problem.ts';
import { searchStacks } from './search.ts';
import { countedStack, possibleStacks, rackOf, waysFrom } from './stacks.ts';

export type { Mount, PadsAsked } from './asked.ts';
export type { PadsPlan } from './plan.ts';

/**
 * `possible` false: no stacks bring every height within the tolerance, `why` says so, and the plan is the nearest there
 * is, again with the fewest changes. `proved` false: the search was cut short, and a better plan may exist.
 */
export type PadsProposal = { possible: boolean; proved: boolean; plan: PadsPlan; why?: string };

/**
 * The plan with the fewest stacks changed; among those the fewest pads moved; among those the least distance left. A
 * change is a stack touched at all, also one that only gives a pad up for a thinner pair.
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
  const problem = {
    heights: mounts.map(({ z }) => z),
    rises: stacks.map((stack) => waysFrom(rack, stack, possible)),
    thicknesses: rack.thicknesses,
    inStock: rack.inStock,
    inStacks: stacks,
    ...layFrame(mounts, target),
  };
  const within = best({ ...problem, steps: { left: STEPS } }, tolerance);
  if (within.best) {
    return answer({
      possible: true,
      proved: within.whole,
      plan: planOf(mounts, rack, problem.offsOf, within.best),
    });
  }
  const nearest = nearestTo({ ...problem, steps: { left: STEPS } }, tolerance);
  return answer({
    possible: false,
    proved: within.whole && nearest.whole,
    plan: planOf(mounts, rack, problem.offsOf, nearest.best),
    why: within.whole
      ? `It cannot be done with these pads: no stacks of up to ${most} bring every mount near enough.`
      : 'No stacks were found that bring every mount near enough; the search was cut short.',
  });
}

/** Enough for every frame that was tried; only pads far coarser than the tolerance come near. Our choice. */
const STEPS = 300_000;

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
function nearestTo(problem: Problem, tolerance: number): Found & { best: Choice } {
  const asIs: Choice = {
    ways: problem.heights.map(() => undefined),
    cost: 0,
    furthest: furthestOf(problem.offsOf(problem.heights)),
  };
  // A narrow tolerance is searched fast, so it is widened step by step until something holds.
  let wide = Math.max(tolerance, asIs.furthest / 64);
  let held: Choice | undefined;
  while (!held && wide < asIs.furthest) {
    wide *= 1.25;
    held = searchStacks(problem, { aim: 'first', tolerance: wide, atMost: Infinity, free: true }).best;
  }
  const least = held ?? asIs;
  const flattest = searchStacks(problem, {
    aim: 'flattest',
    tolerance: least.furthest - SAME,
    atMost: Infinity,
    free: true,
  });
  const found = best(problem, (flattest.best ?? least).furthest + SAME);
  return { ...found, best: found.best ?? flattest.best ?? least, whole: flattest.whole && found.whole };
}

const costNow = (choice: Choice): number =>
  choice.ways.reduce((sum, way) => sum + costOf(way?.moved ?? 0), 0);

/**
 * How many changes would do if every height could be had: again and again drops the mount that holds the rest up most.
 */
function changesNeeded({ heights, offsOf }: Problem, tolerance: number): number {
  let left = heights.map((_, j) => j);
  const spread = (mounts: readonly number[]): number => furthestOf(offsOf(heights, mounts));
  while (left.length > 1 && spread(left) > tolerance) {
    const drops = left.map((_, i) => left.toSpliced(i, 1));
    left = drops.reduce((least, each) => (spread(each) < spread(least) ? each : least));
  }
  return heights.length - left.length;
}
