// Measurements before and after, as they were read, with what they come to.
import type { CarRecord } from '../../record/record.ts';
import { type Measured, measurementsOf, type Thing } from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { passed, resultText } from '../measured/result-text.ts';
import { namesOf } from '../names.ts';
import { capital } from '../parts.ts';
import { readingText } from '../readings.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookMeasured = { part: string; table: BookTable }[];

/** One table for each part that was measured: every thing as it was found and as it was last read. */
export function bookMeasured(record: CarRecord): BookMeasured {
  const { things } = measurementsOf(record);
  const names = namesOf(record);
  const order = new Map(record.parts.map(({ id }, i) => [id, i]));
  return [...Map.groupBy(things, ({ part }) => part)]
    .sort(([a], [b]) => (order.get(a) ?? order.size) - (order.get(b) ?? order.size))
    .flatMap(([part, own]) => {
      const table = measuredTable(own, record);
      return table ? [{ part: names.part(part), table }] : [];
    });
}

function measuredTable(things: readonly Thing[], record: CarRecord): BookTable | undefined {
  const read = (measured: Measured | undefined) =>
    measured
      ? `${withoutName(measured, readingText(measured.reading, record.units))} (${datedText(measured.day)})`
      : '';
  return tableOf(things, [
    { head: 'What', wide: 2, text: ({ kind, name }) => capital(name === '' ? kind : `${kind}, ${name}`) },
    { head: 'As found', wide: 4, text: ({ before }) => read(before) },
    { head: 'As last read', wide: 4, text: ({ before, last }) => (last === before ? '' : read(last)) },
    { head: 'Comes to', wide: 4, text: ({ last }) => capital(resultText(last, record.units)) },
  ]);
}

/** Things that did not pass when they were last read, in words. */
export function notPassed(record: CarRecord): string[] {
  const names = namesOf(record);
  return measurementsOf(record)
    .things.filter(({ last }) => passed(last) === 'not passed')
    .map(
      ({ part, kind, name, last }) =>
        `${names.part(part)}, ${name === '' ? kind : `${kind}, ${name}`}: ${resultText(last, record.units)} (${datedText(last.day)}).`,
    );
}

/** The first column names the thing already. */
function withoutName({ name }: Measured, text: string): string {
  return name !== '' && text.startsWith(`${name}: `) ? text.slice(name.length + 2) : text;
}
