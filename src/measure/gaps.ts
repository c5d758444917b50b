// Gaps between panels: how wide, how even, and one side of the car against the other. Millimeters.
import { type Answer, answer } from './answer.ts';
import { type Figure, figureFrom } from './figure.ts';
import { leastSquares } from './least-squares.ts';
import { type Aim, difference, type Summed, summedUp } from './readings.ts';

/**
 * `taper` is how much wider the gap is at its end than at its beginning, along the line of best fit, so that one odd
 * reading doesn't make it; `ends` is the last reading less the first. Both are left out for a single reading.
 */
export type Gap = Summed & { taper?: Figure; ends?: Figure };

/**
 * Readings evenly along a gap. What a gap should be is the writer's word: no published standard for coachbuilt panels
 * is known.
 */
export function gapOf(readings: readonly Figure[], aim: Aim = {}): Answer<Gap> {
  const summed = summedUp(readings, aim);
  if (!summed.ok) return summed;
  const [first, last] = [readings[0], readings.at(-1)];
  const taper = taperOf(readings);
  return answer({
    ...summed.value,
    ...(taper && first && last && { taper, ends: difference(last, first) }),
  });
}

/**
 * Left less right. `places` compares reading with reading and is left out when the two sides were read in different
 * numbers of places; `widest` is the largest of them in size.
 */
export type Sides = { mean: Figure; spread: Figure; taper?: Figure; places?: Figure[]; widest?: Figure };

/** The same gap on the two sides, both read from the same end. */
export function leftAgainstRight(left: readonly Figure[], right: readonly Figure[]): Answer<Sides> {
  const one = gapOf(left);
  const other = gapOf(right);
  if (!one.ok) return one;
  if (!other.ok) return other;
  const places =
    left.length === right.length
      ? left.map((reading, i) => difference(reading, right[i] as Figure))
      : undefined;
  return answer({
    mean: difference(one.value.mean, other.value.mean),
    spread: difference(one.value.spread, other.value.spread),
    ...(one.value.taper && other.value.taper && { taper: difference(one.value.taper, other.value.taper) }),
    ...(places && {
      places,
      widest: places.reduce((most, each) => (Math.abs(each.value) > Math.abs(most.value) ? each : most)),
    }),
  });
}

/** Slope of the line of best fit times the length: with readings evenly along it, the length itself doesn't matter. */
function taperOf(readings: readonly Figure[]): Figure | undefined {
  const fit = leastSquares(
    readings.map((_, i) => [1, i / (readings.length - 1)]),
    readings.map(({ value }) => value),
  );
  if (!fit.ok) return undefined;
  return figureFrom(
    fit.value.coefficients[1] ?? 0,
    readings.map((reading, k) => ({ reading, slope: fit.value.pull(1, k) })),
  );
}
