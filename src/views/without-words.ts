// The pictures that still lack their words, by entry: what the check tells the writer, in full.
import { photosWithoutWords } from '../record/checks/photo-without-words.ts';
import type { CarRecord } from '../record/record.ts';
import { datedText } from './dated.ts';
import { page } from './links.ts';
import { photographs } from './shot-words.ts';

/** An entry with the names of its pictures that have no caption, and of those that have no `alt`. */
export type WithoutWords = { day: string; page: string; caption: string[]; alt: string[] };

/** Entries with a picture that lacks words, oldest first, and a sentence about them all. */
export function withoutWords(record: CarRecord): { said: string; rows: WithoutWords[] } {
  const lacking = record.entries.flatMap((entry) => {
    const photos = photosWithoutWords(entry);
    return photos.length > 0 ? [{ entry, photos }] : [];
  });
  const count = lacking.reduce((total, { photos }) => total + photos.length, 0);
  return {
    said:
      count === 0
        ? 'Every picture has a caption, and words for those who can’t see it.'
        : `${photographs(count)} ${count === 1 ? 'lacks' : 'lack'} words. Write \`caption\` and \`alt\` in the entry; before the car is handed over all must have them.`,
    rows: lacking.map(({ entry, photos }) => ({
      day: datedText(entry.day),
      page: page.day(entry.id),
      caption: photos.flatMap(({ file, caption }) => (caption ? [] : [file])),
      alt: photos.flatMap(({ file, alt }) => (alt ? [] : [file])),
    })),
  };
}
