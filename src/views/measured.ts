// The page of measurements: every thing that was measured, part by part, as found and as left.
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import {
  type Measured,
  measurementsOf,
  readingsByPart,
  type Thing,
  thingsByPart,
} from '../rollup/measured.ts';
import { datedText } from './dated.ts';
import { page } from './links.ts';
import { passed, stateText } from './measured/result-text.ts';
import { type Section, sectionsOf } from './measured/sections.ts';
import { figureName, shortText } from './measured/short-text.ts';
import { namesOf } from './names.ts';

/** One reading in a cell: its figure, and the day on which it was read. */
export type ReadCell = { text: string; day: string; to: string };

/** One thing, as found and as last read after that; `state` judges the last reading. */
export type ThingRow = {
  what: string;
  figure: string;
  before: ReadCell | undefined;
  since: (ReadCell & { state: string }) | undefined;
  state: string;
  amiss: boolean;
};

/** `drawings` is the part’s own page, where it has drawings. */
export type PartRows = { part: string; to?: string; drawings?: string; rows: ThingRow[] };

export type MeasurementsPage = { opening: string; amiss: PartRows[]; parts: PartRows[] };

export function measurementsPage(record: CarRecord): MeasurementsPage {
  const { readings, things } = measurementsOf(record);
  const drawn = new Set(drawnParts(record));
  const byPart = thingsByPart(record);
  const names = namesOf(record);
  const known = record.parts.flatMap(({ id }) => (byPart.has(id) ? [id] : []));
  const order = [...new Set([...known, ...byPart.keys()])];
  const parts = order.map((part): PartRows => {
    const there = record.parts.some(({ id }) => id === part);
    return {
      part: names.part(part),
      ...(there && { to: page.part(part) }),
      ...(drawn.has(part) && { drawings: page.measured(part) }),
      rows: (byPart.get(part) ?? []).map((thing) => rowOf(thing, record)),
    };
  });
  return {
    opening: openingText(readings, things),
    amiss: parts.flatMap((each) => {
      const rows = each.rows.filter(({ amiss }) => amiss);
      return rows.length > 0 ? [{ ...each, rows }] : [];
    }),
    parts,
  };
}

/** The parts of the record that have a drawing, and so a page of their own. */
export const drawnParts = once((record: CarRecord): string[] => {
  const { things } = measurementsOf(record);
  const measured = new Set(things.map(({ part }) => part));
  return record.parts.flatMap(({ id }) =>
    measured.has(id) && sectionsOf(id, record).some(({ picture }) => picture) ? [id] : [],
  );
});

/** A part’s page: the answer as its heading, then each thing with its drawing and its readings. */
export type MeasuredPart = { heading: string; opening: string; sections: Section[] };

export function measuredPart(part: string, record: CarRecord): MeasuredPart {
  const own = thingsByPart(record).get(part) ?? [];
  return {
    heading: `${namesOf(record).part(part)}: ${answerText(own)}`,
    opening: openingText(readingsByPart(record).get(part) ?? [], own),
    sections: sectionsOf(part, record),
  };
}

function rowOf(thing: Thing, { units }: CarRecord): ThingRow {
  const { kind, name, before, last } = thing;
  const cell = (measured: Measured): ReadCell => ({
    text: shortText(measured, units),
    day: datedText(measured.day),
    to: page.day(measured.entry),
  });
  return {
    what: name === '' ? kind : name,
    figure: figureName(last),
    before: before && cell(before),
    since: last === before ? undefined : { ...cell(last), state: last.state },
    state: stateText(last, units),
    amiss: passed(last) === 'not passed',
  };
}

type Tally = { passed: number; not: number; open: number; none: number };

function tallyOf(things: readonly Thing[]): Tally {
  const states = things.map(({ last }) => passed(last));
  const count = (state: (typeof states)[number]) => states.filter((each) => each === state).length;
  return {
    passed: count('passed'),
    not: count('not passed'),
    open: count('can’t be told'),
    none: count(undefined),
  };
}

/** `86 readings of 54 things. As last read, 40 passed, 5 did not pass, 4 can’t be told; 5 have no tolerance.` */
function openingText(readings: readonly Measured[], things: readonly Thing[]): string {
  if (readings.length === 0) return 'Nothing has been measured yet.';
  const { passed: good, not, open, none } = tallyOf(things);
  const told = [
    ...(good > 0 ? [`${good} passed`] : []),
    ...(not > 0 ? [`${not} did not pass`] : []),
    ...(open > 0 ? [`${open} can’t be told`] : []),
    ...(none > 0 ? [`${none} ${none === 1 ? 'has' : 'have'} no tolerance`] : []),
  ];
  return `${many(readings.length, 'reading')} of ${many(things.length, 'thing')}. As last read, ${told.join(', ')}.`;
}

/** The answer of a part in few words. */
function answerText(things: readonly Thing[]): string {
  const { passed: good, not, open } = tallyOf(things);
  const judged = good + not + open;
  if (judged === 0) return 'measured';
  if (not > 0) return `${not} of ${judged} not as it should be`;
  return open > 0 ? `${good} of ${judged} as it should be` : 'all as it should be';
}

const many = (count: number, one: string) => `${count} ${count === 1 ? one : `${one}s`}`;
