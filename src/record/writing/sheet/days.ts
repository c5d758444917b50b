// Days as sheets write them: the order of day, month and year is said once for a sheet, never guessed.
import { type Day, isDay, readDay } from '../../../figures/days.ts';
import type { Reading } from '../../../figures/reading.ts';

/** The order of a sheet’s days, such as `m/d/y` or `d.m.y`; nothing when it isn’t one. */
export function readDayOrder(written: string): string | undefined {
  const order = written
    .trim()
    .toLowerCase()
    .replace(/[^dmy]/g, '');
  return [...order].sort().join('') === 'dmy' ? order : undefined;
}

/** Reads a day; with an order also one of three figures. A year of two figures is of this century. */
export function readSheetDay(written: string, order: string | undefined): Reading<Day> {
  const plain = readDay(written);
  if (plain.ok || /^\d{4}-/.test(written.trim())) return plain;
  const figures = /^(\d{1,4})[./ -]+(\d{1,2})[./ -]+(\d{1,4})$/.exec(written.trim());
  if (!order || !figures) {
    const how = figures ? '; if the sheet writes days another way, say how with --dates m/d/y or d.m.y' : '';
    return { ok: false, expected: `a date such as \`2025-04-16\`${how}` };
  }
  const at = (letter: string) => figures[order.indexOf(letter) + 1] ?? '';
  const year = at('y').length <= 2 ? `20${at('y').padStart(2, '0')}` : at('y');
  const day = `${year}-${at('m').padStart(2, '0')}-${at('d').padStart(2, '0')}`;
  return isDay(day)
    ? { ok: true, value: day }
    : { ok: false, expected: `a date written ${[...order].join('/')}` };
}
