// Where planned lines were written as finished.
import type { Day } from '../../figures/days.ts';
import type { Place } from '../place.ts';
import type { CarRecord } from '../record.ts';

/** A line of `finished`: the planned line, the day, and where it stands. */
export type Finished = { name: string; day: Day; place: () => Place };

/** Every line of `finished`, in order of days. */
export function finishedLines({ entries }: CarRecord): Finished[] {
  return entries.flatMap(({ finished = [], day, placeAt }) =>
    finished.map((name, i) => ({ name, day, place: () => placeAt(['finished', i]) })),
  );
}

/** The first finishing of each line. */
export function firstFinished(record: CarRecord): Map<string, Finished> {
  const first = new Map<string, Finished>();
  for (const line of finishedLines(record)) if (!first.has(line.name)) first.set(line.name, line);
  return first;
}
