// Finds issued statements that don't follow the one before: a gap, an overlap, or another balance brought forward.
import { addDays } from '../../figures/days.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Check } from './check.ts';

export const statementOutOfLine: Check = {
  rule: 'statement-out-of-line',
  severity: 'error',
  why: 'Statements hang together by their periods and balances, so that nothing is charged twice or forgotten.',
  run: ({ statements, currency, unread }) => {
    // Of a statement that can't be read nobody knows which it follows.
    if ([...unread].some((file) => file.startsWith('statements/'))) return [];
    return statements.flatMap((statement, i) => {
      const before = statements[i - 1];
      if (!before) return [];
      const found = (key: 'from' | 'brought-forward', reason: string) => [
        {
          place: statement.placeAt([key]),
          reason,
          mend: 'Put back the statement that is missing, or the files as they were issued.',
          related: [before.placeAt([key === 'from' ? 'to' : 'balance'])],
        },
      ];
      const next = addDays(before.to, 1);
      const { number, from, 'brought-forward': forward } = statement;
      if (from !== next)
        return found(
          'from',
          `Statement \`${number}\` begins on ${from}, and the one before, \`${before.number}\`, ends on ${before.to}.`,
        );
      if (forward === before.balance) return [];
      return found(
        'brought-forward',
        `Statement \`${number}\` brings ${moneyText(forward, currency)} forward, and the one before, \`${before.number}\`, ends with ${moneyText(before.balance, currency)}.`,
      );
    });
  },
};
