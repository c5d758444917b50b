// What finished lines say about the estimates still open: do they run over, and do they scatter more than was thought?
import type { Range } from '../../figures/ranges.ts';
import { type Curve, curveFrom, slopeAt, valueAt } from './curve.ts';
import { pertMean, pertVariance } from './pert.ts';
import { meanAndDeviation, quantileOf, sortedDraws } from './summary.ts';

/** A planned line that is done: its range as written, and what it took, in the same unit. */
export type FinishedLine = { range: Range; actual: number };

/**
 * `n` lines counted; `used` false when there are fewer than five, or it is switched off: then `factor` is 1.
 * `median` is the middle ratio of actual to likely as it stands (null without lines). Values are corrected by
 * exp(`shift` + `widening` z), with `factor` = exp(`shift`). `tail` is the deviation of ln(actual / likely) by which an
 * overrun is drawn.
 */
export type Calibration = {
  n: number;
  used: boolean;
  median: number | null;
  shift: number;
  factor: number;
  widening: number;
  tail: number;
};

/** Fewer finished lines than this correct nothing. */
const LINES_NEEDED = 5;
/** k of the weight n / (n + k), the credibility of Buhlmann 1967: at five lines they count as much as the ranges do. */
const LINES_OF_BELIEF = 5;
/** Deviation of ln(actual / likely) before the record has any of its own: a quarter either way. Our choice. */
export const TAIL_UNTOLD = 0.25;

/**
 * Log-normal correction from finished lines, mean and deviation of ln ratio shrunk toward none by n / (n + 5). A range
 * says itself how far its middle lies above likely and how far it scatters: ln(mean) - v/2 with v = variance / mean^2.
 * That is taken off first, or it would count twice; for a certain value nothing is taken off and the ratio is
 * actual / likely. Lines with nothing planned or nothing worked have no ratio and are not counted.
 */
export function calibrationFrom(finished: readonly FinishedLine[], on = true): Calibration {
  const lines = finished.filter(({ range, actual }) => actual > 0 && range.likely > 0);
  const n = lines.length;
  const ratios = lines.map(({ range, actual }) => actual / range.likely);
  const median = n > 0 ? quantileOf(sortedDraws(ratios), 0.5) : null;
  if (!on || n < LINES_NEEDED) {
    return { n, used: false, median, shift: 0, factor: 1, widening: 0, tail: TAIL_UNTOLD };
  }
  const owns = lines.map(({ range }) => pertVariance(range) / pertMean(range) ** 2);
  const beyond = meanAndDeviation(
    lines.map(({ range, actual }, i) => Math.log(actual / pertMean(range)) + (owns[i] as number) / 2),
  );
  const own = Math.sqrt(meanAndDeviation(owns).mean);
  const weight = n / (n + LINES_OF_BELIEF);
  const shift = beyond.mean * weight;
  const raw = meanAndDeviation(ratios.map(Math.log)).deviation;
  return {
    n,
    used: true,
    median,
    shift,
    factor: Math.exp(shift),
    widening: Math.max(0, beyond.deviation - own) * weight,
    tail: Math.sqrt(weight * raw ** 2 + (1 - weight) * TAIL_UNTOLD ** 2),
  };
}

/** A line's curve as experience corrects it: every value times exp(shift + widening z). Values are zero or more. */
export function correctedCurve(curve: Curve, { used, shift, widening }: Calibration): Curve {
  if (!used) return curve;
  return curveFrom((z) => {
    const by = Math.exp(shift + widening * z);
    return { value: valueAt(curve, z) * by, slope: (slopeAt(curve, z) + valueAt(curve, z) * widening) * by };
  });
}
