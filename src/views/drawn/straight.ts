// A line that should be straight, along its length to scale, with what it stands off drawn larger.

import { millimetres } from '../../figures/lengths.ts';
import type { Straight } from '../../measure/straight.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import {
  DESK,
  type Drawn,
  dot,
  factorFor,
  line,
  outline,
  type Point,
  type Shape,
  stating,
  words,
} from './shapes.ts';

type StraightThing = Thing<MeasuredOf<'straight'>>;

/** Words at the drawing: at the furthest place as found and as last read, and at both ends of the length. */
export type StraightWords = { was: string; now: string; ends: readonly [string, string] };

/**
 * Places are off the line through the ends; the pale strip is the narrowest that holds the last reading. Filled dots
 * touch its upper edge, open ones its lower.
 */
export function straightDrawn(
  { first, last }: StraightThing,
  said: StraightWords,
  width: number,
): Drawn | undefined {
  if (!last.answer.ok) return undefined;
  const length = millimetres(last.reading.length);
  const now = lineOf(last.reading, last.answer.value);
  const was = first !== last && first.answer.ok ? lineOf(first.reading, first.answer.value) : undefined;
  const all = [...now.places, ...now.strip, ...(was?.places ?? [])].map(([, off]) => off);
  const [up, down] = [Math.max(0, ...all), Math.min(0, ...all)];
  const factor = factorFor(Math.max(up, -down), length, 0.06);
  const margin = width === DESK ? 16 : 10;
  const scale = (width - 2 * margin) / length;
  const base = 26 + up * scale * factor;
  const foot = base - down * scale * factor;
  const at = ([along, off]: Point): Point => [margin + along * scale, base - off * scale * factor];
  const shapes: Shape[] = [
    outline('zone', now.strip.map(at)),
    line('ref', at([0, 0]), at([length, 0])),
    ...now.places.map(([along]) =>
      line('tick', [at([along, 0])[0], base - 3], [at([along, 0])[0], base + 3]),
    ),
    ...(was ? [line('was', ...was.places.map(at))] : []),
    line('now', ...now.places.map(at)),
    ...now.low.map((place) => dot('open', at(place), 4)),
    ...now.high.map((place) => dot('dot', at(place), 4)),
  ];
  const [wasFar, nowFar] = [was && furthest(was.places), furthest(now.places)];
  if (wasFar) shapes.push(besideCurve('q', at(wasFar), said.was, wasFar[1] >= 0, width));
  // With both drawn, the last reading is named on the other side of the string, clear of the line as found.
  const nowUp = wasFar ? wasFar[1] < 0 : nowFar[1] >= 0;
  const nowAt = at(nowFar);
  const clear: Point = wasFar
    ? [nowAt[0], nowUp ? Math.min(base, nowAt[1]) : Math.max(base, nowAt[1])]
    : nowAt;
  shapes.push(besideCurve('', clear, said.now, nowUp, width));
  const height = Math.ceil(foot + 44);
  shapes.push(words('q', [margin, height - 6], said.ends[0], 'start'));
  shapes.push(words('q', [width - margin, height - 6], said.ends[1], 'end'));
  return stating('off the string', { width, height, shapes, scale, factor });
}

type Line = { places: Point[]; strip: Point[]; high: Point[]; low: Point[] };

/** A reading laid so that its ends lie on the string, with its strip and the spots that touch it. In millimeters. */
function lineOf({ length, offsets }: MeasuredOf<'straight'>['reading'], straight: Straight): Line {
  const step = millimetres(length) / (offsets.length - 1);
  const offs = offsets.map(millimetres);
  const [first, last] = [offs[0] ?? 0, offs.at(-1) ?? 0];
  const whole = millimetres(length);
  const chord = (along: number) => first + ((last - first) * along) / whole;
  const places = offs.map((off, i): Point => [i * step, off - chord(i * step)]);
  const near = (along: number) => places[Math.round(along / step)] ?? ([along, 0] as const);
  const { zone, high, low } = straight;
  const top = high[0] && near(high[0].along);
  const slope = zone.slope - (last - first) / whole;
  const edge = (along: number, below: number): Point => [
    along,
    (top?.[1] ?? 0) + slope * (along - (top?.[0] ?? 0)) - below,
  ];
  return {
    places,
    strip: [edge(0, 0), edge(whole, 0), edge(whole, zone.width.value), edge(0, zone.width.value)],
    high: high.map(({ along }) => near(along)),
    low: low.map(({ along }) => near(along)),
  };
}

const furthest = (places: readonly Point[]): Point =>
  places.reduce((most, each) => (Math.abs(each[1]) > Math.abs(most[1]) ? each : most), places[0] ?? [0, 0]);

function besideCurve(look: string, [x, y]: Point, text: string, above: boolean, width: number): Shape {
  const anchor = x < width * 0.25 ? 'start' : x > width * 0.75 ? 'end' : 'middle';
  return words(look, [x, above ? y - 10 : y + 20], text, anchor);
}
