// What follows from a reading, in one line: how far off, and whether that is right.
import { inchText, lengthText, workedText } from '../../figures/length-text.ts';
import { type Length, millimetres, type Units } from '../../figures/lengths.ts';
import type { Verdict } from '../../measure/figure.ts';
import type { Measured, MeasuredOf } from '../../rollup/measured.ts';
import { degreesText, figureText, placeText } from './figure-text.ts';

/** `off by 1.5°, 7.9 mm over 300 mm; not passed: beyond 0.5°`, or why nothing follows. */
export function resultText(measured: Measured, units: Units): string {
  if (!measured.answer.ok) return measured.answer.why;
  const state = stateText(measured, units);
  return state === '' ? comesTo(measured, units) : `${comesTo(measured, units)}; ${state}`;
}

/** How far off a reading is, or what it comes to, without a judgment. */
export function comesTo(measured: Measured, units: Units): string {
  const { answer } = measured;
  if (!answer.ok) return answer.why;
  switch (measured.kind) {
    case 'level':
      return levelText(measured, units);
    case 'diagonals':
      return diagonalsText(measured, units);
    case 'heights':
      return heightsText(measured, units);
    case 'straight':
      return straightText(measured, units);
    case 'timber':
      return timberText(measured, units);
    default:
      return summedText(measured, units);
  }
}

/** Whether a reading passed. Nothing where it says no tolerance, or none can be applied. */
export type Passed = 'passed' | 'not passed' | 'can’t be told';

export function passed({ kind, answer }: Measured): Passed | undefined {
  if (!answer.ok) return undefined;
  if (kind === 'diagonals' && 'square' in answer.value) return SQUARE[answer.value.square];
  const { verdict } = answer.value as { verdict?: Verdict };
  return verdict && VERDICT[verdict];
}

const VERDICT: { [verdict in Verdict]: Passed } = {
  within: 'passed',
  'not within': 'not passed',
  'too close to tell': 'can’t be told',
};

const SQUARE = {
  square: 'passed',
  'not square': 'not passed',
  'too close to tell': 'can’t be told',
  'not known': 'can’t be told',
  'readings disagree': 'can’t be told',
} as const;

/** The judgment with its tolerance: `passed: within 1/8 in (3.2 mm)`; empty where there is none. */
export function stateText(measured: Measured, units: Units): string {
  const state = passed(measured);
  if (state === undefined) return '';
  const limit = limitOf(measured, units);
  if (measured.kind === 'diagonals' && measured.answer.ok) {
    const { square } = measured.answer.value;
    if (square === 'not known')
      return `${state}: opposite sides weren’t read, and a trapezoid has equal diagonals too`;
    if (square === 'readings disagree') return `${state}: sides and diagonals don’t belong to one flat shape`;
  }
  if (limit === undefined) return state;
  const far = { passed: 'within', 'not passed': 'beyond', 'can’t be told': '' }[state];
  return state === 'can’t be told' ? `${state}: ${limit} lies inside the ±` : `${state}: ${far} ${limit}`;
}

/** The tolerance as it was written, in both units. */
export function limitOf({ reading }: Measured, units: Units): string | undefined {
  if (reading.kind === 'timber' || reading.within === undefined) return undefined;
  if (reading.kind === 'level') return degreesText({ value: reading.within.degrees });
  return reading.kind === 'thickness'
    ? workedText(millimetres(reading.within), units, 'fine')
    : lengthText(reading.within, units);
}

/** A length beside a figure, in the record's own units alone. */
const plainly = (length: Length, units: Units): string =>
  units === 'inch' ? inchText(length) : `${Number(millimetres(length).toFixed(1))} mm`;

type Told<K extends Measured['kind']> = MeasuredOf<K>;

function levelText({ answer, reading }: Told<'level'>, units: Units): string {
  if (!answer.ok) return answer.why;
  const { off, riseOff } = answer.value;
  const size = { ...off, value: Math.abs(off.value) };
  if (size.value < 0.005) return reading.target?.degrees ? 'as it should be' : 'level';
  const rise =
    riseOff && reading.over
      ? `, ${figureText({ ...riseOff, value: Math.abs(riseOff.value) }, units)} over ${plainly(reading.over, units)}`
      : '';
  return `off by ${degreesText(size)}${rise}`;
}

function diagonalsText({ answer, reading }: Told<'diagonals'>, units: Units): string {
  if (!answer.ok) return answer.why;
  const { diagonals, outOfSquare, rack } = answer.value;
  if (Math.abs(diagonals.off.value) < 1e-6) return 'diagonals the same';
  const shorter = millimetres(reading.a) < millimetres(reading.b) ? 'a' : 'b';
  const slid = shorter === 'a' ? rack.overA : rack.overB;
  const size = (figure: { value: number; plusMinus?: number }) => ({
    ...figure,
    value: Math.abs(figure.value),
  });
  return `diagonals differ by ${figureText(size(diagonals.off), units)}; out of square by ${degreesText(size(outOfSquare))}, ${figureText(size(slid), units)} over ${plainly(reading[shorter], units)}`;
}

function heightsText({ answer }: Told<'heights'>, units: Units): string {
  if (!answer.ok) return answer.why;
  const { furthest, twist } = answer.value;
  const twisted = twist ? `; twist ${figureText({ ...twist, value: Math.abs(twist.value) }, units)}` : '';
  return `no height further than ${figureText(furthest, units)} from one plane${twisted}`;
}

function straightText({ answer }: Told<'straight'>, units: Units): string {
  if (!answer.ok) return answer.why;
  const { zone, bow } = answer.value;
  const within = `straight within ${figureText(zone.width, units)}`;
  const size = Math.abs(bow.value);
  if (size < 1e-6) return within;
  if (Math.abs(size - zone.width.value) < 1e-6)
    return `${within}, furthest at ${placeText(bow.along, units)}`;
  return `${within}; bow ${figureText({ ...bow, value: size }, units)} at ${placeText(bow.along, units)}`;
}

function timberText({ answer }: Told<'timber'>, units: Units): string {
  if (!answer.ok) return answer.why;
  const { change, warning } = answer.value;
  const moves =
    change.value === 0
      ? 'stays as wide'
      : `${change.value > 0 ? 'swells' : 'shrinks'} by ${figureText({ ...change, value: Math.abs(change.value) }, units)}`;
  return warning ? `${moves}. ${warning}` : moves;
}

function summedText(measured: Told<'gaps'> | Told<'thickness'> | Told<'length'>, units: Units): string {
  const { answer, kind } = measured;
  if (!answer.ok) return answer.why;
  const { count, mean, smallest, largest, off } = answer.value;
  const grain = kind === 'thickness' ? 'fine' : 'rule';
  const text = (value: number) => workedText(value, units, grain);
  const size = off && { ...off, value: Math.abs(off.value) };
  const amiss =
    size === undefined
      ? ''
      : size.value < 1e-6
        ? 'as it should be'
        : `off by ${figureText(size, units, grain)}`;
  if (count === 1) return amiss || figureText(mean, units, grain);
  const spread =
    largest.value - smallest.value < 1e-6
      ? `${figureText(mean, units, grain)} throughout`
      : `mean ${figureText(mean, units, grain)}, from ${text(smallest.value)} to ${text(largest.value)}`;
  return amiss === '' || amiss === 'as it should be' ? spread : `${spread}; ${amiss} at most`;
}
