// Finds days later than today; today comes in from outside.
import type { Check } from './check.ts';
import { writtenDays } from './written-days.ts';

export const futureDate: Check = {
  rule: 'future-date',
  severity: 'error',
  why: 'A mistyped year puts a day’s work where nobody looks for it, and under the wrong rates.',
  run: (record, { today }) =>
    [...writtenDays(record)]
      .filter(({ day }) => day > today)
      .map(({ day, what, place }) => ({
        place: place(),
        reason: `${what} is dated ${day}, and today is ${today}.`,
        mend: what.startsWith('`') ? 'Mend the date.' : 'Name the file by the day of the work.',
      })),
};
