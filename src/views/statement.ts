// A statement as a page, a sheet of paper and a file say it: the account in a few lines, then what it is made of.
import type { Minor } from '../figures/money.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Issued, Statement } from '../rollup/issued.ts';
import { datedText } from './dated.ts';
import { type FigureTable, figure } from './figure-table.ts';
import { statementTables } from './statement/tables.ts';

/** All that a statement says. `number` and `issued` are missing where it isn't issued yet. */
export type StatementPage = {
  title: string;
  car: string;
  period: string;
  issued: string | undefined;
  shop: string;
  owner: string | undefined;
  lead: string;
  summary: FigureTable;
  tables: FigureTable[];
  fine: string;
};

export function statementPage(statement: Statement | Issued, record: CarRecord): StatementPage {
  const { car, shop, currency } = record;
  const { from, to } = statement;
  const number = 'number' in statement ? statement.number : undefined;
  return {
    title: number === undefined ? 'Statement, not issued yet' : `Statement ${number}`,
    car: car.name,
    period: `${datedText(from)} to ${datedText(to)}`,
    issued: 'issued' in statement ? datedText(statement.issued) : undefined,
    shop: [shop.shop, ...(shop.town ? [shop.town] : [])].join(', '),
    owner: car.owner?.name,
    lead: dueSentence(statement.sums.balance, record),
    summary: summaryOf(statement, record),
    tables: statementTables(statement, record),
    fine: `Amounts in ${currency.code}. ${taxSentence(statement)}`,
  };
}

/** `$1,204.50 is due.` */
export function dueSentence(balance: Minor, { currency }: CarRecord): string {
  if (balance > 0) return `${moneyText(balance, currency)} is due.`;
  return balance === 0
    ? 'Nothing is due.'
    : `Nothing is due: ${moneyText(-balance, currency)} has been paid ahead.`;
}

function summaryOf({ sums }: Statement, { currency }: CarRecord): FigureTable {
  const row = (head: string, amount: Minor) => ({ head, cells: [figure(amountText(amount, currency))] });
  const parts: [string, Minor][] = [
    ['Labor', sums.labour],
    ['Shop materials', sums.materials],
    ['Bills, with handling', sums.bills],
    ['Deposits, out and back', sums.deposits],
    ['Corrections to earlier statements', sums.corrections],
    ['Tax', sums.tax],
    ['Payments received', -sums.paid + 0],
  ];
  return {
    caption: 'The account',
    head: '',
    columns: [{ head: currency.code }],
    rows: [
      row('Brought forward', sums.broughtForward),
      ...parts.filter(([, amount]) => amount !== 0).map(([head, amount]) => row(head, amount)),
    ],
    foot: row(sums.balance < 0 ? 'Paid ahead' : 'Balance due', Math.abs(sums.balance)),
  };
}

/** Whose rules made the tax, and who decides whether they are right. */
function taxSentence({ sums }: Statement): string {
  const taxed = sums.taxes.some(({ basis, amount }) => basis !== 0 || amount !== 0);
  return taxed
    ? 'Tax is by the rules that the shop has written, as they stand above. Which tax is owed, and how it is rounded, is for local tax law to decide.'
    : 'No tax is charged here. Which tax is owed is for local tax law to decide.';
}
