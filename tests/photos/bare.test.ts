import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../../src/photos/carried.ts';
import { laden, SECRETS, scene } from './pictures.ts';
import { recordOf } from './record-of.ts';

const chunk = (name: string, held: Buffer) => {
  const size = Buffer.alloc(4);
  size.writeUInt32LE(held.length);
  return Buffer.concat([Buffer.from(name, 'latin1'), size, held, Buffer.alloc(held.length % 2)]);
};
const riff = (...chunks: Buffer[]) => chunk('RIFF', Buffer.concat([Buffer.from('WEBP'), ...chunks]));
const header = (bits: number) => chunk('VP8X', Buffer.from([bits, 0, 0, 0, 95, 0, 0, 63, 0, 0]));

let plain: Buffer;
/** The chunk that holds the picture, as the encoder wrote it. */
let picture: Buffer;
beforeAll(async () => {
  plain = await scene().webp().toBuffer();
  picture = plain.subarray(12);
});

describe('a web picture', () => {
  it('carries nothing when it is the bare picture, with or without a see-through part', async () => {
    expect(carried(plain)).toEqual([]);
    expect(carried(riff(picture))).toEqual([]);
    expect(carried(await scene().ensureAlpha(0.5).webp().toBuffer())).toEqual([]);
    expect(carried(await scene().webp({ lossless: true }).toBuffer())).toEqual([]);
  });

  // The chunks and the bits of the header are those of the WebP container's specification.
  it.each([
    ['EXIF', 0x08],
    ['XMP ', 0x04],
    ['ICCP', 0x20],
    ['ANIM', 0x02],
    ['ANMF', 0x02],
    ['GPS ', 0],
  ])('is refused for a chunk %s, and for the bit that promises it', (name, bit) => {
    expect(carried(riff(header(0), picture, chunk(name, Buffer.from('held'))))).toEqual([name.trim()]);
    if (bit > 0) expect(carried(riff(header(bit), picture))).toEqual(['VP8X flags']);
  });

  it('is refused for a second picture, for bytes behind it, and for less than it says', () => {
    expect(carried(riff(picture, picture))).toEqual(['2 pictures']);
    expect(carried(Buffer.concat([plain, Buffer.from('hidden')]))).toEqual(['bytes beside the picture']);
    expect(carried(plain.subarray(0, plain.length - 2))).toEqual(['bytes beside the picture']);
    expect(carried(riff())).toEqual(['0 pictures']);
  });

  it('is refused when it is something else', async () => {
    expect(carried(await scene().jpeg().toBuffer())).toEqual(['no WebP picture']);
    expect(carried(Buffer.alloc(0))).toEqual(['no WebP picture']);
  });
});

describe('a camera file that carries something', () => {
  it('gives web pictures that carry nothing, and stays as it was', async () => {
    const files = await laden();
    const making = await recordOf(files);
    const made = await making.make();
    expect(made.problems).toEqual([]);
    expect(made.made).toBe(files.size);
    for (const [name, before] of files) {
      const { large, small } = await making.webOf(made, `photos/${name}`);
      for (const web of [large, small]) {
        expect(carried(web), name).toEqual([]);
        // A second reader of the same file agrees.
        const { exif, xmp, icc, iptc, xmpAsString, pages, orientation } = await sharp(web).metadata();
        expect({ exif, xmp, icc, iptc, xmpAsString, pages, orientation }, name).toEqual({});
        expect(
          SECRETS.filter((secret) => web.includes(secret)),
          name,
        ).toEqual([]);
        expect(web.includes('Exif') || web.includes('http'), name).toBe(false);
      }
      expect((await readFile(join(making.folder, 'photos', name))).equals(before), name).toBe(true);
    }
  });

  it('really carries it, so that the test above is worth something', async () => {
    const files = await laden();
    const metadata = async (name: string) => sharp(files.get(name)).metadata();
    for (const name of ['gps.jpg', 'maker-note.jpg', 'thumbnail.jpg', 'png-text.png', 'webp-exif.webp']) {
      expect((await metadata(name)).exif?.length, name).toBeGreaterThan(20);
    }
    expect((await metadata('xmp.jpg')).xmpAsString).toContain('secret-xmp');
    expect((await metadata('iptc.jpg')).iptc?.toString('latin1')).toContain('secret-iptc');
    expect((await metadata('profile.jpg')).icc?.length).toBeGreaterThan(100);
    expect(files.get('tiff-exif.tif')?.includes('secret-maker')).toBe(true);
    for (const name of ['second-picture.jpg', 'gain-map.jpg'])
      expect(files.get(name)?.includes('secret-second'), name).toBe(true);
  });
});
