// Everything that the log charges, line by line, each with the taxes that the owner is charged on it.
import { type LineTax, lineTaxes } from '../estimate/charged-tax.ts';
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import { billLines } from './bill-lines.ts';
import type { Drawn } from './drawn.ts';
import { labourLines } from './labour-lines.ts';
import { type PlacedRule, taxRules } from './shop-rules.ts';

/** A line as drawn; the taxes of a written line stand with the line that they are worked out on. */
export type TaxedLine = Pick<Drawn, 'line'> & { taxes: LineTax<PlacedRule>[]; exempt: boolean };

/** All lines of a record, whatever the order in which its entries are held. */
export const drawnLines: (record: CarRecord) => readonly TaxedLine[] = once((unsorted) => {
  const record = { ...unsorted, entries: [...unsorted.entries].sort(byDay) };
  const drawn = [...labourLines(record), ...billLines(record)];
  const taxes = lineTaxes(
    drawn.map(({ line, taxed }) => taxed ?? { day: line.day, charged: {} }),
    taxRules(record.shop),
  );
  return drawn.map(({ line, taxed }, i) => ({
    line,
    taxes: taxes[i] ?? [],
    exempt: taxed?.exempt ?? false,
  }));
});

function byDay(a: { day: string; file: string }, b: { day: string; file: string }): number {
  return compare(a.day, b.day) || compare(a.file, b.file);
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
