// Makes the two web pictures of a camera file in memory: decoded once, upright, sRGB, first frame, nothing but the
// picture.
import sharp, { type Sharp } from 'sharp';
import { EFFORT, SIZES } from './plan.ts';
import { MOST_PIXELS, type Verdict } from './verdict.ts';

sharp.cache(false);
sharp.concurrency(1);

export type Picture = { webp: Buffer; width: number; height: number };
export type Pictures = { large: Picture; small: Picture; damaged: boolean };

/** Both pictures of a camera file. What is damaged is decoded as far as it goes, and marked. */
export async function webPictures(camera: Buffer): Promise<Pictures | Verdict> {
  try {
    return { ...(await bothSizes(camera, 'error')), damaged: false };
  } catch {
    try {
      return { ...(await bothSizes(camera, 'none')), damaged: true };
    } catch {
      return { why: 'unreadable' };
    }
  }
}

async function bothSizes(camera: Buffer, failOn: 'error' | 'none') {
  const upright = sharp(camera, { failOn, limitInputPixels: MOST_PIXELS, sequentialRead: true })
    .autoOrient()
    .resize({ width: SIZES.large.width, height: SIZES.large.height, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .toColorspace('srgb')
    .raw();
  const { data, info } = await upright.toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: info.height, channels: info.channels };
  const { width, height } = SIZES.small;
  const smaller = sharp(data, { raw }).resize({ width, height, fit: 'inside', withoutEnlargement: true });
  return {
    large: await encoded(sharp(data, { raw }), SIZES.large.quality),
    small: await encoded(smaller, SIZES.small.quality),
  };
}

async function encoded(picture: Sharp, quality: number): Promise<Picture> {
  const made = picture.webp({ quality, effort: EFFORT });
  const { data, info } = await made.toBuffer({ resolveWithObject: true });
  return { webp: data, width: info.width, height: info.height };
}
