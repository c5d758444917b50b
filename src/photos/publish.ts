// Puts web pictures beside the pages. Each is looked through once more: nothing leaves that carries anything.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { WebPhoto } from '../views/photos.ts';
import { carried } from './carried.ts';
import { photoCache } from './make.ts';
import { AT_ONCE, eachInTurn } from './turns.ts';

/** Writes both sizes of each picture into `out`. Throws when a kept picture isn't the bare one that was made. */
export async function publishPhotos(
  photos: Iterable<WebPhoto>,
  out: string,
  cache = photoCache,
): Promise<void> {
  await mkdir(out, { recursive: true });
  const names = new Set([...photos].flatMap(({ file, small }) => [basename(file), basename(small.file)]));
  await eachInTurn([...names], AT_ONCE, async (name) => {
    const webp = await readFile(join(cache, name));
    const what = carried(webp);
    if (what.length > 0) {
      throw new Error(
        `${join(cache, name)} carries more than a picture (${what.join(', ')}), so the site isn’t published. Remove ${cache} and build again.`,
      );
    }
    await writeFile(join(out, name), webp);
  });
}
