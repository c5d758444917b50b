// The owner's account from its beginning: every issued statement, and what isn't issued yet.
import type { Minor } from '../figures/money.ts';
import { amountText } from '../figures/money-text.ts';
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import { chargedIn, type Issued, issuedStatements, type Statement } from '../rollup/issued.ts';
import { datedText } from './dated.ts';
import { type FigureRow, type FigureTable, figure } from './figure-table.ts';
import { page } from './links.ts';
import { dueSentence, type StatementPage, statementPage } from './statement.ts';
import { statementOf } from './statement-asked.ts';

/** The list of statements. `lead` says what is due with all that is written. */
export type StatementsPage = { lead: string; table: FigureTable | undefined };

export function statementsPage(record: CarRecord): StatementsPage {
  const all = allOf(record);
  const last = all.at(-1);
  if (!last) return { lead: 'Nothing has been charged or paid yet.', table: undefined };
  return {
    lead: `${dueSentence(last.sums.balance, record)} ${'number' in last ? '' : 'That counts what isn’t on a statement yet.'}`.trim(),
    table: {
      caption: `Statements, in ${record.currency.code}`,
      head: 'Period',
      columns: ['Brought forward', 'Charged', 'Paid', 'Balance'].map((head) => ({ head })),
      rows: all.map((statement) => rowOf(statement, record)),
    },
  };
}

/** What stands under an address: the number of an issued statement, or `open` for what isn't issued yet. */
export function statementAt(record: CarRecord, key: string): StatementPage | undefined {
  const found = allOf(record).find((one) => keyOf(one) === key);
  return found && statementPage(found, record);
}

/** The addresses that have a statement. */
export function statementKeys(record: CarRecord): string[] {
  return allOf(record).map(keyOf);
}

const allOf = once((record: CarRecord): (Statement | Issued)[] => [
  ...issuedStatements(record),
  ...openOf(record),
]);

/** What isn't issued yet, as far as anything is written after the last statement or has changed before it. */
function openOf(record: CarRecord): Statement[] {
  const { statement } = statementOf(record, {});
  if (!statement || 'number' in statement) return [];
  return statement.lines.length + statement.corrections.length > 0 ? [statement] : [];
}

const keyOf = (statement: Statement | Issued) => ('number' in statement ? statement.number : OPEN);
const OPEN = 'open';

function rowOf(statement: Statement | Issued, { currency }: CarRecord): FigureRow {
  const { from, to, sums } = statement;
  const money = (amount: Minor) => figure(amountText(amount, currency));
  return {
    head: `${datedText(from)} to ${datedText(to)}`,
    to: page.statement(keyOf(statement)),
    notes: [
      'number' in statement
        ? `statement ${statement.number}, issued ${datedText(statement.issued)}`
        : 'not issued yet',
    ],
    cells: [sums.broughtForward, chargedIn(statement), sums.paid, sums.balance].map(money),
  };
}
