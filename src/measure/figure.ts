// A figure with its ±, how ± passes on to what is worked out of it, and whether a figure keeps a limit.

/**
 * `plusMinus` is the half-width written behind ±: the true value lies no further off. Left out, it is not known, which
 * is not the same as none. Unit as said where it stands: millimeters, degrees or shares.
 */
export type Figure = { value: number; plusMinus?: number };

/** How fast a result moves with one of the readings it is made of: its partial derivative there. */
export type Pull = { reading: Figure; slope: number };

/**
 * A result with its ±. Each reading's half-width h counts as a rectangle of standard uncertainty h / sqrt 3 (JCGM
 * 100:2008, the GUM, 4.3.7), the readings as independent, combined by its law of propagation (5.1.2); the result's ± is
 * twice that (6.2.1, 6.3.3), but no wider than all readings at their ends together would make it, which is as far as
 * it can go: one reading alone keeps its ±. Known only when every reading says its own.
 */
export function figureFrom(value: number, pulls: readonly Pull[]): Figure {
  let squares = 0;
  let ends = 0;
  for (const { reading, slope } of pulls) {
    if (reading.plusMinus === undefined) return { value };
    squares += (slope * reading.plusMinus) ** 2 / 3;
    ends += Math.abs(slope) * reading.plusMinus;
  }
  return { value, plusMinus: Math.min(2 * Math.sqrt(squares), ends) };
}

/** The widest ± among readings, or undefined when one of them doesn't say its own. */
export function widestPlusMinus(readings: readonly { plusMinus?: number }[]): number | undefined {
  let widest = 0;
  for (const { plusMinus } of readings) {
    if (plusMinus === undefined) return undefined;
    widest = Math.max(widest, plusMinus);
  }
  return widest;
}

/** A figure with a ± where there is one. */
export function figureOf(value: number, plusMinus: number | undefined): Figure {
  return plusMinus === undefined ? { value } : { value, plusMinus };
}

/** `too close to tell`: the limit lies inside the figure's own ± (the rule of ISO 14253-1, from memory). */
export type Verdict = 'within' | 'not within' | 'too close to tell';

/** Whether a figure is no further than `limit` from zero, both in one unit. Right at the limit is within. */
export function keeps(off: Figure, limit: number): Verdict {
  const size = Math.abs(off.value);
  const plusMinus = off.plusMinus ?? 0;
  if (size + plusMinus <= limit + SLACK) return 'within';
  if (size - plusMinus > limit + SLACK) return 'not within';
  return 'too close to tell';
}

/** Half a degree written as 0.5 and one worked out may differ in the last digit; no reading is finer than this. */
export const SLACK = 1e-7;
