// The curve of a PERT range. All ranges with the mode at the same share of the width are one shape, so a table is
// made once for each shape and kept.
import type { Range } from '../../figures/ranges.ts';
import { betaAt, betaWeight } from './beta.ts';
import { type Curve, constantCurve, PER_UNIT, PIECES, piecesThrough } from './curve.ts';
import { normalCdf, normalDensity } from './normal.ts';

/**
 * The range as a curve; a constant for a range without width.
 * @throws RangeError when low, likely and high are out of order or not finite.
 */
export function pertCurve({ low, likely, high }: Range): Curve {
  if (!(low <= likely && likely <= high && high - low < Infinity)) {
    throw new RangeError(`a range runs low, likely, high, not ${low}, ${likely}, ${high}`);
  }
  if (low === high) return constantCurve(low);
  return { base: low, span: high - low, pieces: piecesOf((likely - low) / (high - low)) };
}

const SHAPES_KEPT = 1000;
const shapes = new Map<number, Float64Array>();

function piecesOf(mode: number): Float64Array {
  const known = shapes.get(mode);
  if (known) return known;
  if (shapes.size >= SHAPES_KEPT) shapes.clear();
  const pieces = tabulate(1 + 4 * mode);
  shapes.set(mode, pieces);
  return pieces;
}

/** The upper half is the lower half of the mirrored shape, so that both tails keep their digits. */
function tabulate(alpha: number): Float64Array {
  const values = new Float64Array(PIECES + 1);
  const slopes = new Float64Array(PIECES + 1);
  const middle = PIECES / 2;
  walkDown(6 - alpha, (node, x, slope) => {
    values[middle + node] = 1 - x;
    slopes[middle + node] = slope;
  });
  walkDown(alpha, (node, x, slope) => {
    values[middle - node] = x;
    slopes[middle - node] = slope;
  });
  return piecesThrough(values, slopes);
}

/** Exact points lie this many nodes apart; the nodes between them follow from value, slope and bend at both. */
const APART = 4;
const STEP = APART / PER_UNIT;
const POINTS = PIECES / 2 / APART;
const target = { chance: new Float64Array(POINTS + 1), density: new Float64Array(POINTS + 1) };

/** ln x at a point, with its first and second derivative by -z. */
type Point = { y: number; slope: number; bend: number };

/** From the median (z = 0) down to z = -8; `put` gets each node, x there, and dx/dz. */
function walkDown(alpha: number, put: (node: number, x: number, slope: number) => void): void {
  const weight = betaWeight(alpha);
  let last = pointAt(0, Math.log((alpha - 1 / 3) / (6 - 2 / 3)), alpha, weight);
  put(0, Math.exp(last.y), -last.slope * Math.exp(last.y));
  for (let k = 1; k <= POINTS; k++) {
    const foretold = last.y + STEP * (last.slope + (STEP / 2) * last.bend);
    const next = pointAt(k, foretold, alpha, weight);
    fillBetween(last, next, (k - 1) * APART, put);
    last = next;
  }
}

/**
 * Solves ln chance(x) = ln chance(z) for y = ln x by Newton, from a near guess. dy/dz = density(z) / (x f(x)), and the
 * second derivative follows from (ln x f)' = alpha - (beta-1) x / (1-x).
 */
function pointAt(k: number, guess: number, alpha: number, weight: number): Point {
  if (target.chance[0] === 0) fillTarget();
  const chance = target.chance[k] as number;
  let y = guess;
  for (let turn = 0; turn < 20; turn++) {
    const found = betaAt(Math.exp(y), alpha, weight);
    const mend = (Math.log(found.chance / chance) * found.chance) / found.flow;
    y -= mend;
    if (Math.abs(mend) < 1e-5) break;
  }
  const x = Math.exp(y);
  const flow = Math.exp(alpha * y + (5 - alpha) * Math.log1p(-x)) / weight;
  const slope = -(target.density[k] as number) / flow;
  return { y, slope, bend: -slope * (k * STEP + slope * (alpha - ((5 - alpha) * x) / (1 - x))) };
}

/** Quintic Hermite interpolation of y between two points. */
function fillBetween(from: Point, to: Point, node: number, put: (n: number, x: number, s: number) => void) {
  const rise = to.y - from.y - STEP * (from.slope + (STEP / 2) * from.bend);
  const turn = STEP * (to.slope - from.slope - STEP * from.bend);
  const bow = STEP * STEP * (to.bend - from.bend);
  const c3 = 10 * rise - 4 * turn + bow / 2;
  const c4 = -15 * rise + 7 * turn - bow;
  const c5 = 6 * rise - 3 * turn + bow / 2;
  const [c1, c2] = [STEP * from.slope, (STEP * STEP * from.bend) / 2];
  for (let n = 1; n <= APART; n++) {
    const u = n / APART;
    const x = Math.exp(from.y + u * (c1 + u * (c2 + u * (c3 + u * (c4 + u * c5)))));
    const climb = (c1 + u * (2 * c2 + u * (3 * c3 + u * (4 * c4 + u * 5 * c5)))) / STEP;
    put(node + n, x, -climb * x);
  }
}

function fillTarget(): void {
  for (let k = 0; k <= POINTS; k++) {
    target.chance[k] = normalCdf(-k * STEP);
    target.density[k] = normalDensity(k * STEP);
  }
}
