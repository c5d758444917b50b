// The search for stacks: which mounts stay as they are, and which way each of the others is changed. Branch and bound.
import { CHANGES, canCover, DONE, type Place, padsLeft, STAYS, saying, spanAt, UNSAID } from './place.ts';
import { type Planes, planesBetween, planesNear, reachAt } from './planes.ts';
import { type Aim, type Choice, costOf, type Found, furthestOf, type Problem, SAME } from './problem.ts';
import type { Rise } from './stacks.ts';
import { countIn, type Window, waysIn, windowOf, withStaying } from './window.ts';

/**
 * Goes through every choice, leaving out what can't hold any more: where no plane passes near enough to all mounts said
 * so far, where a mount has no way left to any of those planes, or where the cost must come out too high.
 */
export function searchStacks(problem: Problem, { aim, tolerance, atMost, free = false }: Aim): Found {
  const { heights } = problem;
  const rises = free ? problem.rises.map(withStaying) : problem.rises;
  let near = tolerance + SAME / 10;
  let limit = atMost;
  let best: Choice | undefined;
  let stop = false;

  const limits = heights.map((height, j) => ({
    low: height + Math.min(0, rises[j]?.[0]?.rise ?? 0) - near,
    high: height + Math.max(0, rises[j]?.at(-1)?.rise ?? 0) + near,
  }));
  explore({
    planes: planesBetween(limits, problem.frame, problem.shares),
    said: new Uint8Array(heights.length).fill(free ? CHANGES : UNSAID),
    ways: heights.map(() => undefined),
    stock: problem.inStock,
    cost: 0,
  });
  return { best, whole: problem.steps.left >= 0 };

  function explore(place: Place): void {
    if (problem.steps.left < 0 || --problem.steps.left < 0 || !settle(place)) return;
    const next = nextMount(place);
    if (next === undefined) {
      finish(place);
      return;
    }
    if (place.said[next] === UNSAID) {
      explore({ ...through(place, next, 0), said: saying(place, next, STAYS) });
      if (!stop) explore({ ...place, said: saying(place, next, CHANGES) });
      return;
    }
    const { low, high } = reachAt(place.planes, next);
    const middle = (low + high) / 2 - (heights[next] as number);
    for (const way of waysIn(risesOf(next), windowAt(place.planes, next), middle)) {
      const cost = place.cost + (free ? 0 : costOf(way.moved));
      if (cost > limit || stop) return;
      const stock = place.stock.map((count, t) => count - (way.taken[t] ?? 0));
      const said = saying(place, next, DONE);
      if (!canCover(problem, { stock, said })) continue;
      explore({ ...through(place, next, way.rise), said, stock, cost, ways: place.ways.with(next, way) });
    }
  }

  /** The place with the planes narrowed to those that pass near a mount raised by so much. */
  function through(place: Place, mount: number, rise: number): Place {
    const height = (heights[mount] as number) + rise;
    return { ...place, planes: planesNear(place.planes, mount, height - near, height + near) };
  }

  /** Says what follows for mounts still unsaid. False when no plane, no way, no pads or too high a cost is left. */
  function settle(place: Place): boolean {
    const { said } = place;
    const pads = padsLeft(problem, place);
    for (;;) {
      if (place.planes.corners.length === 0 || !canCover(problem, place)) return false;
      let bound = place.cost;
      let lift = 0;
      const open: { mount: number; cheapest: number }[] = [];
      for (let j = 0; j < said.length; j++) {
        if (said[j] === STAYS || said[j] === DONE) continue;
        const { cheapest, lowest } = windowAt(place.planes, j);
        if (said[j] === UNSAID && canStay(place.planes, j)) {
          open.push({ mount: j, cheapest });
          lift += cheapest === Infinity ? 0 : Math.min(0, lowest);
        } else {
          if (cheapest === Infinity) return false;
          said[j] = CHANGES;
          bound += free ? 0 : cheapest;
          lift += lowest;
        }
      }
      // Rises are made of pads: together they come to no more than the stock's.
      if (bound > limit || lift > pads + SAME) return false;
      const held = open.filter(({ cheapest }) => bound + cheapest > limit);
      if (held.length === 0) return true;
      for (const { mount } of held) {
        said[mount] = STAYS;
        place.planes = through(place, mount, 0).planes;
      }
    }
  }

  /** One with hardly a way left; else one unsaid, where the planes differ most; else the one with fewest ways. */
  function nextMount({ planes, said }: Place): number | undefined {
    let found: number | undefined;
    let most = -Infinity;
    for (let j = 0; j < said.length; j++) {
      if (said[j] === STAYS || said[j] === DONE) continue;
      const weight =
        said[j] === UNSAID ? 1e9 + spanAt(planes, j) : weightOf(countIn(risesOf(j), windowAt(planes, j)));
      if (weight > most) {
        most = weight;
        found = j;
      }
    }
    return found;
  }

  function windowAt(planes: Planes, mount: number): Window {
    const { low, high } = reachAt(planes, mount);
    const height = heights[mount] as number;
    return windowOf(risesOf(mount), low - near - height, high + near - height);
  }

  function canStay(planes: Planes, mount: number): boolean {
    const { low, high } = reachAt(planes, mount);
    const height = heights[mount] as number;
    return height >= low - near && height <= high + near;
  }

  function finish({ ways, cost }: Place): void {
    const furthest = furthestOf(problem.offsOf(heights.map((height, j) => height + (ways[j]?.rise ?? 0))));
    if (furthest > near) return;
    best = { ways, cost, furthest };
    if (aim === 'fewest') limit = cost - 1;
    if (aim === 'flattest') near = furthest - SAME;
    if (aim === 'first') stop = true;
  }

  function risesOf(mount: number): readonly Rise[] {
    return rises[mount] as readonly Rise[];
  }
}

/** A mount with no more than two ways left comes before all others. */
const weightOf = (ways: number): number => (ways <= 2 ? 2e9 - ways : -ways);
