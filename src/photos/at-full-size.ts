// Camera files at their own size for a hand-over: decoded and encoded again, so that no place, no camera's number, no
// thumbnail and no second picture goes along; the only words in them are those that the record gives.
import { readFile } from 'node:fs/promises';
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { kindOf } from './kind.ts';
import { MOST_PIXELS } from './verdict.ts';

/** Changes when pictures are encoded in another way. */
export const FULL_SIZE_RECIPE = 'full size 1: jpeg 92, png, webp 92';

/** The name under which a camera file is handed over: its own, unless it can't be encoded as what it is. */
export function fullSizeName(file: string): string {
  return /\.(?:jpe?g|png|webp)$/i.test(file) ? file : `${file}.png`;
}

/**
 * The picture upright, of its own size and in its own format, with the XMP packet in it. Throws when it can't be
 * decoded at all, and when what came out carries anything else.
 */
export async function atFullSize(path: string, xmp: string): Promise<Buffer> {
  const camera = await readFile(path);
  const picture = await encoded(camera, path, xmp, 'error').catch(() => encoded(camera, path, xmp, 'none'));
  const beside = await carriedBeside(picture, xmp);
  if (beside.length > 0) {
    throw new Error(
      `${path} came out with more than its picture and its words in it (${beside.join(', ')}).`,
    );
  }
  return picture;
}

async function encoded(camera: Buffer, path: string, xmp: string, failOn: 'error' | 'none'): Promise<Buffer> {
  const upright = sharp(camera, { failOn, limitInputPixels: MOST_PIXELS, sequentialRead: true })
    .autoOrient()
    .toColorspace('srgb');
  const name = fullSizeName(path).toLowerCase();
  if (name.endsWith('.png')) return withPngWords(await upright.png().toBuffer(), xmp);
  if (name.endsWith('.webp')) {
    const lossless = !['jpeg', 'webp'].includes(kindOf(camera) ?? '');
    return upright.withXmp(xmp).webp({ quality: 92, effort: 2, lossless }).toBuffer();
  }
  const bare = upright.flatten({ background: '#fff' }).withXmp(xmp);
  return bare.jpeg({ quality: 92, chromaSubsampling: '4:4:4' }).toBuffer();
}

/** XMP stands in a PNG as an iTXt chunk that isn't packed (ISO 16684-1; PNG, third edition, 11.3.3.4), after the header. */
function withPngWords(png: Buffer, xmp: string): Buffer {
  const header = 8 + 12 + png.readUInt32BE(8);
  const chunk = Buffer.concat([Buffer.from('iTXtXML:com.adobe.xmp\0\0\0\0\0', 'latin1'), Buffer.from(xmp)]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(chunk.length - 4);
  sum.writeUInt32BE(crc32(chunk));
  return Buffer.concat([png.subarray(0, header), length, chunk, sum, png.subarray(header)]);
}

/** What a picture carries beside itself and one XMP packet. */
async function carriedBeside(picture: Buffer, xmp: string): Promise<string[]> {
  const about = await sharp(picture).metadata();
  return [
    ...(['exif', 'icc', 'iptc', 'tifftagPhotoshop'] as const).filter((block) => about[block] !== undefined),
    ...(about.xmp?.toString('utf8').trim() === xmp ? [] : ['other XMP']),
    ...((about.pages ?? 1) > 1 ? ['more pictures'] : []),
  ];
}
