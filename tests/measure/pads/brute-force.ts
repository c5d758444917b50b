// Every plan there is, one after another: slow, plain, and made without any of the search's own sums.
import type { Mount, PadsAsked } from '../../../src/measure/pads/pads.ts';

export type Tried = { changes: number; moved: number; furthest: number };

/** Figures closer than this, in millimeters, are the same. */
const SAME = 1e-5;

/**
 * The best plan within the tolerance, by changes, then pads moved, then distance; and the least distance any plan
 * leaves.
 */
export function tryEverything(asked: PadsAsked & { most: number }): { best?: Tried; nearest: Tried } {
  const { mounts, stock, tolerance, target, most } = asked;
  const sizes = [
    ...new Set([...stock.map(({ thickness }) => thickness), ...mounts.flatMap(({ stack }) => stack)]),
  ];
  const inStock = sizes.map((size) =>
    stock.reduce((sum, pads) => sum + (pads.thickness === size ? (pads.count ?? Infinity) : 0), 0),
  );
  const now = mounts.map(({ stack }) => sizes.map((size) => stack.filter((pad) => pad === size).length));
  const stacks = allStacks(sizes.length, most);
  let best: Tried | undefined;
  let nearest: Tried | undefined;
  const chosen: number[][] = [];
  const next = (): void => {
    const j = chosen.length;
    if (j < mounts.length) {
      // A stack higher than `most` may stay, but is not made.
      const here = now[j] as number[];
      const kept = stacks.some((stack) => same(stack, here)) ? stacks : [...stacks, here];
      for (const stack of kept) {
        chosen.push(stack);
        next();
        chosen.pop();
      }
      return;
    }
    const used = sizes.map((_, t) =>
      chosen.reduce((sum, stack, i) => sum + (stack[t] ?? 0) - (now[i]?.[t] ?? 0), 0),
    );
    if (used.some((count, t) => count > (inStock[t] ?? 0))) return;
    const moves = chosen.map((stack, i) =>
      stack.reduce((sum, count, t) => sum + Math.abs(count - (now[i]?.[t] ?? 0)), 0),
    );
    const heights = mounts.map(({ z }, i) => {
      const change = sizes.reduce(
        (sum, size, t) => sum + size * ((chosen[i]?.[t] ?? 0) - (now[i]?.[t] ?? 0)),
        0,
      );
      return z + change;
    });
    const tried = {
      changes: moves.filter((each) => each > 0).length,
      moved: moves.reduce((sum, each) => sum + each, 0),
      furthest: furthest(mounts, heights, target),
    };
    if (tried.furthest <= tolerance + 1e-9 && (!best || before(tried, best))) best = tried;
    const nearer =
      nearest && Math.abs(tried.furthest - nearest.furthest) <= SAME ? before(tried, nearest) : undefined;
    if (!nearest || (nearer ?? tried.furthest < nearest.furthest)) nearest = tried;
  };
  next();
  if (!nearest) throw new Error('staying as it is is always a plan');
  return { ...(best && { best }), nearest };
}

function before(one: Tried, other: Tried): boolean {
  if (one.changes !== other.changes) return one.changes < other.changes;
  if (one.moved !== other.moved) return one.moved < other.moved;
  return one.furthest < other.furthest;
}

function allStacks(kinds: number, most: number): number[][] {
  if (kinds === 0) return [[]];
  return Array.from({ length: most + 1 }, (_, count) =>
    allStacks(kinds - 1, most - count).map((rest) => [count, ...rest]),
  ).flat();
}

const same = (one: readonly number[], other: readonly number[]): boolean =>
  one.every((each, t) => each === other[t]);

/** Half the least thickness over all planes through three heights, or through two and along two others. */
function furthest(mounts: readonly Mount[], heights: readonly number[], target: 'plane' | 'level'): number {
  const width = (p: number, q: number) => {
    const rests = heights.map((z, i) => z - p * (mounts[i]?.x ?? 0) - q * (mounts[i]?.y ?? 0));
    return Math.max(...rests) - Math.min(...rests);
  };
  if (target === 'level') return width(0, 0) / 2;
  const steps = mounts.flatMap((one, i) =>
    mounts.slice(i + 1).map((other, k) => ({
      x: other.x - one.x,
      y: other.y - one.y,
      z: (heights[i + 1 + k] ?? 0) - (heights[i] ?? 0),
    })),
  );
  let least = Infinity;
  for (const [i, one] of steps.entries()) {
    // In a row along x there are no two ways to go: a line is enough.
    if (one.x !== 0 && steps.every(({ y }) => y === 0)) least = Math.min(least, width(one.z / one.x, 0));
    for (const other of steps.slice(i + 1)) {
      const area = one.x * other.y - one.y * other.x;
      if (area === 0) continue;
      least = Math.min(
        least,
        width((one.z * other.y - one.y * other.z) / area, (one.x * other.z - one.z * other.x) / area),
      );
    }
  }
  return least === Infinity ? 0 : least / 2;
}
