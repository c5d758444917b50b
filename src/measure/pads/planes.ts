// All planes that pass near enough to given heights, as a solid with corners: the search cuts it down mount by mount.

/**
 * A corner of the solid is itself a plane, held by its height at every mount. `tight` marks the limits that it lies on,
 * one bit each: for mount j bit 2j is its upper limit and 2j + 1 its lower.
 */
type Corner = { heights: readonly number[]; tight: readonly number[] };

/**
 * `freedom` is 3 for planes in space, 2 for lines along a row of mounts, 1 for levels. No corners: no plane is left.
 */
export type Planes = { freedom: 1 | 2 | 3; corners: readonly Corner[] };

/**
 * Every plane between a lower and an upper limit at each mount. `frame` names as many mounts as there are freedoms,
 * whose heights settle a plane, and `shares` how much of each of them the height at each mount is.
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
    const heights = shares.map((share) => share.reduce((sum, each, k) => sum + each * (held[k] ?? 0), 0));
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
 * Keeps side x height <= side x limit at a mount. New corners lie where an edge passes the limit; two corners are the
 * ends of an edge when no third lies on all limits that they share (the double description method of Motzkin and others
 * 1953).
 */
function cut(planes: Planes, mount: number, limit: number, side: 1 | -1): Planes {
  const { corners, freedom } = planes;
  const bit = 2 * mount + (side === 1 ? 0 : 1);
  const kept: Corner[] = [];
  const inner: Corner[] = [];
  const outer: Corner[] = [];
  for (const corner of corners) {
    const over = side * ((corner.heights[mount] as number) - limit);
    if (over > ON) outer.push(corner);
    else if (over < -ON) inner.push(corner);
    else kept.push({ heights: corner.heights, tight: withBit(corner.tight, bit) });
  }
  if (outer.length === 0 && kept.length === 0) return planes;
  for (const one of outer) {
    for (const other of inner) {
      if (!isEdge(corners, one, other, freedom)) continue;
      const from = one.heights[mount] as number;
      const share = (from - limit) / (from - (other.heights[mount] as number));
      kept.push({
        heights: between(one.heights, other.heights, share),
        tight: withBit(sharedBits(one.tight, other.tight), bit),
      });
    }
  }
  for (const corner of inner) kept.push(corner);
  return { freedom, corners: kept };
}

function isEdge(corners: readonly Corner[], one: Corner, other: Corner, freedom: number): boolean {
  const words = one.tight.length;
  let count = 0;
  for (let k = 0; k < words; k++) count += bitsIn((one.tight[k] as number) & (other.tight[k] as number));
  if (count < freedom - 1) return false;
  for (const third of corners) {
    if (third === one || third === other) continue;
    let all = true;
    for (let k = 0; all && k < words; k++) {
      const shared = (one.tight[k] as number) & (other.tight[k] as number);
      all = ((third.tight[k] as number) & shared) === shared;
    }
    if (all) return false;
  }
  return true;
}

function between(one: readonly number[], other: readonly number[], share: number): number[] {
  const heights: number[] = [];
  for (let m = 0; m < one.length; m++) {
    heights.push((one[m] as number) + share * ((other[m] as number) - (one[m] as number)));
  }
  return heights;
}

const sharedBits = (one: readonly number[], other: readonly number[]): number[] =>
  one.map((word, k) => word & (other[k] as number));

const withBit = (bits: readonly number[], bit: number): number[] =>
  bits.map((word, k) => (k === bit >> 5 ? word | (1 << (bit & 31)) : word));

function bitsIn(word: number): number {
  let count = 0;
  for (let rest = word; rest !== 0; rest &= rest - 1) count++;
  return count;
}
