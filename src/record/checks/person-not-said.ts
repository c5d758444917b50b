// Finds hours of which neither the line nor the day says whose they are.
import { personOf } from '../record.ts';
import type { Check } from './check.ts';
import { named } from './unknown-name.ts';

export const personNotSaid: Check = {
  rule: 'person-not-said',
  severity: 'error',
  why: 'In a shop of more than one, an hour without a person has no rate.',
  run: (record) =>
    record.entries.flatMap((entry) =>
      (entry.hours ?? [])
        .filter((line) => personOf(line, entry, record.shop) === undefined)
        .map(({ place }) => ({
          place,
          reason: 'This line of `hours` doesn’t say who worked, and neither does the day.',
          mend: `Write \`by:\` with ${named(record.shop.people.map(({ id }) => id))} in the line, or once at the top of the day.`,
        })),
    ),
};
