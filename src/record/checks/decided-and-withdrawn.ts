// Finds choices that are both decided and withdrawn.
import type { Check } from './check.ts';

export const decidedAndWithdrawn: Check = {
  rule: 'decided-and-withdrawn',
  severity: 'error',
  why: 'A question is answered or dropped; with both written, nobody knows what holds.',
  run: ({ choices }) =>
    choices
      .filter(({ decided, withdrawn }) => decided && withdrawn)
      .map(({ placeAt }) => ({
        place: placeAt(['withdrawn']),
        reason: 'This choice is decided and withdrawn as well.',
        mend: 'Keep the one that holds, and tell the other in the words below.',
        related: [placeAt(['decided'])],
      })),
};
