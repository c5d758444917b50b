// Finds pictures without a caption or without `alt`: one problem for an entry, since they come by the dozen.
import type { Entry } from '../record.ts';
import type { Check } from './check.ts';

export const photoWithoutWords: Check = {
  rule: 'photo-without-words',
  severity: 'warning',
  why: 'A caption says why a picture was taken; `alt` says it to those who can’t see it.',
  run: ({ entries }) =>
    entries.flatMap((entry) => {
      const wordless = photosWithoutWords(entry);
      const [first] = wordless;
      if (!first) return [];
      return [
        { place: first.place, reason: lacking(first.file, wordless), mend: 'A short sentence is enough.' },
      ];
    }),
};

/** The pictures of an entry that lack their caption, their `alt` or both. */
export function photosWithoutWords({ photos = [] }: Entry): NonNullable<Entry['photos']> {
  return photos.filter(({ caption, alt }) => !caption || !alt);
}

function lacking(first: string, photos: NonNullable<Entry['photos']>): string {
  const without = (['caption', 'alt'] as const)
    .map((key) => ({ key, count: photos.filter((photo) => !photo[key]).length }))
    .filter(({ count }) => count > 0);
  const more = photos.length - 1;
  const which = `\`${first}\`${more > 0 ? ` and ${more} ${more === 1 ? 'other' : 'others'}` : ''}`;
  if (without.every(({ count }) => count === photos.length)) {
    return `${which} ${more > 0 ? 'have' : 'has'} no ${without.map(({ key }) => `\`${key}\``).join(' and no ')}.`;
  }
  const [captions, alts] = without.map(({ count }) => count);
  return `${which} lack words: ${captions} have no \`caption\`, ${alts} no \`alt\`.`;
}
