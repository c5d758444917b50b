// What leaves as tables: hours, bills, and the lines of issued statements. Nothing of it is the shop's own.
import { comesTo } from '../../estimate/statement.ts';
import type { Minor } from '../../figures/money.ts';
import { shareText } from '../../figures/shares.ts';
import type { CarRecord } from '../../record/record.ts';
import { type Issued, issuedStatements } from '../../rollup/issued.ts';
import { type StatedLine, statedLines } from '../../rollup/stated-lines.ts';
import { type Column, type ExportTable, lineColumns, moneyColumn, tableOf } from './table.ts';

export function exportTables(record: CarRecord): ExportTable[] {
  return [hours(record), bills(record), statementLines(record)];
}

const of = (line: StatedLine) => line;
const whole = (name: string, says: string, value: (line: StatedLine) => number | undefined) =>
  ({ name, type: 'integer', says, of: (line) => value(line)?.toString() }) as Column<StatedLine>;
const said = (name: string, says: string, value: (line: StatedLine) => boolean | undefined) =>
  ({ name, type: 'boolean', says, of: (line) => String(value(line) ?? false) }) as Column<StatedLine>;
const amount = (
  name: string,
  says: string,
  record: CarRecord,
  kind: keyof StatedLine['amounts'],
): Column<StatedLine> => moneyColumn(name, says, record, ({ amounts }) => amounts[kind] ?? 0);

function hours(record: CarRecord): ExportTable {
  const line = lineColumns(of, record);
  const { day, entry, part, partName, work, person, what, file, fileLine } = line;
  return tableOf(
    'hours',
    'Hours worked, and prices fixed beforehand on the day they were earned',
    [
      ...[day, entry, part, partName, work, person, what],
      whole('minutes_worked', 'Time worked, in minutes.', ({ minutes }) => minutes),
      whole('minutes_charged', 'Time charged, in minutes.', ({ timed }) => timed?.minutes ?? 0),
      moneyColumn('rate', 'What an hour was charged at.', record, ({ timed }: StatedLine) => timed?.rate),
      amount('labor', 'What was charged for it.', record, 'labour'),
      amount('materials', 'Shop materials that went with it.', record, 'materials'),
      { name: 'no_charge', type: 'string', says: 'Why it isn’t charged.', of: ({ noCharge }) => noCharge },
      said('in_price', 'Within a price fixed beforehand.', ({ inPrice }) => inPrice),
      ...[file, fileLine],
    ],
    statedLines(record).filter(({ kind }) => kind === 'hours' || kind === 'price'),
  );
}

function bills(record: CarRecord): ExportTable {
  const { day, entry, vendor, bill, what, part, partName, file, fileLine } = lineColumns(of, record);
  return tableOf(
    'bills',
    'Lines of bills, with what they were charged at; what was sent back is below zero',
    [
      ...[day, entry, vendor, bill, what, part, partName],
      amount('price', 'The vendor’s price, before freight and tax.', record, 'goods'),
      amount('freight', 'Freight.', record, 'freight'),
      amount('tax_paid', 'Tax that the vendor charged.', record, 'paid-tax'),
      amount('handling', 'Handling.', record, 'handling'),
      amount('deposit', 'A deposit, passed on at cost.', record, 'deposit'),
      said('paid_by_owner', 'The owner paid the vendor.', ({ byOwner }) => byOwner),
      said('exempt', 'No tax is charged on it.', ({ exempt }) => exempt),
      ...[file, fileLine],
    ],
    statedLines(record).filter(({ kind }) => kind === 'bill'),
  );
}

/** A row of an issued statement. All `comes` of a statement add up to its balance. */
type Row = { statement: Issued; row: string; comes: Minor; line?: StatedLine; tax?: Tax };
type Tax = Issued['sums']['taxes'][number];

function statementLines(record: CarRecord): ExportTable {
  const { day, entry, what, part, partName, work, person, vendor, bill } = lineColumns(
    ({ line }: Row) => line,
    record,
  );
  const text = (name: string, says: string, value: (row: Row) => string | undefined): Column<Row> => {
    return { name, type: 'string', says, of: value };
  };
  const date = (name: string, says: string, value: (row: Row) => string): Column<Row> => {
    return { name, type: 'date', says, of: value };
  };
  return tableOf(
    'statement-lines',
    'Lines of issued statements: in each, what they come to adds up to its balance',
    [
      text('statement', 'Its number.', ({ statement }) => statement.number),
      date('from', 'The first day of its period.', ({ statement }) => statement.from),
      date('to', 'The last day of its period.', ({ statement }) => statement.to),
      date('issued', 'The day it was issued.', ({ statement }) => statement.issued),
      text('row', 'brought-forward, line, was, now or tax; was and now make a correction.', ({ row }) => row),
      ...[day, entry, what, part, partName, work, person, vendor, bill],
      text('tax', 'The tax’s name.', ({ tax }) => tax?.rule.name),
      text('tax_rate', 'Its rate.', ({ tax }) => tax && shareText(tax.rule.rate)),
      moneyColumn('tax_basis', 'What it is on.', record, ({ tax }: Row) => tax?.basis),
      moneyColumn(
        'tax_amount',
        'Its amount, also where the prices hold it.',
        record,
        ({ tax }: Row) => tax?.amount,
      ),
      moneyColumn(
        'comes_to',
        'What the row adds to the balance; a payment is below zero.',
        record,
        ({ comes }: Row) => comes,
      ),
    ],
    issuedStatements(record).flatMap(rowsOf),
  );
}

function rowsOf(statement: Issued): Row[] {
  const { lines, corrections, sums } = statement;
  return [
    { statement, row: 'brought-forward', comes: sums.broughtForward },
    ...lines.map((line): Row => ({ statement, row: 'line', comes: comesTo(line), line })),
    ...corrections.flatMap(({ was, now }): Row[] => [
      ...(was ? [{ statement, row: 'was', comes: -comesTo(was) + 0, line: was }] : []),
      ...(now ? [{ statement, row: 'now', comes: comesTo(now), line: now }] : []),
    ]),
    ...sums.taxes.map((tax): Row => {
      return { statement, row: 'tax', comes: tax.within === undefined ? tax.amount : 0, tax };
    }),
  ];
}
