// The corners of an opening, each from the two sides that meet there and the diagonal across. Millimeters and degrees.
import { type Figure, figureFrom, SLACK } from './figure.ts';

/** Two sides that meet, and the diagonal across from where they meet. */
export type Corner = { sides: readonly [Figure, Figure]; across: Figure };

/**
 * How far the corner is from 90 degrees, above zero when it is wider: the cosine rule,
 * cos = (p^2 + q^2 - d^2) / (2pq).
 */
export function cornerOff({ sides: [p, q], across: d }: Corner): Figure {
  const cosine = (p.value ** 2 + q.value ** 2 - d.value ** 2) / (2 * p.value * q.value);
  const angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
  const turn = 180 / Math.PI / (Math.sin(angle) || 1);
  return figureFrom((angle * 180) / Math.PI - 90, [
    { reading: p, slope: turn * (cosine / p.value - 1 / q.value) },
    { reading: q, slope: turn * (cosine / q.value - 1 / p.value) },
    { reading: d, slope: (turn * d.value) / (p.value * q.value) },
  ]);
}

/** Whether the three lengths can meet: none is longer than the other two together. */
export function canClose({ sides, across }: Corner): boolean {
  const [longest = 0, second = 0, third = 0] = [...sides, across]
    .map(({ value }) => value)
    .sort((one, other) => other - one);
  return longest <= second + third + SLACK;
}
