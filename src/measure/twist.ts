// Twist: how far corners that should lie in one plane don't. Millimeters.
import { type Answer, answer } from './answer.ts';
import { type Figure, figureFrom, figureOf } from './figure.ts';
import { leastSquares } from './least-squares.ts';
import type { Height } from './narrowest-layer.ts';

/** Four heights, going round. */
export type Corners = readonly [Figure, Figure, Figure, Figure];

/**
 * `twist` = (A + C) - (B + D), below zero when B and D stand high; it is also what the fourth corner stands off the
 * plane of the other three. `zone` is the narrowest layer, `residuals` the heights over the best plane.
 */
export type CornerTwist = { twist: Figure; zone: Figure; residuals: [number, number, number, number] };

/**
 * For corners of a rectangle or any parallelogram in plan: residuals are a quarter of the twist, the zone half of it.
 */
export function twistOfCorners(corners: Corners): CornerTwist {
  const signs = [1, -1, 1, -1];
  const sum = corners.reduce((rest, { value }, i) => rest + (signs[i] ?? 0) * value, 0);
  const by = (share: number, value: number) =>
    figureFrom(
      value,
      corners.map((reading, i) => ({ reading, slope: share * (signs[i] ?? 0) })),
    );
  return {
    twist: by(1, sum),
    zone: by(0.5, Math.abs(sum) / 2),
    residuals: [sum / 4, -sum / 4, sum / 4, -sum / 4],
  };
}

/**
 * The twist of any heights, as at the corners of the rectangle round them: z = c + px + qy + kxy by least squares,
 * twist = k x length x width, in the order front left, back left, back right, front right. No answer where the places
 * don't settle it: fewer than four, or all on two lines that cross.
 */
export function twistOfHeights(heights: readonly (Height & { plusMinus?: number })[]): Answer<Figure> {
  const x = spanOf(heights.map((each) => each.x));
  const y = spanOf(heights.map((each) => each.y));
  const rows = heights.map((each) => {
    const u = (each.x - x.from) / x.length;
    const v = (each.y - y.from) / y.length;
    return [1, u, v, u * v];
  });
  const fit = leastSquares(
    rows,
    heights.map(({ z }) => z),
  );
  if (!fit.ok) return fit;
  const twist = fit.value.coefficients[3] ?? 0;
  return answer(
    figureFrom(
      twist,
      heights.map(({ plusMinus }, k) => ({
        reading: figureOf(0, plusMinus),
        slope: fit.value.pull(3, k),
      })),
    ),
  );
}

function spanOf(places: readonly number[]): { from: number; length: number } {
  const from = Math.min(...places);
  return { from, length: Math.max(...places) - from || 1 };
}
