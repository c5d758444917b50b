// Each height of a reading beside that of the first one, and what would bring it up to the highest.
import { workedText } from '../../figures/length-text.ts';
import type { CarRecord } from '../../record/record.ts';
import { mountsOf } from '../../rollup/measured/mounts.ts';
import { heightsOf } from '../../rollup/measured/results.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { capital } from '../parts.ts';
import { type Plain, plainTable } from './plain-table.ts';

export function pointTable({ first, last }: Thing<MeasuredOf<'heights'>>, record: CarRecord): Plain {
  const mounts = mountsOf(record);
  const heights = (measured: MeasuredOf<'heights'>) => heightsOf(measured.reading, mounts);
  const found = first !== last ? heights(first) : [];
  const text = (mm: number | undefined) => (mm === undefined ? '' : workedText(mm, record.units));
  const flat = last.answer.ok ? last.answer.value : undefined;
  const rows = heights(last).map((height, i) => {
    const was = found.find((each) => each.x === height.x && each.y === height.y);
    return [
      height.mount ?? String(i + 1),
      text(was?.z),
      text(height.z),
      text(flat?.zone.offs[i]),
      text(flat?.shims[i]),
    ];
  });
  const now = `${capital(last.state)}, ${datedText(last.day)}`;
  return plainTable(
    'Each height',
    ['Place', capital(first.state), now, 'Off one plane', 'To the highest'],
    rows,
  );
}
