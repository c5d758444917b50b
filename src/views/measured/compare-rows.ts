// The figures of a reading, each with its name, for a column of a table.
import { inchText, lengthText, workedText } from '../../figures/length-text.ts';
import { type Length, millimetres, type Units } from '../../figures/lengths.ts';
import { shareText } from '../../figures/shares.ts';
import type { Figure } from '../../measure/figure.ts';
import { gaugesNear } from '../../measure/gauges.ts';
import type { Spot } from '../../measure/straight.ts';
import type { Measured, MeasuredOf } from '../../rollup/measured.ts';
import { thicknessText } from '../readings.ts';
import { degreesText, figureText, placeText } from './figure-text.ts';

/** One figure of a reading with its name. */
export type Row = readonly [name: string, text: string];

export function figuresOf(measured: Measured, units: Units): Row[] {
  if (!measured.answer.ok) return [['Answer', measured.answer.why]];
  switch (measured.kind) {
    case 'level':
      return [];
    case 'diagonals':
      return diagonalRows(measured, units);
    case 'heights':
      return heightRows(measured, units);
    case 'straight':
      return straightRows(measured, units);
    case 'timber':
      return timberRows(measured, units);
    default:
      return summedRows(measured, units);
  }
}

const size = (figure: Figure): Figure => ({ ...figure, value: Math.abs(figure.value) });

function diagonalRows({ reading, answer }: MeasuredOf<'diagonals'>, units: Units): Row[] {
  if (!answer.ok) return [];
  const [p, q, r, s] = reading.corners ?? ['1', '2', '3', '4'];
  const length = (written: Length | undefined) => (written ? lengthText(written, units) : 'not read');
  const { diagonals, outOfSquare, rack, amiss, corners } = answer.value;
  return [
    [`Side ${p} to ${q}`, length(reading.a)],
    [`Side ${q} to ${r}`, length(reading.b)],
    [`Side ${r} to ${s}`, length(reading.a2)],
    [`Side ${s} to ${p}`, length(reading.b2)],
    [`Diagonal ${p} to ${r}`, length(reading.d1)],
    [`Diagonal ${q} to ${s}`, length(reading.d2)],
    ['Diagonals differ by', figureText(size(diagonals.off), units)],
    ['Out of square', degreesText(size(outOfSquare))],
    [`Rack over ${p} to ${q}`, figureText(size(rack.overA), units)],
    [`Rack over ${q} to ${r}`, figureText(size(rack.overB), units)],
    [
      'Corners off 90°',
      corners ? corners.map((corner) => degreesText({ value: corner.value })).join(', ') : '',
    ],
    ['Diagonals long for the sides by', figureText(amiss, units)],
  ];
}

function heightRows({ answer }: MeasuredOf<'heights'>, units: Units): Row[] {
  if (!answer.ok) return [];
  const { furthest, zone, best, twist } = answer.value;
  return [
    ['Furthest from one plane', figureText(furthest, units)],
    ['All within a layer of', figureText(zone.width, units)],
    ['Range about the best plane, by least squares', figureText(best.range, units)],
    ['Twist', twist ? figureText(size(twist), units) : ''],
  ];
}

function straightRows({ reading, answer }: MeasuredOf<'straight'>, units: Units): Row[] {
  if (!answer.ok) return [];
  const { zone, leastSquares, bow, high, low } = answer.value;
  const places = (spots: readonly Spot[]) => spots.map(({ along }) => placeText(along, units)).join('; ');
  return [
    ['Offsets, evenly along', listText(reading.offsets, units)],
    ['All within a strip of', figureText(zone.width, units)],
    ['Range about the best line, by least squares', figureText(leastSquares.range, units)],
    ['Bow from end to end', `${figureText(size(bow), units)} at ${placeText(bow.along, units)}`],
    ['High at', places(high)],
    ['Low at', places(low)],
  ];
}

function timberRows({ reading, answer }: MeasuredOf<'timber'>, units: Units): Row[] {
  if (!answer.ok) return [];
  const { change, width, rule, warning } = answer.value;
  return [
    ['Piece', `${reading.species}, ${reading.grain}, ${lengthText(reading.width, units)} wide`],
    ['Moisture', `${shareText(reading['moisture-from'])} to ${shareText(reading['moisture-to'])}`],
    [change.value < 0 ? 'Shrinks by' : 'Swells by', figureText(size(change), units)],
    ['Comes to', workedText(width.value, units)],
    ['By', `${rule.by} ${Number(rule.value.toPrecision(3))}. ${rule.source}`],
    ['Warning', warning ?? ''],
  ];
}

function summedRows(
  { kind, reading, answer }: MeasuredOf<'gaps'> | MeasuredOf<'thickness'> | MeasuredOf<'length'>,
  units: Units,
): Row[] {
  if (!answer.ok) return [];
  const grain = kind === 'thickness' ? 'fine' : 'rule';
  const text = (figure: Figure) => figureText(figure, units, grain);
  const { mean, smallest, largest, spread, deviation, off, count } = answer.value;
  const { taper } = answer.value as { taper?: Figure };
  const read =
    kind === 'thickness'
      ? reading.readings.map((each) => inchText(each.length)).join(', ')
      : listText(reading.readings, units);
  const { target } = reading;
  const aim = target && ('length' in target ? thicknessText(target, units) : lengthText(target, units));
  return [
    ['Readings', read],
    ['Should be', aim ?? ''],
    ...(count > 1
      ? ([
          ['Mean', text(mean)],
          ['From', workedText(smallest.value, units, grain)],
          ['To', workedText(largest.value, units, grain)],
          ['Spread', text(spread)],
          ['Standard deviation', deviation === null ? '' : workedText(deviation, units, grain)],
          ['Taper, beginning to end', taper ? text(taper) : ''],
        ] as const)
      : []),
    ['Furthest off', off ? text(size(off)) : ''],
    ['Nearest gauge', kind === 'thickness' ? gaugeText(reading, mean.value) : ''],
  ];
}

/** A gauge has no meaning without its system: the one that the target was written in. */
function gaugeText({ target }: MeasuredOf<'thickness'>['reading'], mean: number): string {
  const near = gaugesNear(mean).find(({ system }) => system === target?.gauge?.system);
  return near ? `${near.number} ga (${near.system})` : '';
}

const listText = (lengths: readonly Length[], units: Units): string =>
  units === 'inch'
    ? lengths.map(inchText).join(', ')
    : `${lengths.map((length) => String(Number(millimetres(length).toFixed(1)))).join(', ')} mm`;
