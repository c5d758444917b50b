// Measurements before and after: every thing as it was found and as it was last read, each with what it comes to.
import type { CarRecord } from '../../record/record.ts';
import { type Measured, measurementsOf, type Thing } from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { passed, resultText } from '../measured/result-text.ts';
import { namesOf } from '../names.ts';
import { capital } from '../parts.ts';
import { readingText } from '../readings.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookMeasured = { part: string; table: BookTable }[];

/** One table for each part that was measured, in the order of the parts. */
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

/** A row for each reading; what was measured stands in the first row of its readings. */
function measuredTable(things: readonly Thing[], { units }: CarRecord): BookTable | undefined {
  const rows = things.flatMap((thing) => {
    const { before, last } = thing;
    const readings: Measured[] = before && before !== last ? [before, last] : [last];
    return readings.map((measured, i) => ({ what: i === 0 ? thingText(thing) : '', measured }));
  });
  return tableOf(rows, [
    { head: 'What', wide: 2, text: ({ what }) => capital(what) },
    {
      head: 'When',
      wide: 2.2,
      text: ({ measured }) => `${capital(measured.state)}, ${datedText(measured.day)}`,
    },
    {
      head: 'As it was read',
      wide: 4.8,
      text: ({ measured }) => withoutName(measured, readingText(measured.reading, units)),
    },
    { head: 'What it comes to', wide: 4.8, text: ({ measured }) => capital(resultText(measured, units)) },
  ]);
}

const thingText = ({ kind, name }: Thing): string => (name === '' ? kind : `${kind}, ${name}`);

/** Things that did not pass when they were last read, in words. */
export function notPassed(record: CarRecord): string[] {
  const names = namesOf(record);
  return measurementsOf(record)
    .things.filter(({ last }) => passed(last) === 'not passed')
    .map((thing) => {
      const { part, last } = thing;
      return `${names.part(part)}, ${thingText(thing)}: ${resultText(last, record.units)} (${datedText(last.day)}).`;
    });
}

/** The first column names the thing already. */
function withoutName({ name }: Measured, text: string): string {
  return name !== '' && text.startsWith(`${name}: `) ? text.slice(name.length + 2) : text;
}
