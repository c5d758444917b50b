// The tables that leave with the car: who worked on what and how long, and what was bought and sent out. They hold no
// amount, unless the totals are asked for.
import type { Currency } from '../../figures/currency.ts';
import { plainAmount } from '../../figures/money-text.ts';
import type { Place } from '../../record/place.ts';
import { type CarRecord, personOf } from '../../record/record.ts';
import type { Rollup, Total } from '../../rollup/cost-lines.ts';
import { namesOf } from '../names.ts';
import { type Column, type ExportTable, tableOf } from './table.ts';

/** Of the record as a later reader may see it. */
export function historyTables(record: CarRecord): ExportTable[] {
  return [hours(record), bought(record)];
}

type Line = { day: string; entry: string; what: string; place: Place; part?: string | undefined };
type Hours = Line & { work: string; person: string | undefined; minutes: number };
type Bought = Line & { how: string; vendor: string; count?: string | undefined };

function hours(record: CarRecord): ExportTable {
  const names = namesOf(record);
  const { day, entry, part, partName, what, file, fileLine } = columnsOf<Hours>(record);
  const rows = record.entries.flatMap((own) =>
    (own.hours ?? []).map(({ part, work, time, note = '', place, ...line }): Hours => {
      const person = personOf(line, own, record.shop);
      return { day: own.day, entry: own.id, part, work, person, what: note, minutes: time, place };
    }),
  );
  return tableOf(
    'hours',
    'Hours worked',
    [
      ...[day, entry, part, partName],
      text<Hours>('work', 'The kind of work.', ({ work }) => work),
      text<Hours>('person', 'Who worked.', ({ person }) => names.person(person)),
      what('What was done.'),
      {
        ...text<Hours>('minutes', 'Time worked, in minutes.', ({ minutes }) => `${minutes}`),
        type: 'integer',
      },
      ...[file, fileLine],
    ],
    rows,
  );
}

function bought(record: CarRecord): ExportTable {
  const names = namesOf(record);
  const { day, entry, part, partName, what, file, fileLine } = columnsOf<Bought>(record);
  const rows = record.entries.flatMap((own) =>
    (['bought', 'outside', 'returned'] as const).flatMap((how) =>
      (own[how] ?? []).map((line): Bought => {
        const { what, from, part, place } = line;
        const count = 'count' in line ? line.count?.toString() : undefined;
        return { day: own.day, entry: own.id, how, vendor: from, what, part, place, count };
      }),
    ),
  );
  return tableOf(
    'bought',
    'Things bought, work done outside, and things sent back',
    [
      ...[day, entry],
      text<Bought>('how', 'bought, outside (work done elsewhere) or returned.', ({ how }) => how),
      text<Bought>('vendor', 'From whom, or by whom.', ({ vendor }) => names.vendor(vendor)),
      what('What it is.'),
      { ...text<Bought>('count', 'How many; empty for one.', ({ count }) => count), type: 'number' },
      ...[part, partName, file, fileLine],
    ],
    rows,
  );
}

/** What the work came to, by group and by part: sums alone, with no rate and no price behind them. */
export function totalsTable({ tables, total }: Rollup, currency: Currency): ExportTable {
  type Sum = { by: string; label: string; of: Total };
  const rows: Sum[] = [
    ...(['group', 'part'] as const).flatMap((by) =>
      tables[by].rows.map((row): Sum => ({ by, label: row.label, of: row })),
    ),
    { by: 'all', label: 'All', of: total },
  ];
  return tableOf<Sum>(
    'totals',
    'What the work came to, by group and again by part',
    [
      text<Sum>('by', 'group, part or all: each of these divides the same sum.', ({ by }) => by),
      text<Sum>('name', 'The group or the part.', ({ label }) => label),
      { ...text<Sum>('minutes', 'Time worked, in minutes.', ({ of }) => `${of.minutes}`), type: 'integer' },
      {
        ...text<Sum>('charged', 'What was charged for it.', ({ of }) => plainAmount(of.charged, currency)),
        type: 'number',
      },
    ],
    rows,
  );
}

function columnsOf<Row extends Line>(record: CarRecord) {
  const names = namesOf(record);
  return {
    day: { ...text<Row>('day', 'The day.', ({ day }) => day), type: 'date' } as Column<Row>,
    entry: text<Row>('entry', 'The entry of the log.', ({ entry }) => entry),
    part: text<Row>('part', 'The part, by its file; empty for the car as a whole.', ({ part }) => part),
    partName: text<Row>('part_name', 'The part’s name.', ({ part }) => part && names.part(part)),
    what: (says: string) => text<Row>('what', says, ({ what }) => what),
    file: text<Row>('file', 'The file that it is written in.', ({ place }) => place.file),
    fileLine: {
      ...text<Row>('file_line', 'The line of the file.', ({ place }) => `${place.line}`),
      type: 'integer',
    } as Column<Row>,
  };
}

function text<Row>(name: string, says: string, of: (row: Row) => string | undefined): Column<Row> {
  return { name, type: 'string', says, of };
}
