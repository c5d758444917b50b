// Finds choices decided or withdrawn before they were asked.
import type { Check } from './check.ts';

export const decidedBeforeAsked: Check = {
  rule: 'decided-before-asked',
  severity: 'error',
  why: 'An answer older than its question is a wrong date, and the history would tell it so.',
  run: ({ choices }) =>
    choices.flatMap(({ asked, placeAt, ...choice }) =>
      (['decided', 'withdrawn'] as const).flatMap((key) => {
        const on = choice[key]?.on;
        if (on === undefined || on >= asked) return [];
        return [
          {
            place: placeAt([key, 'on']),
            reason: `This choice was ${key} on ${on}, before it was asked on ${asked}.`,
            mend: 'Mend one of the two dates.',
            related: [placeAt(['asked'])],
          },
        ];
      }),
    ),
};
