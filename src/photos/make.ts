// Makes one web picture of each camera file: upright, sRGB, without metadata. Camera files are only read.
import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Photos, WebPhoto } from '../views/photos.ts';

sharp.cache(false);
sharp.concurrency(1);

/** Where web pictures are kept, named by what they were made from. */
export const photoCache = join('.cache', 'photos');
const WIDTH = 1200;
const AT_ONCE = 2;

/** The web pictures of a record's camera files; those made before are not made again. */
export async function makePhotos(folder: string, files: readonly string[]): Promise<Photos> {
  await mkdir(photoCache, { recursive: true });
  const made = new Map<string, WebPhoto>();
  const waiting = [...files];
  const worker = async () => {
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      const photo = await makeOne(join(folder, file));
      if (photo) made.set(file, photo);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return made;
}

async function makeOne(path: string): Promise<WebPhoto | undefined> {
  const camera = await readFile(path);
  const name = `${createHash('sha256').update(camera).update(String(WIDTH)).digest('hex').slice(0, 24)}.webp`;
  const kept = join(photoCache, name);
  try {
    if (!(await stat(kept).catch(() => undefined))) {
      const web = await sharp(camera, { failOn: 'error' })
        .autoOrient()
        .resize({ width: WIDTH, withoutEnlargement: true })
        .toColorspace('srgb')
        .webp({ quality: 78 })
        .toBuffer();
      const writing = `${kept}.${process.pid}`;
      await writeFile(writing, web);
      await rename(writing, kept);
    }
    const { width, height } = await sharp(kept).metadata();
    return { file: `photos/${name}`, width, height };
  } catch (error) {
    console.warn(`${path}: this picture can’t be read (${(error as Error).message}), so it isn’t shown.`);
    return undefined;
  }
}
