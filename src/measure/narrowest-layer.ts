// The narrowest layer between two parallel planes that holds all heights: minimum-zone flatness, exactly.
import { type Answer, answer, noAnswer } from './answer.ts';

/** A height and its place in plan. One unit. */
export type Height = { x: number; y: number; z: number };

/** z = low + alongX x + acrossY y is the lower plane, `width` higher the upper. `touching`: the heights on each. */
export type Layer = {
  width: number;
  alongX: number;
  acrossY: number;
  low: number;
  touching: { high: number[]; low: number[] };
};

/**
 * Width measured upright. The narrowest layer is as wide as the widest gap, at one place in plan, between a mean of
 * heights and another mean of heights: the linear program max sum a z - sum b z, sum a = sum b = 1, sum (a - b)(x, y) =
 * 0, whose prices are the planes. It has four conditions, so the simplex method exchanges one of four heights at a
 * time, the one that sticks out furthest. Least width of ISO 12781-1. No answer when the places lie in one line or at
 * one place.
 */
export function narrowestLayer(heights: readonly Height[]): Answer<Layer> {
  const start = threeApart(heights);
  if (!start) return noAnswer('A plane needs three places that don’t lie in one line.');
  const base = heights[start[0]] as Height;
  const reach = Math.max(...heights.map(({ x, y }) => Math.hypot(x - base.x, y - base.y)));
  const points = heights.map(({ x, y, z }) => ({ x: (x - base.x) / reach, y: (y - base.y) / reach, z }));
  const { p, q } = exchange(points, start);
  const alongX = p / reach + 0;
  const acrossY = q / reach + 0;
  const rests = points.map((point) => point.z - p * point.x - q * point.y);
  const low = Math.min(...rests);
  const width = Math.max(...rests) - low;
  const touching = (edge: number) =>
    rests.flatMap((rest, i) => (Math.abs(rest - edge) <= 1e-9 * width ? [i] : []));
  return answer({
    width,
    alongX,
    acrossY,
    low: low - alongX * base.x - acrossY * base.y,
    touching: { high: touching(low + width), low: touching(low) },
  });
}

/** Three places as far from one line as is easily found, or none when all lie in one line. */
export function threeApart(
  places: readonly { x: number; y: number }[],
): [number, number, number] | undefined {
  const first = farthest(places, ({ x, y }) => -x - y * 1e-3);
  const base = places[first];
  if (!base) return undefined;
  const second = farthest(places, ({ x, y }) => Math.hypot(x - base.x, y - base.y));
  const dx = (places[second]?.x ?? 0) - base.x;
  const dy = (places[second]?.y ?? 0) - base.y;
  const aside = ({ x, y }: { x: number; y: number }) => Math.abs(dx * (y - base.y) - dy * (x - base.x));
  const third = farthest(places, aside);
  const reach = dx * dx + dy * dy;
  return aside(places[third] ?? base) > 1e-9 * reach ? [first, second, third] : undefined;
}

function farthest<P>(places: readonly P[], measure: (place: P) => number): number {
  let best = 0;
  let most = -Infinity;
  places.forEach((place, i) => {
    const far = measure(place);
    if (far > most) {
      most = far;
      best = i;
    }
  });
  return best;
}

/** Column 2i holds height i up against the upper plane, 2i + 1 down against the lower. */
type Column = [number, number, number, number];

function columnOf(points: readonly Height[], column: number): Column {
  const { x, y } = points[column >> 1] as Height;
  return column % 2 === 0 ? [1, 0, x, y] : [0, 1, -x, -y];
}

function worthOf(points: readonly Height[], column: number): number {
  const { z } = points[column >> 1] as Height;
  return column % 2 === 0 ? z : -z;
}

/** The slopes of the narrowest layer. It begins with the three places, the first of them held from both sides. */
function exchange(
  points: readonly Height[],
  [i, j, k]: readonly [number, number, number],
): { p: number; q: number } {
  const span = Math.max(...points.map(({ z }) => z)) - Math.min(...points.map(({ z }) => z));
  const near = 1e-12 * Math.max(span, Number.MIN_VALUE);
  const basis = [2 * i, 2 * i + 1, 2 * j, 2 * k];
  for (let round = 0; ; round++) {
    const columns = basis.map((column) => columnOf(points, column));
    const worths = basis.map((column) => worthOf(points, column));
    const [high = 0, low = 0, p = 0, q = 0] = solveFour(columns, worths);
    // The widest breach enters; after many rounds the first breach, which can't go in a circle (Bland 1977).
    const entering = breachOf(points, { high, low, p, q }, near, round > 40 + points.length);
    if (entering === undefined || round > 100 * points.length) return { p, q };
    const across = transposed(columns);
    const shares = solveFour(across, [1, 1, 0, 0]);
    const moves = solveFour(across, columnOf(points, entering));
    basis[leaving(basis, shares, moves)] = entering;
  }
}

type Prices = { high: number; low: number; p: number; q: number };

function breachOf(points: readonly Height[], { high, low, p, q }: Prices, near: number, first: boolean) {
  let worst = near;
  let found: number | undefined;
  for (let i = 0; i < points.length; i++) {
    const { x, y, z } = points[i] as Height;
    const rest = z - p * x - q * y;
    const over = rest - high;
    const under = -rest - low;
    if (over > worst || under > worst) {
      found = over > under ? 2 * i : 2 * i + 1;
      if (first) return found;
      worst = Math.max(over, under);
    }
  }
  return found;
}

function leaving(basis: readonly number[], shares: readonly number[], moves: readonly number[]): number {
  let least = Infinity;
  let place = 0;
  for (let r = 0; r < 4; r++) {
    const move = moves[r] ?? 0;
    if (move <= 1e-11) continue;
    const ratio = Math.max(0, shares[r] ?? 0) / move;
    const tie = Math.abs(ratio - least) <= 1e-12;
    if (ratio < least - 1e-12 || (tie && (basis[r] ?? 0) < (basis[place] ?? 0))) {
      least = ratio;
      place = r;
    }
  }
  return place;
}

const transposed = (rows: readonly (readonly number[])[]): number[][] =>
  [0, 1, 2, 3].map((j) => rows.map((row) => row[j] ?? 0));

/** Four equations, a row each, by elimination with the largest pivot. */
function solveFour(rows: readonly (readonly number[])[], values: readonly number[]): number[] {
  const m = rows.map((row, i) => [...row, values[i] ?? 0]);
  for (let j = 0; j < 4; j++) {
    let pivot = j;
    for (let i = j + 1; i < 4; i++) if (Math.abs(m[i]?.[j] ?? 0) > Math.abs(m[pivot]?.[j] ?? 0)) pivot = i;
    const top = m[pivot] as number[];
    m[pivot] = m[j] as number[];
    m[j] = top;
    for (let i = 0; i < 4; i++) {
      if (i === j) continue;
      const row = m[i] as number[];
      const by = (row[j] ?? 0) / (top[j] ?? 1);
      for (let c = j; c <= 4; c++) row[c] = (row[c] ?? 0) - by * (top[c] ?? 0);
    }
  }
  return m.map((row, i) => (row[4] ?? 0) / (row[i] ?? 1));
}
