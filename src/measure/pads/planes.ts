// All planes that pass near enough to given heights, as a solid with corners: the search cuts it down mount by mount.

/**
 * A corner of the solid is itself a plane, held by its height at every mount. `tight` marks the limits that it lies on, one
 * bit each: for mount j bit 2j is its upper limit and 2j + 1 its lower.
 */
type Corner = { heights: Float64Array; tight: readonly number[] };

/** `freedom` is 3 for planes in space, 2 for lines along a row of mounts, 1 for levels. No corners: no plane is left. */
export type Planes = { freedom: 1 | 2 | 3; corners: readonly Corner[] };

/**
 * Every plane between a lower and an upper limit at each mount. `frame` names as many mounts as there are freedoms, whose
 * heights settle a plane, and `shares` how much of each of them the height at each mount is.
 */
export function planesBetween(
  limits: readonly { low: number; high: number }[],
  frame: readonly number[],
  shares: readonly (readonly number[])[],
): Planes {
  const words = Math.ceil((2 * limits.length) / 32);
  const corners = Array.from({ length: 2 ** frame.length }, (_, mask): Corner => {
    const up = frame.map((_, k) => (mask >> k) % 2 === 1);
    const held = frame.map((j, k) => (up[k] ? limits[j]?.high : limits[j]?.low) ?? 0);
    const tight = frame.reduce(
      (bits, j, k) => withBit(bits, 2 * j + (up[k] ? 0 : 1)),
      new Array<number>(words).fill(0),
    );
    const heights = Float64Array.from(shares, (share) =>
      share.reduce((sum, each, k) => sum + each * (held[k] ?? 0), 0),
    );
    return { heights, tight };
  });
  const box: Planes = { freedom: frame.length as Planes['freedom'], corners };
  return limits.reduce((planes, limit, j) => planesNear(planes, j, limit.low, limit.high), box);
}

/** Those of the planes that pass mount j between two heights. */
export function planesNear(planes: Planes, mount: number, low: number, high: number): Planes {
  return cut(cut(planes, mount, high, 1), mount, low, -1);
}

/** The lowest and the highest that the planes pass a mount. */
export function reachAt({ corners }: Planes, mount: number): { low: number; high: number } {
  let low = Infinity;
  let high = -Infinity;
  for (const { heights } of corners) {
    const height = heights[mount] as number;
    if (height < low) low = height;
    if (height > high) high = height;
  }
  return { low, high };
}

/** Closer than this, in millimeters, a corner lies on a limit. */
const ON = 1e-11;

/**
 * Keeps side x height <= side x limit at a mount. New corners lie where an edge passes the limit; two corners are the ends of
 * an edge when no third lies on all limits that they share (the double description method of Motzkin and others 1953).
 */
function cut(planes: Planes, mount: number, limit: number, side: 1 | -1): Planes {
  const { corners, freedom } = planes;
  const excess = corners.map(({ heights }) => side * ((heights[mount] as number) - limit));
  if (excess.every((each) => each < -ON)) return planes;
  const bit = 2 * mount + (side === 1 ? 0 : 1);
  const kept: Corner[] = [];
  corners.forEach((corner, i) => {
    const over = excess[i] as number;
    if (over < -ON) kept.push(corner);
    else if (over <= ON) kept.push({ heights: corner.heights, tight: withBit(corner.tight, bit) });
  });
  corners.forEach((outer, i) => {
    const over = excess[i] as number;
    if (over <= ON) return;
    corners.forEach((inner, j) => {
      const under = excess[j] as number;
      if (under >= -ON) return;
      const shared = outer.tight.map((word, k) => word & (inner.tight[k] as number));
      if (!edge(corners, outer, inner, shared, freedom)) return;
      const share = over / (over - under);
      const heights = outer.heights.map(
        (height, m) => height + share * ((inner.heights[m] as number) - height),
      );
      kept.push({ heights, tight: withBit(shared, bit) });
    });
  });
  return { freedom, corners: kept };
}

function edge(
  corners: readonly Corner[],
  one: Corner,
  other: Corner,
  shared: readonly number[],
  freedom: number,
): boolean {
  if (shared.reduce((count, word) => count + bitsIn(word), 0) < freedom - 1) return false;
  return corners.every(
    (third) =>
      third === one ||
      third === other ||
      !shared.every((word, k) => ((third.tight[k] as number) & word) === word),
  );
}

const withBit = (bits: readonly number[], bit: number): number[] =>
  bits.map((word, k) => (k === bit >> 5 ? word | (1 << (bit & 31)) : word));

function bitsIn(word: number): number {
  let count = 0;
  for (let rest = word; rest !== 0; rest &= rest - 1) count++;
  return count;
}
