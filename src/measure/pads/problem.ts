// What the search for stacks is asked, and what it finds.
import type { Laid } from './frame.ts';
import type { Rise, Way } from './stacks.ts';

/**
 * `heights` as read, the ways to change each mount's stack, and the pads of each thickness in stock and in the stacks.
 */
export type Problem = Laid & {
  heights: readonly number[];
  rises: readonly (readonly Rise[])[];
  thicknesses: readonly number[];
  inStock: readonly number[];
  inStacks: readonly (readonly number[])[];
  /** Steps that all searches of the problem may still take together. */
  steps: { left: number };
};

/**
 * `fewest`: the least cost within the tolerance. `flattest`: the least distance from the plane at no more than the
 * given cost. `first`: any choice that holds. Where `free`, staying as it is counts as one more way, and nothing costs
 * anything.
 */
export type Aim = {
  aim: 'fewest' | 'flattest' | 'first';
  tolerance: number;
  atMost: number;
  free?: boolean;
};

/** A way for each mount, none for those that stay. */
export type Choice = { ways: readonly (Way | undefined)[]; cost: number; furthest: number };

/** `whole` is false when the steps ran out, so that nothing is proved. */
export type Found = { best: Choice | undefined; whole: boolean };

/** One change outweighs any number of pads moved. */
export const CHANGE = 1_000_000;
export const costOf = (moved: number): number => (moved === 0 ? 0 : CHANGE + moved);

/** Heights closer than this, in millimeters, are the same height. */
export const SAME = 1e-6;

/** The largest distance from the plane, either way. */
export const furthestOf = (offs: readonly number[]): number => Math.max(...offs.map(Math.abs));
