// Finds tests whose last day is before their first.
import type { Check } from './check.ts';

export const testEndsBeforeItBegins: Check = {
  rule: 'test-ends-before-it-begins',
  severity: 'error',
  why: 'How long a tank has held is the point of the test.',
  run: ({ entries }) =>
    entries.flatMap(({ tested = [], placeAt }) =>
      tested.flatMap(({ since, until }, i) => {
        if (since === undefined || until === undefined || since <= until) return [];
        return [
          {
            place: placeAt(['tested', i, 'until']),
            reason: `This test ends on ${until}, before it begins on ${since}.`,
            mend: 'Change the two dates round, or mend one.',
            related: [placeAt(['tested', i, 'since'])],
          },
        ];
      }),
    ),
};
