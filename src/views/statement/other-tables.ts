// Deposits, corrections, tax and payments of a statement.
import { shareText } from '../../figures/shares.ts';
import type { CarRecord } from '../../record/record.ts';
import { accountOf, type Changed } from '../../rollup/account.ts';
import type { Statement } from '../../rollup/issued.ts';
import type { StatedLine } from '../../rollup/stated-lines.ts';
import type { FigureTable } from '../figure-table.ts';
import { namesOf } from '../names.ts';
import { changedNotes, taxLetters, taxNote } from './words.ts';
import { dayIn, figures, writing } from './writing.ts';

/** What went out, and what came back as an amount below zero. */
export function depositTable(statement: Statement, record: CarRecord): FigureTable {
  const dayText = dayIn(statement);
  const { money, opens } = writing(record);
  const names = namesOf(record);
  return {
    caption: 'Deposits, out and back',
    head: 'Day, and what it is for',
    columns: [{ head: 'Deposit' }],
    rows: accountOf(statement).deposits.map((line) => ({
      head: `${dayText(line.day)}: ${line.what}`,
      ...opens([line]),
      notes: [
        `${names.vendor(line.vendor)}; ${(line.amounts.deposit ?? 0) > 0 ? 'to come back' : 'came back'}`,
      ],
      cells: figures(money(line.amounts.deposit ?? 0)),
    })),
    foot: { head: 'Deposits', cells: figures(money(statement.sums.deposits)) },
  };
}

/** Each line that changed: as it was stated, as it is, and the difference that is charged now. */
export function changedTable(statement: Statement, record: CarRecord): FigureTable {
  const { money, opens } = writing(record);
  const cells = ({ was, now, before, after, difference }: Changed) =>
    figures(was ? money(before) : 'none', now ? money(after) : 'none', money(difference));
  return {
    caption: 'Corrections to earlier statements, before tax',
    head: 'Entry, and the line that changed',
    columns: ['Was', 'Is', 'Difference'].map((head) => ({ head })),
    rows: accountOf(statement).changed.map((changed) => {
      const { was, now } = changed;
      const line = (now ?? was) as StatedLine;
      return {
        head: `${line.entry}: ${line.what}`,
        ...opens([line]),
        notes: changedNotes(changed, money),
        cells: cells(changed),
      };
    }),
    foot: {
      head: 'Corrections',
      cells: figures('', '', money(statement.sums.corrections)),
    },
  };
}

/** Taxes by letter, each with what it is on. */
export function taxTable({ sums }: Statement, record: CarRecord): FigureTable {
  const { money } = writing(record);
  const letter = taxLetters(sums.taxes);
  return {
    caption: 'Tax',
    head: 'Tax',
    columns: [{ head: 'On' }, { head: 'Tax' }],
    rows: sums.taxes
      .filter(({ basis, amount }) => basis !== 0 || amount !== 0)
      .map((tax) => ({
        head: `${letter(tax)}  ${tax.rule.name} ${shareText(tax.rule.rate)}`,
        notes: [taxNote(tax)],
        cells: figures(money(tax.basis), money(tax.amount)),
      })),
    foot: { head: 'Tax added', cells: figures('', money(sums.tax)) },
  };
}

/** Money from the owner. */
export function paidTable(statement: Statement, record: CarRecord): FigureTable {
  const dayText = dayIn(statement);
  const { money, opens } = writing(record);
  return {
    caption: 'Payments received',
    head: 'Day, and how',
    columns: [{ head: 'Paid' }],
    rows: accountOf(statement).payments.map((line) => ({
      head: `${dayText(line.day)}, ${line.what}`,
      ...opens([line]),
      cells: figures(money(line.amounts.paid ?? 0)),
    })),
    foot: { head: 'Payments received', cells: figures(money(statement.sums.paid)) },
  };
}
