// What the work came to, for a book that is asked to say it: the sums of the roll-up and nothing that is paid to the
// shop's people, by vendors' bills or by the owner.
import { amountText, moneyText } from '../../figures/money-text.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Rollup, Total } from '../../rollup/cost-lines.ts';
import { timeText } from '../day.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookCosts = { says: string; groups: BookTable | undefined; parts: BookTable | undefined };

export function bookCosts(record: CarRecord, rollup: Rollup): BookCosts {
  const { currency } = record;
  const table = (by: 'group' | 'part', head: string) => {
    const { rows, total } = rollup.tables[by];
    const table = tableOf<Total & { label: string }>(
      [...rows, { ...total, label: 'All' }],
      [
        { head, wide: 6, text: ({ label }) => label },
        { head: 'Hours', wide: 0, figures: true, text: ({ minutes }) => timeText(minutes) },
        {
          head: `Charged, ${currency.code}`,
          wide: 0,
          figures: true,
          text: ({ charged }) => amountText(charged, currency),
        },
      ],
    );
    return table && { ...table, total: true as const };
  };
  return {
    says: `The work came to ${moneyText(rollup.total.charged, currency)} in all, and took ${timeText(rollup.total.minutes)}.`,
    groups: table('group', 'Group'),
    parts: table('part', 'Part'),
  };
}
