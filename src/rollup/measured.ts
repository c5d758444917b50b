// The measurements of a record: every reading with what follows from it, and before and after of one thing together.
import type { Day } from '../figures/days.ts';
import { type Length, millimetres } from '../figures/lengths.ts';
import { once } from '../record/once.ts';
import type { Place } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import { mountsOf } from './measured/mounts.ts';
import { type Kind, type Read, type Reading, type ReadingOf, readOf } from './measured/results.ts';

export type { Kind, Read, Reading, ReadingOf } from './measured/results.ts';

/** A reading with its answer, its day and its place in the files. `name` is what of the part it is of. */
export type Measured = Read & {
  part: string;
  name: string;
  state: Reading['state'];
  day: Day;
  entry: string;
  place: Place;
};

export type MeasuredOf<K extends Kind> = Measured & { kind: K; reading: ReadingOf<K> };

/**
 * One thing through the record: the same part, kind and name, and of the same size. `before` is the first reading
 * before any work, as it was found; `after` the last one after it; `last` the last of all. `first` is what the last is
 * held against: `before` or, where nobody read it then, the first of all.
 */
export type Thing<M extends Measured = Measured> = {
  part: string;
  kind: M['kind'];
  name: string;
  readings: M[];
  before?: M;
  after?: M;
  first: M;
  last: M;
};

/** All readings, oldest first, and the things that they are of, in order of their first reading. */
export type Measurements = { readings: Measured[]; things: Thing[] };

export const measurementsOf = once((record: CarRecord): Measurements => {
  const mounts = mountsOf(record);
  const readings = record.entries.flatMap((entry) =>
    (entry.measured ?? []).map(
      (reading): Measured => ({
        ...readOf(reading, mounts),
        part: reading.part,
        name: nameOf(reading),
        state: reading.state,
        day: entry.day,
        entry: entry.id,
        place: reading.place,
      }),
    ),
  );
  return { readings, things: thingsOf(readings) };
});

/** The things of each part. */
export const thingsByPart = once((record: CarRecord) =>
  Map.groupBy(measurementsOf(record).things, ({ part }) => part),
);

/** The readings of each part, oldest first. */
export const readingsByPart = once((record: CarRecord) =>
  Map.groupBy(measurementsOf(record).readings, ({ part }) => part),
);

/** The answer to a reading of the record, as it stands in its entry. */
export function measuredBy(record: CarRecord, reading: Reading): Measured | undefined {
  return byReading(record).get(reading);
}

const byReading = once(
  (record: CarRecord) => new Map(measurementsOf(record).readings.map((each) => [each.reading, each])),
);

/** What of the part a reading is of: a place, a gap, a piece; empty where the part has only one. */
function nameOf(reading: Reading): string {
  if (reading.kind === 'level') return reading.at ?? '';
  return (reading.kind === 'gaps' ? reading.where : reading.of) ?? '';
}

function thingsOf(readings: readonly Measured[]): Thing[] {
  const things: Thing[] = [];
  for (const each of readings) {
    const thing = things.find((known) => sameThing(known.last, each));
    if (thing) {
      thing.readings.push(each);
      thing.last = each;
    } else {
      const { part, kind, name } = each;
      things.push({ part, kind, name, readings: [each], first: each, last: each });
    }
  }
  return things.map((thing) => {
    const before = thing.readings.find(({ state }) => state === 'before');
    const after = thing.readings.findLast(({ state }) => state === 'after');
    return { ...thing, ...(before && { before, first: before }), ...(after && { after }) };
  });
}

function sameThing(one: Measured, other: Measured): boolean {
  return (
    one.part === other.part &&
    one.kind === other.kind &&
    spoken(one.name) === spoken(other.name) &&
    ofOneSize(sizeOf(one.reading), sizeOf(other.reading))
  );
}

const spoken = (name: string) => name.trim().toLowerCase();

/** A bay 28 in long is not the bay 88 in long, even if neither was named. Our choice: sizes may differ by 2%. */
function ofOneSize(one: readonly number[], other: readonly number[]): boolean {
  return (
    one.length === other.length &&
    one.every((size, i) => Math.abs(size - (other[i] ?? 0)) <= 0.02 * Math.max(size, other[i] ?? 0))
  );
}

function sizeOf(reading: Reading): number[] {
  const sizes = (...lengths: Length[]) => lengths.map(millimetres);
  switch (reading.kind) {
    case 'diagonals':
      return sizes(reading.a, reading.b);
    case 'straight':
      return sizes(reading.length);
    case 'timber':
      return sizes(reading.width);
    case 'heights':
      return [reading.corners ? 4 : 0];
    default:
      return [];
  }
}
