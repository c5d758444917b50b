// Measurements as they were read, in words.
import { inchText, lengthText } from '../figures/length-text.ts';
import type { Length, Units } from '../figures/lengths.ts';
import { shareText } from '../figures/shares.ts';
import type { Thickness } from '../figures/thickness.ts';
import type { Entry } from '../record/record.ts';

export type Reading = NonNullable<Entry['measured']>[number];

/** What was read, in one line with its ±; what follows from it is not said here. */
export function readingText(reading: Reading, units: Units): string {
  const named = 'of' in reading && reading.of && reading.kind !== 'length' ? `${reading.of}: ` : '';
  return `${named}${asRead(reading, units)}${plusMinusText(reading, units)}`;
}

function plusMinusText(reading: Reading, units: Units): string {
  if (reading['plus-minus'] === undefined) return '';
  if (reading.kind === 'level') return `, ± ${reading['plus-minus'].written}`;
  if (reading.kind === 'timber') return `, ± ${shareText(reading['plus-minus'])} moisture`;
  return `, ± ${lengthText(reading['plus-minus'], units)}`;
}

function asRead(reading: Reading, units: Units): string {
  const length = (value: Length) => lengthText(value, units);
  const list = (values: readonly Length[]) => values.map(inchText).join(', ');
  const off = (target: Length | undefined, within: Length | undefined) =>
    (target ? `; should be ${length(target)}` : '') + (within ? `, within ${length(within)}` : '');
  switch (reading.kind) {
    case 'level':
      return `${reading.at ? `${reading.at}: ` : ''}${reading.reading.written}${reading.over ? ` over ${length(reading.over)}` : ''}${reading.within ? `, within ${reading.within.written}` : ''}`;
    case 'diagonals':
      return `sides ${inchText(reading.a)} and ${inchText(reading.b)}, diagonals ${inchText(reading.d1)} and ${inchText(reading.d2)}${off(undefined, reading.within)}`;
    case 'heights':
      return `${(reading.points ?? []).map(({ mount, z }) => `${mount ?? ''} ${inchText(z)}`.trim()).join(', ')}${list(reading.corners ?? [])}${off(undefined, reading.within)}`;
    case 'straight':
      return `along ${length(reading.length)}: ${list(reading.offsets)}${off(undefined, reading.within)}`;
    case 'gaps':
      return `${reading.where}: ${list(reading.readings)}${off(reading.target, reading.within)}`;
    case 'timber':
      return `${reading.species}, ${length(reading.width)} wide, ${reading.grain}, from ${shareText(reading['moisture-from'])} to ${shareText(reading['moisture-to'])} moisture`;
    case 'thickness':
      return (
        reading.readings.map((each) => thicknessText(each, units)).join(', ') +
        (reading.target ? `; should be ${thicknessText(reading.target, units)}` : '') +
        off(undefined, reading.within)
      );
    case 'length':
      return `${reading.of ? `${reading.of}: ` : ''}${list(reading.readings)}${off(reading.target, reading.within)}`;
  }
}

/** A thickness; a gauge always with its system. */
export function thicknessText({ length, gauge }: Thickness, units: Units): string {
  return gauge
    ? `${gauge.number} ga (${gauge.system}, ${lengthText(length, units)})`
    : lengthText(length, units);
}
