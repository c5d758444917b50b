// Whether heights lie in one plane: flatness, twist, and what brings each up to level. Millimeters.
import { type Answer, answer, noAnswer } from './answer.ts';
import { type Figure, figureOf, keeps, type Verdict, widestPlusMinus } from './figure.ts';
import { type Fit, leastSquares } from './least-squares.ts';
import { type Height, type Layer, narrowestLayer } from './narrowest-layer.ts';
import { rangeOfFit } from './straight.ts';
import { twistOfHeights } from './twist.ts';

/** A height with its ±, and its place in plan. */
export type HeightReading = Height & { plusMinus?: number };

/** The plane z = height + alongX x + acrossY y; slopes are millimeters of rise in a millimeter. */
export type Plane = { alongX: number; acrossY: number; height: number };

/**
 * `best` is the plane of least squares with its residuals, their range, and their standard deviation with n - 3 degrees
 * of freedom (null for three heights). `zone` is the flatness proper: the narrowest layer, measured upright, with the
 * plane in its middle; `square` is that layer's thickness square to itself. `furthest` is half the width: no height is
 * further from the middle, and `verdict` judges it. `shims` bring each height up to the highest.
 */
export type Flatness = {
  best: { plane: Plane; residuals: number[]; range: Figure; deviation: number | null };
  zone: { width: Figure; square: number; plane: Plane; offs: number[] };
  furthest: Figure;
  twist?: Figure;
  shims: number[];
  verdict?: Verdict;
};

/** Reference planes by ISO 12781-1. No answer for fewer than three places, or places in one line. */
export function flatnessOf(heights: readonly HeightReading[], within?: number): Answer<Flatness> {
  const middle = {
    x: heights.reduce((sum, { x }) => sum + x, 0) / heights.length,
    y: heights.reduce((sum, { y }) => sum + y, 0) / heights.length,
  };
  const fit = leastSquares(
    heights.map(({ x, y }) => [1, x - middle.x, y - middle.y]),
    heights.map(({ z }) => z),
  );
  const layer = narrowestLayer(heights);
  if (!(fit.ok && layer.ok)) return noAnswer('A plane needs three places that don’t lie in one line.');
  const zone = zoneOf(heights, layer.value);
  const furthest = halved(zone.width);
  const twist = twistOfHeights(heights);
  const highest = Math.max(...heights.map(({ z }) => z));
  return answer({
    best: bestOf(heights, fit.value, middle),
    zone,
    furthest,
    ...(twist.ok && { twist: twist.value }),
    shims: heights.map(({ z }) => highest - z),
    ...(within !== undefined && { verdict: keeps(furthest, within) }),
  });
}

function bestOf(
  heights: readonly HeightReading[],
  fit: Fit,
  middle: { x: number; y: number },
): Flatness['best'] {
  const [level = 0, alongX = 0, acrossY = 0] = fit.coefficients;
  return {
    plane: { alongX, acrossY, height: level - alongX * middle.x - acrossY * middle.y },
    residuals: fit.residuals,
    range: rangeOfFit(fit, heights),
    deviation: fit.residualDeviation,
  };
}

function zoneOf(heights: readonly HeightReading[], layer: Layer): Flatness['zone'] {
  const { alongX, acrossY, width } = layer;
  const plane = { alongX, acrossY, height: layer.low + width / 2 };
  // No height can be further off than its ±, so the layer grows or shrinks by two of them at most.
  const widest = widestPlusMinus(heights);
  return {
    width: figureOf(width, widest === undefined ? undefined : 2 * widest),
    square: width / Math.hypot(1, alongX, acrossY),
    plane,
    offs: heights.map(({ x, y, z }) => z - plane.height - alongX * x - acrossY * y),
  };
}

function halved({ value, plusMinus }: Figure): Figure {
  return figureOf(value / 2, plusMinus === undefined ? undefined : plusMinus / 2);
}
