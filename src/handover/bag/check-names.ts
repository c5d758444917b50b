// What names of files do on other disks: letters with accents are written in two ways, and some disks don't tell
// capitals apart. A listed file is found under either way of writing.
import { formOf } from './form.ts';
import type { Entry } from './read-tags.ts';
import { UNFINISHED } from './unfinished.ts';
import type { Found } from './walk.ts';

type Manifest = { tags: boolean; entries: Entry[] };

/** The entries with the paths as the disk has them. */
export function asOnDisk<M extends Manifest>(manifests: readonly M[], there: readonly Found[]): M[] {
  const exact = new Set(there.map(({ path }) => path));
  const byForm = new Map(there.map(({ path }) => [path.normalize('NFC'), path]));
  const onDisk = (path: string) => (exact.has(path) ? path : (byForm.get(path.normalize('NFC')) ?? path));
  return manifests.map((manifest) => ({
    ...manifest,
    entries: manifest.entries.map((entry) => ({ ...entry, path: onDisk(entry.path) })),
  }));
}

/** What is no fault, but a keeper of the bag should know. */
export function notesOn(manifests: readonly Manifest[], there: readonly Found[]): string[] {
  const tagged = manifests.filter(({ tags }) => tags);
  const listed = new Set(tagged.flatMap(({ entries }) => entries.map(({ path }) => path)));
  const free = there
    .map(({ path }) => path)
    .filter((path) => !path.startsWith('data/') && !path.startsWith('tagmanifest-') && !listed.has(path));
  const told = tagged.length > 0 ? free : free.filter((path) => path === UNFINISHED);
  const clashes = [...Map.groupBy(there, ({ path }) => formOf(path)).values()].filter(
    (same) => same.length > 1,
  );
  return [
    ...told.map((path) =>
      path === UNFINISHED
        ? 'The hand-over was interrupted: give its command again, and it goes on.'
        : `${path} is in no tag manifest, so nothing can be said of it.`,
    ),
    ...there
      .filter(({ path }) => path !== path.normalize('NFC'))
      .map(
        ({ path }) =>
          `${path}: its accents are written apart from their letters (NFD); other disks may join them.`,
      ),
    ...clashes.map((same) => `${same.map(({ path }) => path).join(' and ')} are one name to many disks.`),
  ];
}
