// Puts web pictures beside the pages. Each is looked through once more: nothing leaves that carries anything. One that
// lies in the last site as it was put there is taken from there.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { onDisk } from '../disk/disk-fault.ts';
import { isStill, linked, signOf } from '../disk/linked.ts';
import type { WebPhoto } from '../views/photos.ts';
import { carried } from './carried.ts';
import { photoCache } from './make.ts';

/** Pictures that were published, by name: which file each is, its size and its time. */
export type Published = Map<string, string>;

/** What lies in the last site: the folder of its pictures, and what was put there. */
export type LastPublished = { folder: string; published: Published };

/** True while the last site has these pictures as they were published, and no other file beside them. */
export function stillPublished(photos: Iterable<WebPhoto>, { folder, published }: LastPublished): boolean {
  const names = namesIn(photos);
  if (names.size !== published.size || names.size === 0) return false;
  try {
    if (readdirSync(folder).some((name) => !names.has(name))) return false;
  } catch {
    return false;
  }
  return [...names].every((name) => isStill(join(folder, name), published.get(name) ?? ''));
}

/** The files of pictures: both sizes of each. */
function namesIn(photos: Iterable<WebPhoto>): Set<string> {
  return new Set([...photos].flatMap(({ file, small }) => [basename(file), basename(small.file)]));
}

/**
 * Writes both sizes of each picture into `out`, and gives what lies there. A name says what a picture was made from, so
 * one of the `last` site is linked while its file is the one that was published. Throws when a kept picture isn't the bare
 * one that was made.
 */
export async function publishPhotos(
  photos: Iterable<WebPhoto>,
  out: string,
  { cache = photoCache, last }: { cache?: string; last?: LastPublished } = {},
): Promise<Published> {
  await onDisk(out, () => mkdir(out, { recursive: true }));
  const names = namesIn(photos);
  const published: Published = new Map();
  const others = [...names].filter((name) => {
    const sign = last?.published.get(name);
    if (!last || sign === undefined || !linked(join(last.folder, name), join(out, name), sign)) return true;
    published.set(name, sign);
    return false;
  });
  // Without waiting in turns: of thousands of small files the turns would take longer than the copying.
  for (const name of others) {
    const webp = bare(join(cache, name), cache);
    await onDisk(join(out, name), async () => writeFileSync(join(out, name), webp));
    published.set(name, signOf(join(out, name)));
  }
  return published;
}

/** A kept picture, looked through once more. */
function bare(path: string, cache: string): Buffer {
  const webp = readFileSync(path);
  const what = carried(webp);
  if (what.length > 0) {
    throw new Error(
      `${path} carries more than a picture (${what.join(', ')}), so the site isn’t published. Remove ${cache} and build again.`,
    );
  }
  return webp;
}
