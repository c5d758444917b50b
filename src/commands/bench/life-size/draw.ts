// Drawing from a seed: the same figures at every run.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A whole number between two, both among them. */
export type Draw = (from: number, to: number) => number;

export function drawFrom(seed: number): Draw {
  const random = xoroshiro128plus(seed);
  return (from, to) => uniformInt(random, from, to);
}

/** One of a list. */
export function oneOf<T>(list: readonly T[], draw: Draw): T {
  return list[draw(0, list.length - 1)] as T;
}

/** `[low, likely, high]` as it is written, from so much on. */
export function rangeText(low: number, wide: number, draw: Draw): string {
  const likely = low + draw(1, wide);
  return `[${low}, ${likely}, ${likely + draw(1, 2 * wide)}]`;
}
