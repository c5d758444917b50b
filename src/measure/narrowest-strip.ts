// The narrowest strip between two parallel lines that holds all offsets: minimum-zone straightness, exactly.

/** A reading along a line: its place, and its offset from where the line should be. One unit. */
export type Offset = { along: number; off: number };

/**
 * `width` is measured the way the offsets are, across the line read from. The strip lies between `low + slope x along`
 * and that plus `width`. `high` and `low` of `touching` are the places in the list that touch its edges.
 */
export type Strip = {
  width: number;
  slope: number;
  low: number;
  touching: { high: number[]; low: number[] };
};

/**
 * The strip's width is the widest gap between the upper and the lower hull of the offsets, and the widest gap stands
 * over a corner of one of them; the strip runs along the other there. Least width of ISO 12780-1. n log n, no
 * iteration. @throws RangeError without offsets.
 */
export function narrowestStrip(offsets: readonly Offset[]): Strip {
  if (offsets.length === 0) throw new RangeError('a strip needs offsets');
  const order = offsets.toSorted((one, other) => one.along - other.along || one.off - other.off);
  const upper = hullOf(order, -1);
  const lower = hullOf(order, 1);
  let best = { width: -1, from: 0, to: 0 };
  for (const { along } of [...upper, ...lower]) {
    const over = at(upper, along, -1);
    const under = at(lower, along, 1);
    const width = over.off - under.off;
    if (width > best.width) {
      best = { width, from: Math.max(over.from, under.from), to: Math.min(over.to, under.to) };
    }
  }
  return stripAlong(offsets, slopeBetween(best.from, best.to));
}

/** The strip that a slope makes: as wide as the offsets need. */
function stripAlong(offsets: readonly Offset[], slope: number): Strip {
  const rests = offsets.map(({ along, off }) => off - slope * along);
  const low = Math.min(...rests);
  const high = Math.max(...rests);
  const touching = (edge: number) =>
    rests.flatMap((rest, i) => (Math.abs(rest - edge) <= 1e-9 * (high - low) ? [i] : []));
  return { width: high - low, slope, low, touching: { high: touching(high), low: touching(low) } };
}

/** Andrew's monotone chain: the lower hull for side 1, the upper for side -1, from left to right. */
function hullOf(order: readonly Offset[], side: 1 | -1): Offset[] {
  const hull: Offset[] = [];
  for (const point of order) {
    const last = hull.at(-1);
    if (last?.along === point.along) {
      if (side * last.off <= side * point.off) continue;
      hull.pop();
    }
    while (hull.length > 1 && side * turn(hull.at(-2) as Offset, hull.at(-1) as Offset, point) <= 0)
      hull.pop();
    hull.push(point);
  }
  return hull;
}

const turn = (a: Offset, b: Offset, c: Offset): number =>
  (b.along - a.along) * (c.off - a.off) - (b.off - a.off) * (c.along - a.along);

/** The hull's height at a place, and the slopes, from and to, that a line touching it there can have. */
function at(hull: readonly Offset[], along: number, side: 1 | -1): { off: number; from: number; to: number } {
  const next = hull.findIndex((corner) => corner.along >= along);
  const right = hull[next] as Offset;
  const exact = right.along === along;
  const left = hull[next - 1];
  const before = left ? slope(left, right) : -side * Infinity;
  const after = exact ? (hull[next + 1] ? slope(right, hull[next + 1] as Offset) : side * Infinity) : before;
  const off = exact || !left ? right.off : left.off + before * (along - left.along);
  return { off, from: Math.min(before, after), to: Math.max(before, after) };
}

const slope = (a: Offset, b: Offset): number => (b.off - a.off) / (b.along - a.along);

function slopeBetween(from: number, to: number): number {
  if (Number.isFinite(from) && Number.isFinite(to)) return (from + to) / 2;
  return Number.isFinite(from) ? from : Number.isFinite(to) ? to : 0;
}
