// Holds issued statements against the digest that was kept when they were issued.
import type { Check } from './check.ts';

export const statementChanged: Check = {
  rule: 'statement-changed',
  severity: 'error',
  why: 'The owner has the statement as it was issued, and every later balance stands on it.',
  run: ({ statements }) =>
    statements
      .filter(({ whole, digestRead, digest }) => whole && digestRead !== digest)
      .map((statement) => ({
        place: statement.placeAt(['digest']),
        reason: `Statement \`${statement.number}\` was changed by hand after it was issued.`,
        mend: 'Put back the file as it was issued, and write what was wrong in the log: the next statement shows it as a correction.',
      })),
};
