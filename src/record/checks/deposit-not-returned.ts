// Finds deposits still out after 60 days, reckoned to the last day written.
import { daysBetween } from '../../figures/days.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { BoughtLine } from '../record.ts';
import { returns } from './back-from-vendors.ts';
import type { Check } from './check.ts';

const DAYS = 60;

export const depositNotReturned: Check = {
  rule: 'deposit-not-returned',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A deposit counts as spent until it comes back, and vendors don’t remind anybody.',
  run: (record, { today }) => {
    const [until = today] = [record.entries.at(-1)?.day ?? today, today].sort();
    const back = new Map<BoughtLine, number>();
    for (const { line, of } of returns(record)) {
      let left = line.deposit ?? 0;
      for (const bought of of) {
        const now = Math.min(left, (bought.deposit ?? 0) - (back.get(bought) ?? 0));
        back.set(bought, (back.get(bought) ?? 0) + now);
        left -= now;
      }
    }
    return record.entries.flatMap(({ day, bought = [], placeAt }) =>
      bought.flatMap((line, i) => {
        const out = (line.deposit ?? 0) - (back.get(line) ?? 0);
        const days = daysBetween(day, until);
        if (out <= 0 || days <= DAYS) return [];
        return [
          {
            place: placeAt(['bought', i, 'deposit']),
            reason: `${moneyText(out, record.currency)} of deposit for \`${line.what}\` is still out with \`${line.from}\` after ${days} days.`,
            mend: 'Ask for it; when it comes back, write it under `returned` with the same words and its `deposit`.',
          },
        ];
      }),
    );
  },
};
