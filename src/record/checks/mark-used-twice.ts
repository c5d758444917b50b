// Finds tags that are on two things.
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const markUsedTwice: Check = {
  rule: 'mark-used-twice',
  severity: 'warning',
  why: 'Two things under one tag go back in the wrong place.',
  run: ({ car, entries }) => {
    const tags = entries.flatMap(({ marks = [], placeAt }) =>
      marks.map(({ mark }, i) => ({ mark, place: () => placeAt(['marks', i, 'mark']) })),
    );
    return twice(
      tags.map(({ mark }) => mark.trim().toLowerCase()),
      (i) => tags[i]?.place() ?? car.placeAt([]),
      (mark) => `The tag \`${mark.toUpperCase()}\` is on something already.`,
      'Give one of the two another tag.',
    );
  },
};
