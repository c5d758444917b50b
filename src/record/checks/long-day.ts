// Sums each person’s day over all its entries and finds more than 14 hours, up to 24.
import { minutesText } from '../../figures/hours.ts';
import type { Check } from './check.ts';
import { passing, personsDays } from './hours-of-a-day.ts';

// Nobody here works longer with a torch in hand: a shop's practice, no rule of law.
const LONG = 14 * 60;
const DAY = 24 * 60;

export const longDay: Check = {
  rule: 'long-day',
  severity: 'warning',
  why: 'Fourteen hours at the bench are rare, so a longer day is more likely a time logged twice.',
  run: (record) =>
    personsDays(record).flatMap((day) => {
      const at = day.minutes > DAY ? undefined : passing(day, LONG);
      if (!at) return [];
      return [
        {
          place: at.line.place,
          reason: `\`${day.person}\` has ${minutesText(day.minutes)} on ${day.day}, a long day.`,
          mend: 'Look for a time that stands twice or belongs to another day.',
          related: at.before.map(({ place }) => place),
        },
      ];
    }),
};
