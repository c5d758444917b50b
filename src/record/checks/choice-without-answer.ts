// Finds open choices whose day has passed.
import type { Check } from './check.ts';

export const choiceWithoutAnswer: Check = {
  rule: 'choice-without-answer',
  severity: 'warning',
  why: 'Work that waits for an answer stands still, and nobody is told.',
  run: ({ choices }, { today }) =>
    choices.flatMap(({ 'needed-by': needed, decided, withdrawn, placeAt }) => {
      if (needed === undefined || needed >= today || decided || withdrawn) return [];
      return [
        {
          place: placeAt(['needed-by']),
          reason: `An answer was needed by ${needed}, and nothing is decided.`,
          mend: 'Write `decided`, or `withdrawn` with the reason, or a later `needed-by`.',
        },
      ];
    }),
};
