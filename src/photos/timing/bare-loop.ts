// The same two pictures with nothing around them: what making is measured against. Nothing is looked up, read for its
// date, looked through again or put in place whole.
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { EFFORT, SIZES } from '../plan.ts';
import { AT_ONCE, eachInTurn } from '../turns.ts';

/** Writes two pictures of each file into `out`, as many side by side as making does. */
export async function bareLoop(folder: string, files: readonly string[], out: string): Promise<void> {
  const { large, small } = SIZES;
  await mkdir(out, { recursive: true });
  await eachInTurn(files, AT_ONCE, async (file) => {
    const { data, info } = await sharp(join(folder, file))
      .autoOrient()
      .resize({ width: large.width, height: large.height, fit: 'inside', withoutEnlargement: true })
      .toColorspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    const raw = { width: info.width, height: info.height, channels: info.channels };
    const name = join(out, file.replaceAll('/', '-'));
    await sharp(data, { raw }).webp({ quality: large.quality, effort: EFFORT }).toFile(`${name}-large.webp`);
    await sharp(data, { raw })
      .resize({ width: small.width, height: small.height, fit: 'inside', withoutEnlargement: true })
      .webp({ quality: small.quality, effort: EFFORT })
      .toFile(`${name}-small.webp`);
  });
}
