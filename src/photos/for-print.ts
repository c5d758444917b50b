// Pictures for print: made from the web pictures, which carry nothing, as JPEGs, which a printed book can hold as
// they are.
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { photoCache } from './make.ts';
import { AT_ONCE, eachInTurn } from './turns.ts';

/** Enough for a plate half a page wide: 300 dots to the inch on three inches, and some to spare. */
const WIDEST = 1200;
const QUALITY = 82;

/** The JPEGs of web pictures, given as pages name them (`pictures/…-large.webp`), by that name. */
export async function printPictures(
  files: readonly string[],
  cache = photoCache,
): Promise<Map<string, Buffer>> {
  const pictures = new Map<string, Buffer>();
  await eachInTurn([...new Set(files)], AT_ONCE, async (file) => {
    const web = await readFile(join(cache, basename(file)));
    const print = sharp(web).resize({
      width: WIDEST,
      height: WIDEST,
      fit: 'inside',
      withoutEnlargement: true,
    });
    pictures.set(file, await print.jpeg({ quality: QUALITY }).toBuffer());
  });
  return pictures;
}
