// The ledger of costs: tables that open to their lines, and the rules that were used.
import { amountText } from '../figures/money-text.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, Grouping, Rollup, Row, Table, Total } from '../rollup/cost-lines.ts';
import { timeText } from './day.ts';
import { KIND, KINDS } from './line-text.ts';
import { page } from './links.ts';

/** A table ready to be printed: the row's name and page of lines, its hours, and an amount for each kind. */
export type Ledger = {
  title: string;
  by: Grouping;
  kinds: { kind: CostKind; name: string }[];
  rows: { label: string; to: string; time: string; kinds: string[]; total: string; cost: string }[];
  total: { time: string; kinds: string[]; total: string; cost: string };
};

const TITLES: Record<Grouping, string> = {
  part: 'By part',
  group: 'By group',
  kind: 'By kind',
  work: 'By kind of work',
  person: 'By person',
  vendor: 'By vendor',
  month: 'By month',
  choice: 'By choice',
};

/** One way of dividing the costs; kinds in which nothing stands have no column. */
export function ledgerOf(rollup: Rollup, by: Grouping, record: CarRecord): Ledger {
  const table: Table = rollup.tables[by];
  const kinds = KINDS.filter((kind) => (table.total.kinds[kind]?.lines.length ?? 0) > 0);
  const cells = (row: Total & { kinds: Row['kinds'] }) => ({
    time: timeText(row.minutes),
    kinds: kinds.map((kind) => figure(row.kinds[kind], record)),
    total: amountText(row.charged, record.currency),
    cost: amountText(row.cost, record.currency),
  });
  return {
    title: TITLES[by],
    by,
    kinds: kinds.map((kind) => ({ kind, name: KIND[kind] })),
    rows: table.rows.map((row) => ({ label: row.label, to: page.lines(by, row.key), ...cells(row) })),
    total: cells(table.total),
  };
}

function figure(total: Total | undefined, record: CarRecord): string {
  return total && total.lines.length > 0 ? amountText(total.charged, record.currency) : '';
}

/** The rules of the shop in words: tax, handling, materials, step. */
export function rulesInUse({ shop }: CarRecord): string[] {
  return [
    ...(shop.tax ?? []).map(
      ({ name, rate, side, on, from, by, rounding }) =>
        `${name}, ${shareText(rate)} from ${from}, ${side === 'paid' ? 'paid by the shop to vendors' : 'charged to the owner'} on ${on.join(', ').replace('labour', 'labor')}, rounded ${ROUNDED[rounding ?? 'half-up']} ${by === 'line' ? 'on each line' : side === 'paid' ? 'once a bill' : 'once on the statement’s sum'}.`,
    ),
    ...(shop.handling ?? []).map(
      ({ kind, share, from }) =>
        `Handling of ${shareText(share)} on ${kind === 'bought' ? 'bought things' : 'outside work'} from ${from}.`,
    ),
  ];
}

const ROUNDED = { 'half-up': 'half up', 'half-even': 'half to even', down: 'down' };
