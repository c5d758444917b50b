// What levels said: the brackets of the mounts along their rails, or other places one under the other. Each slope is
// turned to face the reader and drawn steeper than it is; lengths are not to scale.

import type { Mounts } from '../../rollup/measured/results.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import { slopeText } from '../measured/figure-text.ts';
import { box, DESK, type Drawn, line, type Point, type Shape, stating, words } from './shapes.ts';

type LevelThing = Thing<MeasuredOf<'level'>>;

/** Slopes are drawn no steeper than this, in degrees. */
const STEEPEST = 18;

/** How many times steeper slopes are drawn than they are. */
export function steepnessFor(things: readonly LevelThing[]): number {
  const steepest = Math.max(0, ...things.flatMap(({ readings }) => readings.map(degreesOf).map(Math.abs)));
  return STEEP.findLast((factor) => factor * steepest <= STEEPEST) ?? 1;
}

const STEEP = [1, 2, 3, 5, 10, 20, 30, 50];

/** Whether a place is a body mount. */
export const atMount = ({ name }: LevelThing): boolean => /^[LR][1-9]\d?$/.test(name);

/** Brackets by their mounts: the right rail above, the left one below, front to the left. */
export function bracketsDrawn(things: readonly LevelThing[], mounts: Mounts, width: number): Drawn {
  const desk = width === DESK;
  const factor = steepnessFor(things);
  const half = desk ? 44 : 22;
  const at = stations(things, mounts, width, half);
  const deep = desk ? 118 : 112;
  const shapes: Shape[] = [];
  const rails = ['R', 'L'].filter((side) => things.some(({ name }) => name.startsWith(side)));
  rails.forEach((side, i) => {
    const above = side === 'R';
    const top = i * (deep + 20);
    const [label, value, slope, rail] = above ? [14, 30, 62, 98] : [116, 132, 78, 34];
    shapes.push(box('shape', [4, top + rail], width - 8, 8));
    shapes.push(
      words('q', [4, top + rail + (above ? 24 : -10)], above ? 'right rail' : 'left rail', 'start'),
    );
    for (const thing of things.filter(({ name }) => name.startsWith(side))) {
      const x = at(thing.name);
      const degrees = degreesOf(thing.last);
      shapes.push(box('thin', [x - 7, top + rail + (above ? -11 : 8)], 14, 11));
      shapes.push(...slopes(thing, [x, top + slope], half, factor));
      if (desk) {
        shapes.push(words('b', [x - 4, top + (above ? label + 8 : label)], thing.name, 'end'));
        shapes.push(words('', [x + 4, top + (above ? label + 8 : label)], slopeText(degrees), 'start'));
      } else {
        shapes.push(words('b', [x, top + label], thing.name));
        shapes.push(words('', [x, top + value], slopeText(degrees)));
      }
    }
  });
  const height = rails.length * (deep + 20) + (rails.includes('L') ? 4 : -10);
  return stating('slope', { width, height, shapes, scale: 1, factor });
}

/** Places one under the other, each with its words: beside its slope, on a phone above it. */
export function slopesDrawn(things: readonly LevelThing[], width: number): Drawn {
  const desk = width === DESK;
  const factor = steepnessFor(things);
  const half = desk ? 110 : 120;
  const steepest = Math.max(0, ...things.flatMap(({ readings }) => readings.map(degreesOf).map(Math.abs)));
  const rise = Math.max(10, half * Math.sin((steepest * factor * Math.PI) / 180));
  const deep = Math.ceil(2 * rise) + (desk ? 22 : 46);
  const shapes = things.flatMap((thing, i) => {
    const { first, last } = thing;
    const middle = i * deep + rise + (desk ? 11 : 34);
    const beside = desk ? middle + 4 : i * deep + 16;
    const was = first !== last ? `was ${slopeText(degreesOf(first))}, now ` : '';
    return [
      words('b', [0, beside], thing.name || 'level', 'start'),
      words('', [width, beside], `${was}${slopeText(degreesOf(last))}`, 'end'),
      ...slopes(thing, [desk ? 440 : width / 2, middle], half, factor),
    ];
  });
  return stating('slope', { width, height: things.length * deep, shapes, scale: 1, factor });
}

const degreesOf = ({ reading }: MeasuredOf<'level'>): number => reading.reading.degrees;

/** Level as a fine line, as found in dashes, as last read in ink. Up to the right counts above zero. */
function slopes({ first, last }: LevelThing, at: Point, half: number, factor: number): Shape[] {
  const slope = (look: string, degrees: number): Shape => {
    const angle = (degrees * factor * Math.PI) / 180;
    const [dx, dy] = [half * Math.cos(angle), half * Math.sin(angle)];
    return line(look, [at[0] - dx, at[1] + dy], [at[0] + dx, at[1] - dy]);
  };
  return [
    line('ref', [at[0] - half - 6, at[1]], [at[0] + half + 6, at[1]]),
    ...(first !== last ? [slope('was', degreesOf(first))] : []),
    slope('now', degreesOf(last)),
  ];
}

/** Where along the drawing each mount stands: as the record places it, else evenly by number. */
function stations(
  things: readonly LevelThing[],
  mounts: Mounts,
  width: number,
  half: number,
): (mount: string) => number {
  const numbers = things.map(({ name }) => Number(name.slice(1)));
  const known = things.every(({ name }) => mounts.has(name));
  const along = (mount: string) => (known ? (mounts.get(mount)?.x ?? 0) : Number(mount.slice(1)));
  const all = known ? things.map(({ name }) => along(name)) : numbers;
  const [from, to] = [Math.min(...all), Math.max(...all)];
  const margin = half + 12;
  return (mount) => margin + ((along(mount) - from) / (to - from || 1)) * (width - 2 * margin);
}
