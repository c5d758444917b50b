// Sums each person’s day over all its entries and finds more than 24 hours.
import { minutesText } from '../../figures/hours.ts';
import type { Check } from './check.ts';
import { passing, personsDays } from './hours-of-a-day.ts';

const DAY = 24 * 60;

export const hoursFitInADay: Check = {
  rule: 'hours-fit-in-a-day',
  severity: 'error',
  why: 'More hours than a day has are a slip of the pen, and somebody would be charged for them.',
  run: (record) =>
    personsDays(record).flatMap((day) => {
      const at = passing(day, DAY);
      if (!at) return [];
      return [
        {
          place: at.line.place,
          reason: `\`${day.person}\` has ${minutesText(day.minutes)} on ${day.day}, more than the day has.`,
          mend: 'Look for a time that is mistyped, such as `45` for `45m`, or that stands twice.',
          related: at.before.map(({ place }) => place),
        },
      ];
    }),
};
