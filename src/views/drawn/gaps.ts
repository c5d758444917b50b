// A gap along its length, or the same gap left and right: its width drawn larger, both sides from their outer edge.
import { type Length, millimetres } from '../../figures/lengths.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import {
  DESK,
  type Drawn,
  factorFor,
  line,
  outline,
  type Point,
  type Shape,
  stating,
  words,
} from './shapes.ts';

type GapThing = Thing<MeasuredOf<'gaps'>>;

/** One side: its heading, and how a width is written beside it. */
export type GapSide = { thing: GapThing; title: string };

/** Without a length the readings stand evenly and the widths to a scale of their own: then there is no factor. */
export function gapsDrawn(sides: readonly GapSide[], text: (length: Length) => string, width: number): Drawn {
  const desk = width === DESK;
  const tall = desk ? 230 : 210;
  const top = 58;
  const lengths = sides.flatMap(({ thing }) =>
    thing.last.reading.length ? [millimetres(thing.last.reading.length)] : [],
  );
  const long = lengths.length === sides.length ? Math.max(...lengths) : undefined;
  const widest = Math.max(0, ...sides.flatMap(({ thing }) => widthsOf(thing)));
  const scale = tall / (long ?? tall);
  const factor = long === undefined ? undefined : factorFor(widest, long, 0.14);
  const wide = factor === undefined ? 30 / (widest || 1) : scale * factor;
  const shapes = sides.flatMap(({ thing, title }, i) => {
    const right = i === 1;
    const from = desk ? (right ? 500 : 40) : right ? width - 14 : 14;
    const own = thing.last.reading.length;
    const height = own && long ? (tall * millimetres(own)) / long : tall;
    return sideDrawn(
      { thing, title },
      { edge: from, inward: right ? -1 : 1, top, tall: height, wide, desk },
      text,
    );
  });
  return stating('width', {
    width,
    height: top + tall + 34,
    shapes,
    scale,
    ...(factor !== undefined && { factor }),
  });
}

type Laid = { edge: number; inward: 1 | -1; top: number; tall: number; wide: number; desk: boolean };

function sideDrawn(
  { thing: { first, last }, title }: GapSide,
  { edge, inward, top, tall, wide, desk }: Laid,
  text: (length: Length) => string,
): Shape[] {
  const anchor = inward === 1 ? 'start' : 'end';
  const was = first !== last ? first : undefined;
  const at = (x: number, share: number): Point => [edge + inward * x, top + share * tall];
  const edgeOf = ({ reading }: MeasuredOf<'gaps'>): Point[] =>
    reading.readings.map((gap, i) => at(millimetres(gap) * wide, shareAt(i, reading.readings.length)));
  const now = edgeOf(last);
  const { target } = last.reading;
  const most = Math.max(
    ...[last, ...(was ? [was] : [])].flatMap(({ reading }) => reading.readings.map(millimetres)),
  );
  const column = most * wide + 10;
  const second = column + (desk ? 62 : 48);
  const labels = (reading: MeasuredOf<'gaps'>['reading'], look: string, x: number): Shape[] =>
    reading.readings.map((gap, i) => {
      const [, y] = at(0, shareAt(i, reading.readings.length));
      return words(look, [at(x, 0)[0], y + 4], text(gap), anchor);
    });
  return [
    words('b', [at(desk ? 0 : -10, 0)[0], 16], title, anchor),
    words('', [at(column, 0)[0], top - 18], last.state, anchor),
    ...(was ? [words('q', [at(second, 0)[0], top - 18], was.state, anchor)] : []),
    outline('zone', [at(0, 0), ...now, at(0, 1)]),
    ...(target ? [line('aim', at(millimetres(target) * wide, 0), at(millimetres(target) * wide, 1))] : []),
    ...(was ? [line('was', ...edgeOf(was))] : []),
    line('now', ...now),
    line('wall', at(0, -0.03), at(0, 1.03)),
    ...labels(last.reading, '', column),
    ...(was ? labels(was.reading, 'q', second) : []),
    ...(target ? [words('q', [at(0, 0)[0], top + tall + 24], `should be ${text(target)}`, anchor)] : []),
  ];
}

const shareAt = (i: number, count: number): number => (count === 1 ? 0.5 : i / (count - 1));

function widthsOf({ first, last }: GapThing): number[] {
  return [first, last].flatMap(({ reading }) => reading.readings.map(millimetres));
}
