// An uncertain quantity as one curve: which value belongs to which place on the standard normal scale. Sampling,
// cutting at what is spent and correcting by experience all work on curves, whatever the distribution was.
import { normalDensity } from './normal.ts';

/**
 * value(z) = base + span x table(z), rising. `pieces` holds four coefficients for each 1/32 of z from -8 to 8; beyond
 * that (chance 1e-15) the end value holds. Curves of one shape share the table.
 */
export type Curve = { base: number; span: number; pieces: Float64Array };

export const REACH = 8;
export const PER_UNIT = 32;
export const PIECES = 2 * REACH * PER_UNIT;

/** A curve from its value and its slope d value / d z at any z. */
export function curveFrom(at: (z: number) => { value: number; slope: number }): Curve {
  const values = new Float64Array(PIECES + 1);
  const slopes = new Float64Array(PIECES + 1);
  for (let node = 0; node <= PIECES; node++) {
    const { value, slope } = at(node / PER_UNIT - REACH);
    values[node] = value;
    slopes[node] = slope;
  }
  return { base: 0, span: 1, pieces: piecesThrough(values, slopes) };
}

/** Cubic Hermite pieces through values and slopes (d / d z) at the PIECES + 1 nodes. */
export function piecesThrough(values: Float64Array, slopes: Float64Array): Float64Array {
  const pieces = new Float64Array(4 * PIECES);
  for (let i = 0; i < PIECES; i++) {
    const from = values[i] as number;
    const rise = (values[i + 1] as number) - from;
    const out = (slopes[i] as number) / PER_UNIT;
    const into = (slopes[i + 1] as number) / PER_UNIT;
    pieces.set([from, out, 3 * rise - 2 * out - into, out + into - 2 * rise], 4 * i);
  }
  return pieces;
}

/** The same value at every z. */
export function constantCurve(value: number): Curve {
  return { base: value, span: 0, pieces: FLAT };
}

/** Every value times `by`, such as hours times a rate. Zero or more, so that the curve keeps rising. */
export function scaledCurve(curve: Curve, by: number): Curve {
  if (!(by >= 0)) throw new RangeError(`a curve is scaled by zero or more, not ${by}`);
  return { ...curve, base: curve.base * by, span: curve.span * by };
}

/** Every value plus `by`. */
export function shiftedCurve(curve: Curve, by: number): Curve {
  return { ...curve, base: curve.base + by };
}

export function valueAt(curve: Curve, z: number): number {
  const { piece, along } = placed(z);
  const c = curve.pieces;
  const cubic = (c[piece + 3] as number) * along + (c[piece + 2] as number);
  return (
    curve.base + curve.span * ((cubic * along + (c[piece + 1] as number)) * along + (c[piece] as number))
  );
}

/** d value / d z; zero beyond the ends of the table. */
export function slopeAt(curve: Curve, z: number): number {
  if (Math.abs(z) > REACH) return 0;
  const { piece, along } = placed(z);
  const c = curve.pieces;
  const square = 3 * (c[piece + 3] as number) * along + 2 * (c[piece + 2] as number);
  return curve.span * PER_UNIT * (square * along + (c[piece + 1] as number));
}

/** The z at which the curve reaches a value, by halving; -Infinity below the curve, Infinity above it. */
export function placeOf(curve: Curve, value: number): number {
  if (value <= valueAt(curve, -REACH)) return -Infinity;
  if (value >= valueAt(curve, REACH)) return Infinity;
  let below = -REACH;
  let above = REACH;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (below + above) / 2;
    if (valueAt(curve, middle) < value) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

/** Mean of the curve: its integral against the normal density by the trapezoidal rule, exact here to 1e-12. */
export function curveMean(curve: Curve): number {
  let sum = 0;
  for (let node = 0; node <= PIECES; node++) {
    const z = node / PER_UNIT - REACH;
    sum += normalDensity(z) * (valueAt(curve, z) - curve.base);
  }
  return curve.base + sum / PER_UNIT;
}

const FLAT = new Float64Array(4 * PIECES);

function placed(z: number): { piece: number; along: number } {
  const place = (z + REACH) * PER_UNIT;
  if (!(place > 0)) return { piece: 0, along: 0 };
  if (place >= PIECES) return { piece: 4 * (PIECES - 1), along: 1 };
  const whole = Math.floor(place);
  return { piece: 4 * whole, along: place - whole };
}
