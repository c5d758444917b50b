// Finds pictures that stand in the lists of two entries, or twice in one.
import { photoPath } from '../record.ts';
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const photoNamedTwice: Check = {
  rule: 'photo-named-twice',
  severity: 'warning',
  why: 'One picture with two captions shows up twice, and one of the captions is meant for another.',
  run: ({ car, entries }) => {
    const named = entries.flatMap(({ photos = [], day, placeAt }) =>
      photos.map(({ file }, i) => ({
        path: photoPath(file, day),
        place: () => placeAt(['photos', i, 'file']),
      })),
    );
    return twice(
      named.map(({ path }) => path),
      (i) => named[i]?.place() ?? car.placeAt([]),
      (path) => `\`${path}\` stands under \`photos\` already.`,
      'Take one of the two out, or mend the file name.',
    );
  },
};
