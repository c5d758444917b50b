// Finds pictures without a caption or without `alt`.
import type { Check } from './check.ts';

export const photoWithoutWords: Check = {
  rule: 'photo-without-words',
  severity: 'warning',
  why: 'A caption says why a picture was taken; `alt` says it to those who can’t see it.',
  run: ({ entries }) =>
    entries.flatMap(({ photos = [] }) =>
      photos.flatMap(({ caption, alt, file, place }) => {
        const missing = [...(caption ? [] : ['caption']), ...(alt ? [] : ['alt'])];
        if (missing.length === 0) return [];
        return [
          {
            place,
            reason: `\`${file}\` has no ${missing.map((key) => `\`${key}\``).join(' and no ')}.`,
            mend: 'A short sentence is enough.',
          },
        ];
      }),
    ),
};
