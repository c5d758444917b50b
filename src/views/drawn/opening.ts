// An opening or a bay of the frame from above, with its diagonals: to scale, what is out of square drawn larger.
import { inchText } from '../../figures/length-text.ts';
import { type Length, millimetres, type Units } from '../../figures/lengths.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import { crossMembers, FRONT, frameOutline, middle, REAR } from './frame-outline.ts';
import { offAt, type Round, roundOf, UNIT } from './opening-round.ts';
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

type Diagonals = MeasuredOf<'diagonals'>;

/** Corners going round: front left, rear left, rear right, front right where they are named by mounts. */
export function openingDrawn(
  { first, last }: Thing<Diagonals>,
  units: Units,
  width: number,
): Drawn | undefined {
  if (!last.answer.ok) return undefined;
  const now = roundOf(last.reading);
  const was = first !== last && first.answer.ok ? roundOf(first.reading) : undefined;
  const desk = width === DESK;
  const [along, across] = [now.along, now.across];
  const deviation = Math.max(
    ...[now, ...(was ? [was] : [])].flatMap(({ offs }) => offs.flat().map(Math.abs)),
  );
  const factor = factorFor(deviation, Math.max(along, across), 0.03);
  const framed = now.byMounts;
  const room = framed ? width - 16 : desk ? 430 : 236;
  const scale = framed
    ? room / (along * (1 + FRONT + REAR + 0.06))
    : Math.min(room / along, (desk ? 250 : 220) / across);
  const top = desk ? 40 : 30;
  const left = framed ? 8 + along * scale * (FRONT + 0.03) : 48;
  /** Along and across as shares of the opening; the left side of the car lies below. */
  const placed =
    ({ offs }: Round) =>
    (u: number, v: number): Point => {
      const [x, y] = offAt(offs, u, v);
      return [left + (along * u + factor * x) * scale, top + (across * (1 - v) - factor * y) * scale];
    };
  const corners = (round: Round) => UNIT.map(([u, v]) => placed(round)(u, v));
  const shapes: Shape[] = [];
  if (framed) {
    const at = placed(now);
    shapes.push(middle(at), ...crossMembers(at));
    if (was) shapes.push(...frameOutline(placed(was), 'was'));
    shapes.push(...frameOutline(at, 'shape'));
  } else {
    if (was) shapes.push(outline('was', corners(was)));
    shapes.push(outline('shape', corners(now)));
  }
  if (was) shapes.push(...crossed('diag was', corners(was)));
  shapes.push(...crossed('diag', corners(now)), ...corners(now).map((at) => dot('dot', at)));
  shapes.push(...named(now, corners(now), framed));
  if (desk) shapes.push(...lengths(last.reading, now, corners(now), units));
  if (framed) shapes.push(words('', placed(now)(-FRONT, 1), 'front', 'start'));
  return stating('out of square', {
    width,
    height: Math.ceil(top + across * scale + (desk ? 40 : 30)),
    shapes,
    scale,
    factor,
  });
}

function crossed(look: string, [p, q, r, s]: readonly Point[]): Shape[] {
  return p && q && r && s ? [line(look, p, r), line(look, q, s)] : [];
}

function named({ names }: Round, corners: readonly Point[], framed: boolean): Shape[] {
  return corners.map(([x, y], i) => {
    const below = i < 2;
    const away = framed ? 0 : i === 1 || i === 2 ? 12 : -12;
    return words('b', [x + away, below ? y + (framed ? 28 : 16) : y - (framed ? 18 : 8)], names[i] ?? '');
  });
}

/** Diagonals named at a quarter of their length, sides at their middles. */
function lengths(
  { d1, d2 }: Diagonals['reading'],
  { order }: Round,
  [p, q, r, s]: readonly Point[],
  units: Units,
): Shape[] {
  if (!p || !q || !r || !s) return [];
  const turned = (order[0] ?? 0) % 2 === 1;
  const text = (length: Length) =>
    units === 'inch' ? inchText(length) : `${Math.round(millimetres(length))} mm`;
  const at = ([x, y]: Point, [toX, toY]: Point): Point => [x + (toX - x) * 0.27, y + (toY - y) * 0.27 + 4];
  return [words('', at(p, r), text(turned ? d2 : d1)), words('', at(s, q), text(turned ? d1 : d2))];
}
