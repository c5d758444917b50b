// One place in the search for stacks: what is said of each mount so far, and what is still possible.
import { type Planes, reachAt } from './planes.ts';
import type { Problem } from './problem.ts';
import type { Way } from './stacks.ts';

/** What is said of a mount: nothing yet, that it stays, that it changes, or by which way. */
export const UNSAID = 0;
export const STAYS = 1;
export const CHANGES = 2;
export const DONE = 3;

/** The planes still possible, what is said of each mount, the ways chosen, pads left in stock, and the cost so far. */
export type Place = {
  planes: Planes;
  said: Uint8Array;
  ways: readonly (Way | undefined)[];
  stock: readonly number[];
  cost: number;
};

export function saying({ said }: Place, mount: number, what: number): Uint8Array {
  const next = said.slice();
  next[mount] = what;
  return next;
}

/** Whether what is overdrawn can still come back, out of stacks that are not done. */
export function canCover({ inStacks }: Problem, { stock, said }: Pick<Place, 'stock' | 'said'>): boolean {
  return stock.every((count, t) => {
    let back = count;
    for (let j = 0; j < said.length && back < 0; j++) {
      if (said[j] === UNSAID || said[j] === CHANGES) back += inStacks[j]?.[t] ?? 0;
    }
    return back >= 0;
  });
}

/** Thickness of all pads left in stock together; Infinity when one thickness never runs out. */
export function padsLeft({ thicknesses }: Problem, { stock }: Place): number {
  return stock.reduce((sum, count, t) => sum + count * (thicknesses[t] ?? 0), 0);
}

/** How much the planes differ at a mount, in millimeters. */
export function spanAt(planes: Planes, mount: number): number {
  const { low, high } = reachAt(planes, mount);
  return high - low;
}
