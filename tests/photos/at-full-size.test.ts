import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import ExifReader from 'exifreader';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { atFullSize, fullSizeName } from '../../src/photos/at-full-size.ts';
import { cameraCarries } from '../../src/photos/camera-carries.ts';
import { xmpOf } from '../../src/photos/picture-words.ts';
import { emptyFolder } from '../commands/run.ts';
import { short } from './exif.ts';
import { colorAt, exifSegment, jpeg, laden, SECRETS, scene } from './pictures.ts';

const XMP = xmpOf({
  title: 'Aldermere Fourteen',
  caption: 'Lower lip, before & after <lead>.',
  alt: 'A rusty "edge".',
  day: '2025-04-16',
  by: 'Harrow Bend Coachworks',
});

async function filed(name: string, bytes: Buffer): Promise<string> {
  const path = join(await emptyFolder(), name);
  await writeFile(path, bytes);
  return path;
}

describe('a camera file at its own size', () => {
  it('carries nothing that the camera wrote, whatever that was', async () => {
    for (const [name, bytes] of await laden()) {
      const picture = await atFullSize(await filed(name, bytes), XMP);
      for (const secret of SECRETS) expect(picture.includes(secret), `${name}: ${secret}`).toBe(false);
      const { exif, gps, iptc, icc, Thumbnail, makerNotes, ...tags } = await ExifReader.load(picture, {
        expanded: true,
        async: true,
      });
      expect({ exif, gps, iptc, icc, Thumbnail, makerNotes }, name).toEqual({});
      expect('mpf' in tags, name).toBe(false);
      expect((await sharp(picture).metadata()).width, name).toBe(96);
    }
  });

  it('carries the words of the record, as a reader of pictures finds them', async () => {
    for (const format of ['jpeg', 'png', 'webp'] as const) {
      const name = `a.${format}`;
      const bytes = await sharp(await jpeg())
        .toFormat(format)
        .toBuffer();
      const { xmp } = await ExifReader.load(await atFullSize(await filed(name, bytes), XMP), {
        expanded: true,
        async: true,
      });
      expect(xmp?.description?.description, name).toBe('Lower lip, before & after <lead>.');
      expect(xmp?.AltTextAccessibility?.description, name).toBe('A rusty "edge".');
      expect(xmp?.DateCreated?.description, name).toBe('2025-04-16');
      expect(xmp?.creator?.description, name).toBe('Harrow Bend Coachworks');
    }
  });

  it('stands upright', async () => {
    // EXIF orientation 6: the top of the scene is on the right, and has to be turned a quarter (CIPA DC-008).
    const turned = await jpeg([exifSegment({ picture: [short(0x0112, 6)] })]);
    const picture = await atFullSize(await filed('a.jpg', turned), XMP);
    const { width, height } = await sharp(picture).metadata();
    expect([width, height]).toEqual([64, 96]);
    const [red = 0, green = 0] = await colorAt(picture, 0.75, 0.25);
    expect(red).toBeGreaterThan(green + 100);
  });

  it('is what its name says, and has another name where it can’t be', async () => {
    expect(['a.JPG', 'b.jpeg', 'c.png', 'd.webp'].map(fullSizeName)).toEqual([
      'a.JPG',
      'b.jpeg',
      'c.png',
      'd.webp',
    ]);
    expect(['a.tif', 'b.gif', 'c.avif'].map(fullSizeName)).toEqual(['a.tif.png', 'b.gif.png', 'c.avif.png']);
    const wrong = await atFullSize(await filed('really-jpeg.png', await jpeg()), XMP);
    expect((await sharp(wrong).metadata()).format).toBe('png');
  });

  it('comes as far as it can be read when it is damaged, and not at all when it is none', async () => {
    const whole = await scene(800, 600).jpeg().toBuffer();
    const picture = await atFullSize(await filed('cut.jpg', whole.subarray(0, whole.length - 2000)), XMP);
    expect((await sharp(picture).metadata()).width).toBe(800);
    await expect(atFullSize(await filed('none.jpg', Buffer.from('no picture')), XMP)).rejects.toThrow();
  });

  it('is the same file each time', async () => {
    const path = await filed('a.jpg', await jpeg());
    expect((await atFullSize(path, XMP)).equals(await atFullSize(path, XMP))).toBe(true);
  });
});

describe('what camera files carry', () => {
  it('is told kind by kind, with the number of files', async () => {
    const folder = await emptyFolder();
    const files = [...(await laden())];
    for (const [name, bytes] of files) await writeFile(join(folder, name), bytes);
    await writeFile(join(folder, 'plain.jpg'), await jpeg());
    await writeFile(join(folder, 'none.jpg'), 'no picture');
    const carried = await cameraCarries(folder, [...files.map(([name]) => name), 'plain.jpg', 'none.jpg']);
    // Counted by hand from what each of the files was made to carry.
    expect(carried).toEqual([
      { what: 'the place (GPS)', files: 2 },
      { what: 'a person’s name', files: 3 },
      { what: 'the camera’s make or model', files: 1 },
      { what: 'the time', files: 1 },
      { what: 'notes of the camera’s own', files: 1 },
      { what: 'words put in by a program', files: 3 },
      { what: 'a small picture of its own', files: 1 },
      { what: 'a second picture behind the first', files: 2 },
    ]);
  });
});
