// Bills line by line: what the vendor asked, what it became on its way to the owner.
import type { CarRecord } from '../../record/record.ts';
import { accountOf, type BillAmounts } from '../../rollup/account.ts';
import type { Statement } from '../../rollup/issued.ts';
import type { FigureRow, FigureTable } from '../figure-table.ts';
import { namesOf } from '../names.ts';
import { billNotes, taxLetters } from './words.ts';
import { dayIn, figures, writing } from './writing.ts';

/** A bill of one line is one row; of more, its sum with the lines within it. */
export function billTable(statement: Statement, record: CarRecord): FigureTable {
  const dayText = dayIn(statement);
  const { bills, billed } = accountOf(statement);
  const { money, opens } = writing(record);
  const names = namesOf(record);
  const letter = taxLetters(statement.sums.taxes);
  const cells = ({ goods, freight, paidTax, handling, charged }: BillAmounts) =>
    figures(
      ...[goods, freight, paidTax, handling].map((amount) => (amount === 0 ? '' : money(amount))),
      money(charged),
    );
  return {
    caption: 'Bills, with handling',
    head: 'Bill, and what was bought',
    columns: ['Price', 'Freight', 'Tax paid', 'Handling', 'Charged'].map((head) => ({ head })),
    rows: bills.flatMap(({ day, vendor, bill, lines, sum }): FigureRow[] => {
      const from = [names.vendor(vendor), ...(bill === undefined ? [] : [`bill ${bill}`])].join(', ');
      const [first] = lines;
      if (first && lines.length === 1)
        return [
          {
            head: `${dayText(day)}: ${first.line.what}`,
            ...opens([first.line]),
            notes: [[from, ...billNotes(first.line, record, letter)].join('; ')],
            cells: cells(sum),
          },
        ];
      return [
        {
          head: `${dayText(day)}: ${from}`,
          ...opens(lines.map(({ line }) => line)),
          begins: true,
          cells: cells(sum),
        },
        ...lines.map(({ line, ...amounts }) => ({
          head: line.what,
          within: true,
          notes: billNotes(line, record, letter),
          cells: cells(amounts),
        })),
      ];
    }),
    foot: { head: 'Bills, with handling', cells: cells(billed) },
  };
}
