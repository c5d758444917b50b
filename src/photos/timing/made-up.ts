// Camera files for timing: as large as a phone's, each another picture, made up from a seed.
import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import sharp from 'sharp';
import { AT_ONCE, eachInTurn } from '../turns.ts';

/** Twelve million pixels. */
const [WIDTH, HEIGHT] = [4000, 3000];
/** The pictures are cut from one that is this much wider and higher, each at a place of its own. */
const MARGIN = 400;

/** Writes so many different JPEGs under `photos/` of a folder; gives their paths relative to it. */
export async function madeUpPhotos(folder: string, count: number, seed: number): Promise<string[]> {
  const raw = { width: WIDTH + MARGIN, height: HEIGHT + MARGIN, channels: 3 as const };
  const whole = canvas(raw.width, raw.height, seed);
  const files = Array.from(
    { length: count },
    (_, i) => `photos/2025-04-${two((i % 28) + 1)}/IMG_${1000 + i}.jpg`,
  );
  for (const file of files.slice(0, 28)) await mkdir(dirname(join(folder, file)), { recursive: true });
  await eachInTurn([...files.entries()], AT_ONCE, async ([i, file]) => {
    const place = { left: i % MARGIN, top: (i * 7) % MARGIN, width: WIDTH, height: HEIGHT };
    const taken = `2025:04:${two((i % 28) + 1)} 09:${two(i % 60)}:00`;
    await sharp(whole, { raw })
      .extract(place)
      .withExif({ IFD2: { DateTimeOriginal: taken, OffsetTimeOriginal: '-05:00' } })
      .jpeg({ quality: 88 })
      .toFile(join(folder, file));
  });
  return files;
}

/** One JPEG of that size, of less than a megabyte: a wall in soft light, with a moment in the camera's own writing. */
export async function sceneJpeg(seed: number, moment: string): Promise<Buffer> {
  return sharp(canvas(WIDTH, HEIGHT, seed, 5), { raw: { width: WIDTH, height: HEIGHT, channels: 3 } })
    .withExif({ IFD2: { DateTimeOriginal: moment } })
    .jpeg({ quality: 82 })
    .toBuffer();
}

/** Soft shades with edges and grain, which compress about as a photograph does. */
function canvas(width: number, height: number, seed: number, coarse = 16): Buffer {
  const random = xoroshiro128plus(seed);
  const grain = Int8Array.from({ length: 65_537 }, () => uniformInt(random, -coarse, coarse));
  const pixels = Buffer.alloc(width * height * 3);
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at += 3) {
      const edge = ((x >> 7) ^ (y >> 7)) % 5 === 0 ? 40 : 0;
      const shade = 110 + 60 * Math.sin(x / 310) * Math.cos(y / 270) + edge + (grain[at % 65_537] ?? 0);
      pixels[at] = shade;
      pixels[at + 1] = shade * 0.9 + 14;
      pixels[at + 2] = shade * 0.75 + 24;
    }
  }
  return pixels;
}

const two = (figure: number) => String(figure).padStart(2, '0');
