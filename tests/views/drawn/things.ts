// Things measured, made from lines as a writer would write them, for the tests of drawings.

import { mountsOf } from '../../../src/rollup/measured/mounts.ts';
import { type Kind, type MeasuredOf, measurementsOf, type Thing } from '../../../src/rollup/measured.ts';
import type { Drawn, Point, Shape } from '../../../src/views/drawn/shapes.ts';
import { recordOf } from '../../rollup/records.ts';

/** All things of one kind that these lines are readings of; each line says its state. */
export function thingsOf<K extends Kind>(kind: K, ...lines: string[]): Thing<MeasuredOf<K>>[] {
  return read(kind, lines).things as Thing<MeasuredOf<K>>[];
}

export function thingOf<K extends Kind>(kind: K, ...lines: string[]): Thing<MeasuredOf<K>> {
  const [thing, ...others] = thingsOf(kind, ...lines);
  if (!thing || others.length > 0) throw new Error('these lines are not of one thing');
  return thing;
}

/** The places of mounts that these heights tell. */
export const mountsIn = (...lines: string[]) => read('heights', lines).mounts;

function read(kind: Kind, lines: readonly string[]) {
  const record = recordOf({
    'log/2025-03-03.md': `---\nmeasured:\n${lines.map((line) => `  - { kind: ${kind}, part: frame, ${line} }\n`).join('')}---\n`,
  });
  return { things: measurementsOf(record).things, mounts: mountsOf(record) };
}

type Line = Extract<Shape, { is: 'line' }>;
type Box = Extract<Shape, { is: 'box' }>;

export const linesOf = (drawn: Drawn, look: string): Line[] =>
  drawn.shapes.filter((shape): shape is Line => shape.is === 'line' && shape.look === look);
export const boxesOf = (drawn: Drawn, look: string): Box[] =>
  drawn.shapes.filter((shape): shape is Box => shape.is === 'box' && shape.look === look);

/** The points of the only line of a look. */
export function pointsOf(drawn: Drawn, look: string): readonly Point[] {
  const [only, ...others] = linesOf(drawn, look);
  if (!only || others.length > 0) throw new Error(`${others.length + 1} lines look like ${look}`);
  return only.points;
}

export const textsOf = ({ shapes }: Drawn): string[] =>
  shapes.flatMap((shape) => (shape.is === 'text' ? [shape.text] : []));

/** What lies beyond the edges of the drawing; words count as seven units a letter. */
export function beyond({ width, height, shapes }: Drawn): string[] {
  return shapes.flatMap((shape) => {
    const points: Point[] =
      shape.is === 'line'
        ? [...shape.points]
        : shape.is === 'box'
          ? [shape.at, [shape.at[0] + shape.width, shape.at[1] + shape.height]]
          : [shape.at];
    if (shape.is === 'text') {
      const long = shape.text.length * 7;
      const from = shape.at[0] - (shape.anchor === 'end' ? long : shape.anchor === 'middle' ? long / 2 : 0);
      points.push([from, shape.at[1]], [from + long, shape.at[1]]);
    }
    const out = points.some(([x, y]) => x < -1 || x > width + 1 || y < -1 || y > height + 1);
    return out ? [`${shape.is} ${shape.look} ${shape.is === 'text' ? shape.text : points.join(' ')}`] : [];
  });
}
