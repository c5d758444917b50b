// Remembers what each camera file's bytes came to, so that a record of thousands isn't read through every time. A
// file is taken as known while its path, size and times stand; else its content decides.
import { createHash } from 'node:crypto';
import type { Stats } from 'node:fs';
import { readFile, realpath, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** A file's content hash by path relative to the record's folder, with the size and times it was read at. */
export type Seen = Map<string, Sight>;
/** The size and times that a file was read at, and the hash of its content then. */
export type Sight = { size: number; changed: string; content: string };

export const sight = (stats: Stats, content: string): Sight => ({
  size: stats.size,
  changed: changedAt(stats),
  content,
});

/** The times of a file. The second can't be set by hand, so a copy with an old date doesn't pass for the same. */
export function changedAt({ mtimeMs, ctimeMs }: Stats): string {
  return `${mtimeMs} ${ctimeMs}`;
}

/** The content of a file as it was seen; nothing when it may have changed since. */
export function seenContent(seen: Seen, file: string, stats: Stats): string | undefined {
  const known = seen.get(file);
  return known?.size === stats.size && known.changed === changedAt(stats) ? known.content : undefined;
}

/** What was seen of a record. A memory that isn't there or can't be read is empty: it only saves time. */
export async function readSeen(cache: string, folder: string): Promise<Seen> {
  try {
    const { seen } = JSON.parse(await readFile(await seenFile(cache, folder), 'utf8'));
    return new Map(seen as Iterable<[string, Sight]>);
  } catch {
    return new Map();
  }
}

/** True when the same files were seen in the same way. */
export function sameSeen(one: Seen, other: Seen): boolean {
  const isAsSeen = ([file, { size, changed, content }]: [string, Sight]) => {
    const known = other.get(file);
    return known?.size === size && known.changed === changed && known.content === content;
  };
  return one.size === other.size && [...one].every(isAsSeen);
}

/** Keeps it, written in `work` and put in place whole. */
export async function writeSeen(cache: string, work: string, folder: string, seen: Seen): Promise<void> {
  const writing = join(work, 'seen.json');
  await writeFile(writing, JSON.stringify({ seen: [...seen].sort(([a], [b]) => (a < b ? -1 : 1)) }));
  await rename(writing, await seenFile(cache, folder));
}

/** One memory for each record; caches of several are merged by copying. */
async function seenFile(cache: string, folder: string): Promise<string> {
  const name = createHash('sha256')
    .update(await realpath(folder))
    .digest('hex')
    .slice(0, 12);
  return join(cache, `seen-${name}.json`);
}
