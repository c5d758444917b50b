// What follows from each kind of reading: the geometry applied to what was written. Millimeters, degrees, shares.
import { type Length, millimetres } from '../../figures/lengths.ts';
import { type Answer, noAnswer } from '../../measure/answer.ts';
import { type Figure, figureOf } from '../../measure/figure.ts';
import { type Gap, gapOf } from '../../measure/gaps.ts';
import { type Flatness, flatnessOf, type HeightReading } from '../../measure/heights.ts';
import { type Level, levelOf } from '../../measure/level.ts';
import { type Summed, summedUp } from '../../measure/readings.ts';
import { type Square, squareOf } from '../../measure/square.ts';
import { evenlyAlong, type Straight, straightOf } from '../../measure/straight.ts';
import { type Movement, movementOf } from '../../measure/timber.ts';
import type { Entry } from '../../record/record.ts';

export type Reading = NonNullable<Entry['measured']>[number];
export type Kind = Reading['kind'];
export type ReadingOf<K extends Kind> = Extract<Reading, { kind: K }>;

/** The answer of each kind. */
type Answers = {
  level: Level;
  diagonals: Square;
  heights: Flatness;
  straight: Straight;
  gaps: Gap;
  timber: Movement;
  thickness: Summed;
  length: Summed;
};

/** A reading with its answer, or with the sentence that says why there is none. */
export type Read = {
  [K in Kind]: { kind: K; reading: ReadingOf<K>; answer: Answer<Answers[K]> };
}[Kind];

/** Where a mount lies in plan, in millimeters from the front and from the left. */
export type Mounts = ReadonlyMap<string, { x: number; y: number }>;

/** `mounts` tells where a mount lies whose height was written down without its place. */
export function readOf(reading: Reading, mounts: Mounts): Read {
  switch (reading.kind) {
    case 'level':
      return { kind: 'level', reading, answer: level(reading) };
    case 'diagonals':
      return { kind: 'diagonals', reading, answer: diagonals(reading) };
    case 'heights':
      return { kind: 'heights', reading, answer: heights(reading, mounts) };
    case 'straight':
      return { kind: 'straight', reading, answer: straight(reading) };
    case 'gaps':
      return {
        kind: 'gaps',
        reading,
        answer: gapOf(reading.readings.map(figureIn(reading)), aimOf(reading.target, reading.within)),
      };
    case 'timber':
      return { kind: 'timber', reading, answer: timber(reading) };
    case 'thickness':
      return {
        kind: 'thickness',
        reading,
        answer: summedUp(
          reading.readings.map(({ length }) => figureIn(reading)(length)),
          aimOf(reading.target?.length, reading.within),
        ),
      };
    case 'length':
      return {
        kind: 'length',
        reading,
        answer: summedUp(reading.readings.map(figureIn(reading)), aimOf(reading.target, reading.within)),
      };
  }
}

/** The heights of a reading with their places; a place that nothing tells is left out. */
export function heightsOf(
  reading: ReadingOf<'heights'>,
  mounts: Mounts,
): (HeightReading & { mount?: string })[] {
  const { points, corners } = reading;
  const figure = figureIn(reading);
  const at = (x: number, y: number, z: Length, mount?: string) => {
    const { value, plusMinus } = figure(z);
    return {
      x,
      y,
      z: value,
      ...(plusMinus !== undefined && { plusMinus }),
      ...(mount !== undefined && { mount }),
    };
  };
  if (corners) return corners.map((z, i) => at(CORNERS[i]?.x ?? 0, CORNERS[i]?.y ?? 0, z));
  return (points ?? []).flatMap(({ x, y, z, mount }) => {
    const place = x && y ? { x: millimetres(x), y: millimetres(y) } : mounts.get(mount ?? '');
    return place ? [at(place.x, place.y, z, mount)] : [];
  });
}

/** Corners going round: twist and flatness of a rectangle don't depend on its size. */
const CORNERS = [
  { x: 0, y: 0 },
  { x: 1000, y: 0 },
  { x: 1000, y: 1000 },
  { x: 0, y: 1000 },
];

const mm = (length: Length | undefined) => (length === undefined ? undefined : millimetres(length));

/** Turns a length of a reading into a figure with the ± that the reading states. */
export function figureIn(reading: Exclude<Reading, ReadingOf<'level'> | ReadingOf<'timber'>>) {
  const plusMinus = mm(reading['plus-minus']);
  return (length: Length): Figure => figureOf(millimetres(length), plusMinus);
}

function aimOf(target: Length | undefined, within: Length | undefined) {
  return {
    ...(target !== undefined && { target: millimetres(target) }),
    ...(within !== undefined && { within: millimetres(within) }),
  };
}

/** What is said beside a reading as a matter of fact counts as exact where the reading says its ±. */
const asSaid = (value: number, plusMinus: number | undefined) =>
  figureOf(value, plusMinus === undefined ? undefined : 0);

function level(reading: ReadingOf<'level'>): Answer<Level> {
  const { target, within, over, 'plus-minus': off } = reading;
  return levelOf({
    reading: figureOf(reading.reading.degrees, off?.degrees),
    ...(target && { target: target.degrees }),
    ...(within && { within: within.degrees }),
    ...(over && { over: asSaid(millimetres(over), off?.degrees) }),
  });
}

function diagonals(reading: ReadingOf<'diagonals'>): Answer<Square> {
  const { a, b, a2, b2, d1, d2, within } = reading;
  const figure = figureIn(reading);
  return squareOf({
    a: figure(a),
    b: figure(b),
    ...(a2 && { a2: figure(a2) }),
    ...(b2 && { b2: figure(b2) }),
    d1: figure(d1),
    d2: figure(d2),
    ...(within && { within: millimetres(within) }),
  });
}

function heights(reading: ReadingOf<'heights'>, mounts: Mounts): Answer<Flatness> {
  const placed = heightsOf(reading, mounts);
  const lost = (reading.points ?? []).length - placed.length;
  if (!reading.corners && lost > 0) {
    return noAnswer('Some of these heights don’t say where they were read, and no other reading does.');
  }
  return flatnessOf(placed, mm(reading.within));
}

function straight(reading: ReadingOf<'straight'>): Answer<Straight> {
  const offsets = reading.offsets.map(figureIn(reading));
  return straightOf(evenlyAlong(millimetres(reading.length), offsets), mm(reading.within));
}

/** The ± of a moisture is that of the meter; the width is taken as said. */
function timber(reading: ReadingOf<'timber'>): Answer<Movement> {
  const { species, width, grain, 'plus-minus': off } = reading;
  const meter = off === undefined ? undefined : Number(off);
  return movementOf({
    species,
    grain,
    width: asSaid(millimetres(width), meter),
    moistureFrom: figureOf(Number(reading['moisture-from']), meter),
    moistureTo: figureOf(Number(reading['moisture-to']), meter),
  });
}
