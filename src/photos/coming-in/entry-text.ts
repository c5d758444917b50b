// Adds pictures to the text of a day's entry, and touches nothing else in it.
import { splitFrontMatter } from '../../record/front-matter.ts';
import { sheets } from '../../record/schema/sheets.ts';
import { changedText } from '../../record/writing/change.ts';

/** The text of a new entry that holds nothing but pictures. */
export function entryWith(files: readonly string[]): string {
  return withPhotos('', files) ?? '';
}

/**
 * The entry with these pictures at the end of its `photos`, each with empty keys that show what is still to be said;
 * one that stands there already isn't added again. Nothing when the entry can't be added to safely.
 */
export function withPhotos(text: string, files: readonly string[]): string | undefined {
  const { photos } = splitFrontMatter('', text).values;
  const there = new Set(Array.isArray(photos) ? photos.map(({ file }) => file) : []);
  const fresh = files.filter((file) => !there.has(file)).map((file) => ({ file, caption: null, alt: null }));
  if (fresh.length === 0) return text;
  const edits = Array.isArray(photos)
    ? fresh.map((item) => ({ add: ['photos'], item }))
    : photos === undefined
      ? [{ set: ['photos'], value: fresh }]
      : undefined;
  return edits && changedText(text, edits, sheets.entry);
}
