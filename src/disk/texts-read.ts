// Remembers the texts of a folder that is read again and again: one whose size and times stand isn't read anew.
import { changedAt } from '../photos/seen.ts';
import type { Problem } from '../record/place.ts';
import type { WrittenFile } from '../record/record.ts';
import type { ReadsText } from './folder.ts';
import { readText } from './read-text.ts';

/** A file this young is read the next time too: it may change again within what the disk tells times by, in milliseconds. */
const YOUNG = 2000;

/** Gives what reads texts, anew for each reading of the folder; it forgets those that the reading before didn't meet. */
export function textsRead(clock: () => number = Date.now): () => ReadsText {
  let known = new Map<string, { as: string; read: WrittenFile | Problem }>();
  return () => {
    const before = known;
    const now: typeof known = new Map();
    known = now;
    return (path, file, about) => {
      const as = `${about.size} ${changedAt(about)}`;
      const last = before.get(path);
      const old = clock() - Math.max(about.mtimeMs, about.ctimeMs) > YOUNG;
      const read = last?.as === as ? last.read : readText(path, file, about.size);
      if (old) now.set(path, { as, read });
      return read;
    };
  };
}
