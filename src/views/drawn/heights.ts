// Heights along the two sides: how far each stands off one plane, drawn larger than the length is.
import { millimetres } from '../../figures/lengths.ts';
import { heightsOf, type Mounts } from '../../rollup/measured/results.ts';
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

type Heights = MeasuredOf<'heights'>;

/** A height off its plane; `row` is the side that it is on. In millimeters. */
type Off = { row: string; name: string; along: number; off: number };

/** Each reading is held against the plane in the middle of its own narrowest layer. The pale band is the tolerance. */
export function heightsDrawn(
  { first, last }: Thing<Heights>,
  mounts: Mounts,
  width: number,
): Drawn | undefined {
  const now = offsOf(last, mounts);
  const was = first !== last ? offsOf(first, mounts) : [];
  if (now.length === 0) return undefined;
  const long = Math.max(...now.map(({ along }) => along));
  const within = last.reading.within ? millimetres(last.reading.within) : 0;
  const most = Math.max(within, ...[...now, ...was].map(({ off }) => Math.abs(off)));
  const factor = factorFor(most, long, 0.035);
  const margin = width === DESK ? 24 : 16;
  const scale = (width - 2 * margin) / (long || 1);
  const reach = Math.ceil(most * scale * factor);
  const deep = 2 * reach + 54;
  const rows = [...new Set(now.map(({ row }) => row))];
  const shapes = rows.flatMap((row, i): Shape[] => {
    const base = i * deep + reach + 24;
    const at = ({ along, off }: Off): Point => [margin + along * scale, base - off * scale * factor];
    const of = (all: readonly Off[]) =>
      all.filter((each) => each.row === row).sort((one, other) => one.along - other.along);
    const [here, there] = [of(now).map(at), of(was).map(at)];
    const band = within * scale * factor;
    const [from, to] = [margin, width - margin];
    return [
      ...(band > 0
        ? [
            outline('zone', [
              [from, base - band],
              [to, base - band],
              [to, base + band],
              [from, base + band],
            ]),
          ]
        : []),
      line('ref', [from, base], [to, base]),
      ...(there.length > 0 ? [line('was', ...there)] : []),
      line('now', ...here),
      ...here.map((point) => dot('dot', point, 3.5)),
      ...of(now).map(({ name, along }) => words('b', [margin + along * scale, base + reach + 20], name)),
    ];
  });
  return stating('off the plane', { width, height: rows.length * deep, shapes, scale, factor });
}

/** Right above left, as from above with the front to the left; other places in rows by their distance across. */
function offsOf(measured: Heights, mounts: Mounts): Off[] {
  const { answer, reading } = measured;
  if (!answer.ok) return [];
  const heights = heightsOf(reading, mounts);
  const { offs } = answer.value.zone;
  const front = Math.min(...heights.map(({ x }) => x));
  return heights
    .map(({ x, y, mount }, i) => ({
      row: mount?.slice(0, 1) ?? String(Math.round(y)),
      name: mount ?? (reading.corners ? String(i + 1) : ''),
      along: x - front,
      across: y,
      off: offs[i] ?? 0,
    }))
    .sort((one, other) => other.across - one.across);
}
