// The drawings of measurements with their words: a title and a description for who can't see them, and a caption that
// states how much larger the deviations are drawn.
import { inchText } from '../../figures/length-text.ts';
import { type Length, millimetres, type Units } from '../../figures/lengths.ts';
import type { CarRecord } from '../../record/record.ts';
import { mountsOf } from '../../rollup/measured/mounts.ts';
import type { Measured, MeasuredOf, Thing } from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { gapsDrawn } from '../drawn/gaps.ts';
import { heightsDrawn } from '../drawn/heights.ts';
import { atMount, bracketsDrawn, slopesDrawn } from '../drawn/levels.ts';
import { openingDrawn } from '../drawn/opening.ts';
import { DESK, type Drawn, PHONE } from '../drawn/shapes.ts';
import { straightDrawn } from '../drawn/straight.ts';
import { namesOf } from '../names.ts';
import { placeText } from './figure-text.ts';
import { resultText } from './result-text.ts';
import { shortText } from './short-text.ts';

/** A drawing for a desk and one for a phone. `larger` states the exaggeration in words, `caption` says the rest. */
export type Picture = {
  desk: Drawn;
  phone: Drawn;
  title: string;
  description: string;
  larger: string;
  caption: string;
};

type Of<K extends Measured['kind']> = Thing<MeasuredOf<K>>;

export function openingPicture(thing: Of<'diagonals'>, { units }: CarRecord): Picture | undefined {
  const [desk, phone] = [openingDrawn(thing, units, DESK), openingDrawn(thing, units, PHONE)];
  if (!desk || !phone) return undefined;
  const { corners } = thing.last.reading;
  const what = nameText(thing, 'The opening');
  return {
    desk,
    phone,
    title: `${what} from above, with its diagonals`,
    description: toldOf(thing, units),
    larger: largerText('What is out of square is drawn', desk.factor),
    caption: `${what} from above, to scale. ${corners ? '' : 'Corners are numbered from where the first side begins. '}${inkText(thing)}`,
  };
}

export function straightPicture(thing: Of<'straight'>, { units }: CarRecord): Picture | undefined {
  const { first, last } = thing;
  const said = {
    was: `${first.state}: ${shortText(first, units)}`,
    now: `${last.state}: ${shortText(last, units)}`,
    ends: ['0', placeText(millimetres(last.reading.length), units)] as const,
  };
  const [desk, phone] = [straightDrawn(thing, said, DESK), straightDrawn(thing, said, PHONE)];
  if (!desk || !phone) return undefined;
  const what = nameText(thing, 'The line');
  return {
    desk,
    phone,
    title: `${what} along its length, with what it stands off a string from end to end`,
    description: toldOf(thing, units),
    larger: largerText('What it stands off is drawn', desk.factor),
    caption: `${what}, its length to scale; the fine line is a string from end to end. The pale strip is the narrowest that holds the last reading: filled dots touch its upper edge, open ones its lower. ${inkText(thing)}`,
  };
}

export function gapsPicture(things: readonly Of<'gaps'>[], record: CarRecord): Picture | undefined {
  const [first] = things;
  if (!first || things.some(({ last }) => last.reading.readings.length < 2)) return undefined;
  const { units } = record;
  const names = namesOf(record);
  const twoParts = new Set(things.map(({ part }) => part)).size > 1;
  const sides = things.map((thing) => ({
    thing,
    title: twoParts || things.length === 1 ? names.part(thing.part) : nameText(thing, ''),
  }));
  const text = (length: Length) =>
    units === 'inch' ? inchText(length).replace(/ in$/, '') : String(Number(millimetres(length).toFixed(1)));
  const [desk, phone] = [gapsDrawn(sides, text, DESK), gapsDrawn(sides, text, PHONE)];
  const unit = units === 'inch' ? 'inches' : 'millimeters';
  const larger =
    desk.factor === undefined
      ? 'Widths are drawn to one scale; the length isn’t to scale, since nobody wrote it down.'
      : largerText('Widths are drawn', desk.factor);
  return {
    desk,
    phone,
    title: `${things.length > 1 ? 'The gap left and right' : 'The gap'}: ${first.name}`,
    description: things.map((thing, i) => `${sides[i]?.title}. ${toldOf(thing, units)}`).join(' '),
    larger,
    caption: `The gap from its fixed edge, the heavy line, as its readings follow each other; in ${unit}.${first.last.reading.target ? ' Dotted: what it should be.' : ''} ${inkText(...things)}`,
  };
}

export function heightsPicture(thing: Of<'heights'>, record: CarRecord): Picture | undefined {
  const mounts = mountsOf(record);
  const [desk, phone] = [heightsDrawn(thing, mounts, DESK), heightsDrawn(thing, mounts, PHONE)];
  if (!desk || !phone) return undefined;
  const rows = thing.last.reading.corners
    ? 'Corners are numbered as they were read'
    : 'The right side above, the left below, front to the left';
  return {
    desk,
    phone,
    title: `${nameText(thing, 'Heights')}: how far each height stands off one plane`,
    description: toldOf(thing, record.units),
    larger: largerText('What a height stands off the plane is drawn', desk.factor),
    caption: `${rows}${thing.last.reading.corners ? '' : '; lengths to scale'}. The fine line is the plane nearest to all heights of a reading.${thing.last.reading.within ? ' The pale band is the tolerance.' : ''} ${inkText(thing)}`,
  };
}

/** Brackets of the mounts in one drawing along their rails, other places in another. */
export function levelsPicture(things: readonly Of<'level'>[], record: CarRecord): Picture | undefined {
  const [first] = things;
  if (!first) return undefined;
  const brackets = things.every(atMount);
  const mounts = mountsOf(record);
  const drawn = (width: number) =>
    brackets ? bracketsDrawn(things, mounts, width) : slopesDrawn(things, width);
  const desk = drawn(DESK);
  const dashed = things.some(({ first, last }) => first !== last);
  return {
    desk,
    phone: drawn(PHONE),
    title: brackets ? 'The brackets along both rails, each with its slope' : 'Places with their slopes',
    description: things
      .map(({ name, last }) => `${name || 'As read'}: ${resultText(last, record.units)}.`)
      .join(' '),
    larger: `Slopes are drawn ${desk.factor} times steeper than they are,`,
    caption: `each turned to face you, up to the right counting above zero; the broken fine line is level.${brackets ? ' Front to the left.' : ''}${dashed ? ' Dashed: as found. Ink: as last read.' : ''}`,
  };
}

/** The name of a thing with a capital, or the words given where it has none. */
export function nameText({ name }: { name: string }, none: string): string {
  return name === '' ? none : name.replace(/^./u, (first) => first.toUpperCase());
}

function toldOf({ first, last }: Thing, units: Units): string {
  const told = (each: Measured) => `${datedText(each.day)}, ${each.state}: ${resultText(each, units)}.`;
  return first !== last ? `${told(first)} ${told(last)}` : told(last);
}

/** `Dashed: before, March 5, 2025. Ink: after, March 10, 2025.` Of several things without their days. */
function inkText(...things: Thing[]): string {
  const [{ first, last }] = things as [Thing];
  const day = (each: Measured) => (things.length > 1 ? each.state : `${each.state}, ${datedText(each.day)}`);
  return first !== last ? `Dashed: ${day(first)}. Ink: ${day(last)}.` : `Read: ${day(last)}.`;
}

function largerText(what: string, factor: number | undefined): string {
  return factor === undefined || factor === 1 ? '' : `${what} ${factor} times too large.`;
}
