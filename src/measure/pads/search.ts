// The search for stacks: which mounts stay as they are, and which way each of the others is changed. Branch and bound.
import type { Laid } from './frame.ts';
import { type Planes, planesBetween, planesNear, reachAt } from './planes.ts';
import type { Rise, Way } from './stacks.ts';

/** `heights` as read, the ways to change each mount's stack, and the pads of each thickness in stock and in the stacks. */
export type Problem = Laid & {
  heights: readonly number[];
  rises: readonly (readonly Rise[])[];
  inStock: readonly number[];
  inStacks: readonly (readonly number[])[];
};

/**
 * `fewest`: the least cost within the tolerance. `flattest`: the least distance from the plane at no more than the given cost.
 * `first`: any choice that holds. Where `free`, staying as it is counts as one more way, and nothing costs anything.
 */
export type Aim = { aim: 'fewest' | 'flattest' | 'first'; tolerance: number; atMost: number; free?: boolean };

/** A way for each mount, none for those that stay. */
export type Choice = { ways: readonly (Way | undefined)[]; cost: number; furthest: number };

/** `whole` is false when the search was cut short after so many steps that nothing is proved. */
export type Found = { best: Choice | undefined; whole: boolean; steps: number };

/** One change outweighs any number of pads moved. */
export const CHANGE = 1_000_000;
export const costOf = (way: Way): number => (way.moved === 0 ? 0 : CHANGE + way.moved);

/** Heights closer than this, in millimeters, are the same height. */
export const SAME = 1e-6;
const STEPS = 400_000;

const UNSAID = 0;
const STAYS = 1;
const CHANGES = 2;
const DONE = 3;

export function searchStacks(problem: Problem, { aim, tolerance, atMost, free = false }: Aim): Found {
  const { heights } = problem;
  const rises = free ? problem.rises.map(withStaying) : problem.rises;
  let near = tolerance + SAME / 10;
  let limit = atMost;
  let best: Choice | undefined;
  let steps = 0;
  let over = false;

  const limits = heights.map((height, j) => ({
    low: height + Math.min(0, rises[j]?.[0]?.rise ?? 0) - near,
    high: height + Math.max(0, rises[j]?.at(-1)?.rise ?? 0) + near,
  }));
  explore(
    planesBetween(limits, problem.frame, problem.shares),
    new Uint8Array(heights.length).fill(free ? CHANGES : UNSAID),
    new Array<Way | undefined>(heights.length).fill(undefined),
    [...problem.inStock],
    0,
  );
  return { best, whole: !over || (aim === 'first' && best !== undefined), steps };

  function explore(
    begun: Planes,
    said: Uint8Array,
    ways: (Way | undefined)[],
    stock: readonly number[],
    spent: number,
  ): void {
    if (++steps > STEPS) over = true;
    if (over) return;
    const planes = settle(begun, said, spent);
    if (!planes) return;
    const next = nextMount(planes, said);
    if (next === undefined) {
      finish(ways, spent);
    } else if (said[next] === UNSAID) {
      const height = heights[next] as number;
      const staying = said.slice();
      staying[next] = STAYS;
      explore(planesNear(planes, next, height - near, height + near), staying, ways, stock, spent);
      const changing = said.slice();
      changing[next] = CHANGES;
      explore(planes, changing, ways, stock, spent);
    } else {
      for (const way of waysNear(planes, next)) {
        if (spent + (free ? 0 : costOf(way)) > limit || over) break;
        const left = stock.map((count, t) => count - (way.taken[t] ?? 0));
        const done = said.slice();
        done[next] = DONE;
        if (!enough(left, done)) continue;
        const height = (heights[next] as number) + way.rise;
        const chosen = ways.with(next, way);
        const cost = spent + (free ? 0 : costOf(way));
        explore(planesNear(planes, next, height - near, height + near), done, chosen, left, cost);
      }
    }
  }

  /** Says what follows for mounts still open; nothing when no plane or too high a cost is left. */
  function settle(begun: Planes, said: Uint8Array, spent: number): Planes | undefined {
    let planes = begun;
    for (;;) {
      if (planes.corners.length === 0) return undefined;
      let bound = spent;
      const open: { mount: number; cheapest: number }[] = [];
      for (let j = 0; j < said.length; j++) {
        if (said[j] === STAYS || said[j] === DONE) continue;
        const { low, high } = reachAt(planes, j);
        const height = heights[j] as number;
        const cheapest = cheapestBetween(
          rises[j] as readonly Rise[],
          low - near - height,
          high + near - height,
        );
        if (said[j] === UNSAID && height >= low - near && height <= high + near) {
          open.push({ mount: j, cheapest });
          continue;
        }
        if (cheapest === Infinity) return undefined;
        said[j] = CHANGES;
        if (!free) bound += cheapest;
      }
      if (bound > limit) return undefined;
      const held = open.filter(({ cheapest }) => bound + cheapest > limit);
      if (held.length === 0) return planes;
      for (const { mount } of held) {
        said[mount] = STAYS;
        const height = heights[mount] as number;
        planes = planesNear(planes, mount, height - near, height + near);
      }
    }
  }

  /** A mount not yet said: the one whose plane is least known. After those, the one with fewest ways left. */
  function nextMount(planes: Planes, said: Uint8Array): number | undefined {
    let found: number | undefined;
    let most = -Infinity;
    for (let j = 0; j < said.length; j++) {
      if (said[j] === STAYS || said[j] === DONE) continue;
      const { low, high } = reachAt(planes, j);
      const weight =
        said[j] === UNSAID ? 1e9 + high - low : -countBetween(rises[j] as readonly Rise[], j, low, high);
      if (weight > most) {
        most = weight;
        found = j;
      }
    }
    return found;
  }

  function countBetween(list: readonly Rise[], mount: number, low: number, high: number): number {
    const height = heights[mount] as number;
    let count = 0;
    for (let i = firstFrom(list, low - near - height); i < list.length; i++) {
      const each = list[i] as Rise;
      if (each.rise > high + near - height) break;
      count += each.ways.length;
    }
    return count;
  }

  function waysNear(planes: Planes, mount: number): Way[] {
    const { low, high } = reachAt(planes, mount);
    const height = heights[mount] as number;
    const middle = (low + high) / 2 - height;
    const list = rises[mount] as readonly Rise[];
    const found: Way[] = [];
    for (let i = firstFrom(list, low - near - height); i < list.length; i++) {
      const each = list[i] as Rise;
      if (each.rise > high + near - height) break;
      found.push(...each.ways);
    }
    return found.sort(
      (one, other) => one.moved - other.moved || Math.abs(one.rise - middle) - Math.abs(other.rise - middle),
    );
  }

  /** What is overdrawn must still be able to come back, out of stacks that are not done. */
  function enough(left: readonly number[], said: Uint8Array): boolean {
    return left.every((count, t) => {
      let back = count;
      for (let j = 0; j < said.length && back < 0; j++) {
        if (said[j] === UNSAID || said[j] === CHANGES) back += problem.inStacks[j]?.[t] ?? 0;
      }
      return back >= 0;
    });
  }

  function finish(ways: readonly (Way | undefined)[], cost: number): void {
    const furthest = furthestOf(problem.offsOf(heights.map((height, j) => height + (ways[j]?.rise ?? 0))));
    if (furthest > near) return;
    best = { ways, cost, furthest };
    if (aim === 'fewest') limit = cost - 1;
    if (aim === 'flattest') near = furthest - SAME;
    if (aim === 'first') over = true;
  }
}

/** The largest distance from the plane, either way. */
export const furthestOf = (offs: readonly number[]): number => Math.max(...offs.map(Math.abs));

/** The rises of a mount, with staying as it is as a way that moves nothing. */
function withStaying(rises: readonly Rise[]): Rise[] {
  const stay: Way = { stack: [], rise: 0, moved: 0, taken: [] };
  const others = rises.filter(({ rise }) => rise !== 0);
  const same = rises.find(({ rise }) => rise === 0)?.ways ?? [];
  return [...others, { rise: 0, moved: 0, ways: [stay, ...same] }].sort(
    (one, other) => one.rise - other.rise,
  );
}

function cheapestBetween(list: readonly Rise[], low: number, high: number): number {
  let least = Infinity;
  for (let i = firstFrom(list, low); i < list.length; i++) {
    const { rise, moved } = list[i] as Rise;
    if (rise > high) break;
    if (moved < least) least = moved;
  }
  return least === 0 ? 0 : least + CHANGE;
}

/** Place of the first rise that isn't below a height. */
function firstFrom(list: readonly Rise[], low: number): number {
  let from = 0;
  let to = list.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((list[middle] as Rise).rise < low) from = middle + 1;
    else to = middle;
  }
  return from;
}
