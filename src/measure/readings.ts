// Readings of one thing: a length or a thickness read in several places. Millimeters.
import { type Answer, answer, noAnswer } from './answer.ts';
import { type Figure, figureFrom, keeps, type Verdict } from './figure.ts';

/** `target` and `within` as the writer gave them: what it should be, and how far off is still right. */
export type Aim = { target?: number; within?: number };

/**
 * `spread` is the largest less the smallest, `deviation` the standard deviation with n - 1 (null for one reading).
 * `off` is the reading furthest from the target, less the target; `verdict` judges it, so that all readings are right
 * when it is.
 */
export type Summed = {
  count: number;
  mean: Figure;
  smallest: Figure;
  largest: Figure;
  spread: Figure;
  deviation: number | null;
  off?: Figure;
  verdict?: Verdict;
};

export function summedUp(readings: readonly Figure[], { target, within }: Aim = {}): Answer<Summed> {
  const [first] = readings;
  if (!first) return noAnswer('Nothing was read.');
  const mean = meanOf(readings);
  const smallest = readings.reduce((least, each) => (each.value < least.value ? each : least), first);
  const largest = readings.reduce((most, each) => (each.value > most.value ? each : most), first);
  const off = target === undefined ? undefined : furthest(readings, target);
  const squares = readings.reduce((sum, { value }) => sum + (value - mean.value) ** 2, 0);
  return answer({
    count: readings.length,
    mean,
    smallest,
    largest,
    spread: difference(largest, smallest),
    deviation: readings.length > 1 ? Math.sqrt(squares / (readings.length - 1)) : null,
    ...(off && { off }),
    ...(off && within !== undefined && { verdict: worst(readings, target ?? 0, within) }),
  });
}

/** The mean, each reading pulling on it by its share. */
export function meanOf(readings: readonly Figure[]): Figure {
  const sum = readings.reduce((total, { value }) => total + value, 0);
  return figureFrom(
    sum / readings.length,
    readings.map((reading) => ({ reading, slope: 1 / readings.length })),
  );
}

/** One figure less another that was read apart from it; nothing for a figure less itself. */
export function difference(one: Figure, other: Figure): Figure {
  if (one === other) return figureFrom(0, []);
  return figureFrom(one.value - other.value, [
    { reading: one, slope: 1 },
    { reading: other, slope: -1 },
  ]);
}

function furthest(readings: readonly Figure[], target: number): Figure {
  const offs = readings.map((reading) => figureFrom(reading.value - target, [{ reading, slope: 1 }]));
  return offs.reduce((most, each) => (Math.abs(each.value) > Math.abs(most.value) ? each : most));
}

/** Not within as soon as one reading surely isn't; within only when all surely are. */
function worst(readings: readonly Figure[], target: number, within: number): Verdict {
  const verdicts = readings.map((reading) => keeps({ ...reading, value: reading.value - target }, within));
  if (verdicts.includes('not within')) return 'not within';
  return verdicts.includes('too close to tell') ? 'too close to tell' : 'within';
}
