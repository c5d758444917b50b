// How straight an edge or a rail is, from offsets along it. Millimeters.
import { type Answer, answer, noAnswer } from './answer.ts';
import {
  type Figure,
  figureFrom,
  figureOf,
  keeps,
  type Pull,
  type Verdict,
  widestPlusMinus,
} from './figure.ts';
import { type Fit, leastSquares } from './least-squares.ts';
import { narrowestStrip } from './narrowest-strip.ts';

/** An offset from the string or straightedge, where along it, and its ±. */
export type OffsetReading = { along: number; off: number; plusMinus?: number };

/** A place along the length and how far it stands off there. */
export type Spot = { along: number; off: number };

/**
 * `leastSquares`, `ends` and `zone` each give the range of the offsets about a line: the line of best fit, the line
 * through the first and the last offset, and the middle of the narrowest strip, which is the straightness proper and
 * never wider than the others. `bow` is the furthest that any place stands off the line through the ends, with its sign
 * and place. `high` and `low` are the spots that touch the strip's edges, off its middle. `verdict` judges the strip's
 * width.
 */
export type Straight = {
  leastSquares: { slope: number; intercept: number; range: Figure };
  ends: { range: Figure };
  zone: { width: Figure; slope: number };
  bow: Figure & { along: number };
  high: Spot[];
  low: Spot[];
  verdict?: Verdict;
};

/** Offsets read evenly along a length, the first and the last at its ends. */
export function evenlyAlong(length: number, offsets: readonly Figure[]): OffsetReading[] {
  const step = length / (offsets.length - 1);
  return offsets.map(({ value, plusMinus }, i) => ({
    along: i * step,
    off: value,
    ...(plusMinus !== undefined && { plusMinus }),
  }));
}

/** Ranges by ISO 12780-1 (least-squares and minimum-zone reference lines), across the line that was read from. */
export function straightOf(readings: readonly OffsetReading[], within?: number): Answer<Straight> {
  const order = readings.toSorted((one, other) => one.along - other.along);
  const fit = leastSquares(
    order.map(({ along }) => [1, along]),
    order.map(({ off }) => off),
  );
  if (!fit.ok) return noAnswer('Straightness needs offsets at two places along the length or more.');
  const strip = narrowestStrip(order);
  // No reading can be further off than its ±, so the strip grows or shrinks by two of them at most.
  const widest = widestPlusMinus(order);
  const width = figureOf(strip.width, widest === undefined ? undefined : 2 * widest);
  const spots = (places: readonly number[]): Spot[] =>
    places.map((i) => {
      const { along, off } = order[i] as OffsetReading;
      return { along, off: off - strip.slope * along - strip.low - strip.width / 2 };
    });
  const [intercept = 0, slope = 0] = fit.value.coefficients;
  return answer({
    leastSquares: { slope, intercept, range: rangeOfFit(fit.value, order) },
    ...fromTheEnds(order),
    zone: { width, slope: strip.slope },
    high: spots(strip.touching.high),
    low: spots(strip.touching.low),
    ...(within !== undefined && { verdict: keeps(width, within) }),
  });
}

/** The range of a fit's residuals. Its ± comes from all readings, through what each takes of the fit. */
export function rangeOfFit(fit: Fit, readings: readonly { plusMinus?: number }[]): Figure {
  const top = fit.residuals.indexOf(Math.max(...fit.residuals));
  const bottom = fit.residuals.indexOf(Math.min(...fit.residuals));
  return figureFrom(
    (fit.residuals[top] ?? 0) - (fit.residuals[bottom] ?? 0),
    pullsOf(
      readings,
      (k) => Number(k === top) - Number(k === bottom) - fit.share(top, k) + fit.share(bottom, k),
    ),
  );
}

/** Deviations from the line through the first and the last reading. */
function fromTheEnds(order: readonly OffsetReading[]): Pick<Straight, 'ends' | 'bow'> {
  const end = order.length - 1;
  const first = order[0] as OffsetReading;
  const last = order[end] as OffsetReading;
  const shares = order.map(({ along }) => (along - first.along) / (last.along - first.along));
  const offs = order.map(({ off }, i) => off - first.off - (shares[i] ?? 0) * (last.off - first.off));
  const slope = (i: number, k: number): number =>
    Number(i === k) - Number(k === 0) * (1 - (shares[i] ?? 0)) - Number(k === end) * (shares[i] ?? 0);
  const high = offs.indexOf(Math.max(...offs));
  const low = offs.indexOf(Math.min(...offs));
  const [up = 0, down = 0] = [offs[high], offs[low]];
  const far = -down > up ? low : high;
  return {
    ends: {
      range: figureFrom(
        up - down,
        pullsOf(order, (k) => slope(high, k) - slope(low, k)),
      ),
    },
    bow: {
      ...figureFrom(
        offs[far] ?? 0,
        pullsOf(order, (k) => slope(far, k)),
      ),
      along: order[far]?.along ?? 0,
    },
  };
}

/** Every reading once, each with its slope. */
function pullsOf(readings: readonly { plusMinus?: number }[], slope: (k: number) => number): Pull[] {
  return readings.map(({ plusMinus }, k) => ({ reading: figureOf(0, plusMinus), slope: slope(k) }));
}
