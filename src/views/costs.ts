// The ledger of costs: one table for each way of dividing them, each figure with the page of its lines.
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, Grouping, Rollup, Row, Total } from '../rollup/cost-lines.ts';
import { depositsSum } from '../rollup/deposits-sum.ts';
import { timeText } from './day.ts';
import { KIND, KINDS } from './line-text.ts';
import { aboutOf, page } from './links.ts';
import { capital } from './parts.ts';

/** A figure of a table and the page and place of the lines behind it; no figure, no link. */
export type Cell = { text: string; to?: string };

/** What a row says. `about` is the page of the part or choice that the row is about. */
export type LedgerRow = {
  label: string;
  about?: string;
  time: Cell;
  kinds: Cell[];
  total: Cell;
  cost: string;
};

/** A table ready to be printed; kinds in which nothing stands have no column. */
export type Ledger = {
  by: Grouping;
  title: string;
  head: string;
  kinds: { kind: CostKind; name: string }[];
  rows: LedgerRow[];
  total: LedgerRow;
};

/** Spent against agreed, paid, and what vendors still hold, in one sentence each. */
export function costLead(record: CarRecord, rollup: Rollup): string {
  const money = (amount: number) => moneyText(amount, record.currency);
  const agreed = rollup.agreed > 0 ? ` of the ${money(rollup.agreed)} agreed` : '';
  const out = depositsSum(rollup);
  return [
    `${money(rollup.total.charged)} is spent${agreed}.`,
    rollup.paid > 0 ? `${money(rollup.paid)} has been paid.` : 'Nothing has been paid yet.',
    out > 0 ? `${money(out)} of deposits is still out.` : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** One way of dividing the costs. A division by kind has no columns of kinds. */
export function ledgerOf(rollup: Rollup, by: Grouping, record: CarRecord): Ledger {
  const table = rollup.tables[by];
  const kinds = by === 'kind' ? [] : KINDS.filter((kind) => (table.total.kinds[kind]?.lines.length ?? 0) > 0);
  const opens = (kind: CostKind) => page.lines('kind', kind);
  return {
    by,
    title: `${TITLE[by]}, in ${record.currency.code}`,
    head: HEAD[by],
    kinds: kinds.map((kind) => ({ kind, name: COLUMN[kind] })),
    rows: table.rows.map((row) => {
      const to = page.lines(by, row.key);
      return {
        ...rowOf(row, kinds, record, (kind) => `${to}#${kind}`, to),
        label: by === 'work' ? capital(row.label) : row.label,
        ...aboutOf(by, row.key, record),
      };
    }),
    total: { ...rowOf(table.total, kinds, record, opens, undefined), label: 'All' },
  };
}

/** The cells of a row; `opens` says where the lines of a kind are, `to` where all of them are. */
function rowOf(
  row: Total & Pick<Row, 'kinds'>,
  kinds: readonly CostKind[],
  { currency }: CarRecord,
  opens: (kind: CostKind) => string,
  to: string | undefined,
): Omit<LedgerRow, 'label' | 'about'> {
  const cell = (text: string, at: string | undefined): Cell =>
    text === '' || at === undefined ? { text } : { text, to: at };
  const figure = (kind: CostKind) =>
    row.kinds[kind] ? cell(amountText(row.kinds[kind].charged, currency), opens(kind)) : { text: '' };
  return {
    time: cell(timeText(row.minutes), row.kinds.labour ? opens('labour') : undefined),
    kinds: kinds.map(figure),
    total: cell(amountText(row.charged, currency), to),
    cost: amountText(row.cost, currency),
  };
}

const TITLE: Record<Grouping, string> = {
  part: 'By part',
  group: 'By group',
  kind: 'By kind',
  work: 'By kind of work',
  person: 'By person',
  vendor: 'By vendor',
  month: 'By month',
  choice: 'By choice',
};

const HEAD: Record<Grouping, string> = {
  part: 'Part',
  group: 'Group',
  kind: 'Kind',
  work: 'Work',
  person: 'Person',
  vendor: 'Vendor',
  month: 'Month',
  choice: 'Choice',
};

/** Kinds in the few letters that the head of a column has. */
const COLUMN: Record<CostKind, string> = {
  ...KIND,
  outside: 'Outside',
  'paid-tax': 'Tax paid',
  deposit: 'Deposits',
  materials: 'Materials',
};
