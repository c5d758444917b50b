// What an exported table is, and the columns that several of them share.
import type { Minor } from '../../figures/money.ts';
import { plainAmount } from '../../figures/money-text.ts';
import type { CarRecord } from '../../record/record.ts';
import type { StatedLine } from '../../rollup/stated-lines.ts';
import { namesOf } from '../names.ts';

/** A column: its name, what it holds as Table Schema calls it, a sentence, and how a row fills it. */
export type Column<Row> = {
  name: string;
  type: 'string' | 'integer' | 'number' | 'date' | 'boolean';
  says: string;
  of: (row: Row) => string | undefined;
};

/** A table ready to be written: what isn't there is an empty value. */
export type ExportTable = {
  name: string;
  title: string;
  columns: Pick<Column<never>, 'name' | 'type' | 'says'>[];
  rows: string[][];
};

export function tableOf<Row>(
  name: string,
  title: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
): ExportTable {
  return {
    name,
    title,
    columns: columns.map(({ name: head, type, says }) => ({ name: head, type, says })),
    rows: rows.map((row) => columns.map(({ of }) => of(row) ?? '')),
  };
}

/** Columns of a line of the account: where it belongs and what it is. */
export function lineColumns<Row>(line: (row: Row) => StatedLine | undefined, record: CarRecord) {
  const names = namesOf(record);
  const text = (name: string, says: string, of: (line: StatedLine) => string | undefined): Column<Row> => ({
    name,
    type: 'string',
    says,
    of: (row) => {
      const found = line(row);
      return found && of(found);
    },
  });
  return {
    day: { ...text('day', 'The day it stands under.', ({ day }) => day), type: 'date' } as Column<Row>,
    entry: text('entry', 'The entry of the log.', ({ entry }) => entry),
    what: text('what', 'What was done, bought or paid.', ({ what }) => what),
    part: text('part', 'The part, by its file.', ({ part }) => part),
    partName: text('part_name', 'The part’s name.', ({ part }) => part && names.part(part)),
    work: text('work', 'The kind of work.', ({ work }) => work),
    person: text('person', 'Who worked.', ({ person }) => person && names.person(person)),
    vendor: text('vendor', 'The vendor.', ({ vendor }) => vendor && names.vendor(vendor)),
    bill: text('bill', 'The number on the bill.', ({ bill }) => bill),
    file: text('file', 'The file that it is written in.', ({ place }) => place.file),
    fileLine: {
      ...text('file_line', 'The line of the file.', ({ place }) => String(place.line)),
      type: 'integer',
    } as Column<Row>,
  };
}

/** A column of money in the record's currency, with its digits and a point. */
export function moneyColumn<Row>(
  name: string,
  says: string,
  { currency }: CarRecord,
  of: (row: Row) => Minor | undefined,
): Column<Row> {
  return {
    name,
    type: 'number',
    says,
    of: (row) => {
      const amount = of(row);
      return amount === undefined ? undefined : plainAmount(amount, currency);
    },
  };
}
