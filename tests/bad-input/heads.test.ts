// Heads of camera files, broken by hand and at random: each is told in a sentence or read, and none makes the reader wait,
// fall or fill the memory.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { isDay } from '../../src/figures/days.ts';
import { cameraFacts } from '../../src/photos/camera-facts.ts';
import { kindOf } from '../../src/photos/kind.ts';
import { measured, measuredFile } from '../../src/photos/measured.ts';
import { photoProblem } from '../../src/photos/verdict.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { exif, fractions, long, short, text } from '../photos/exif.ts';
import { boxed, exifSegment, jpeg, laden, pngOfSize, scene, segment, tiff } from '../photos/pictures.ts';
import { PATIENCE, tries } from './size.ts';
import { unsound } from './sound.ts';

const FILE = 'photos/2025-03-03/a.jpg';
let path: string;
let seeds: Buffer[];

beforeAll(async () => {
  const { folder, remove } = await emptyFolderFor('heads');
  path = join(folder, 'a.jpg');
  const dated = exifSegment({ picture: [short(0x0112, 6)], shot: [text(0x9003, '2025:04:16 09:30:00')] });
  seeds = [
    ...(await laden()).values(),
    await jpeg([dated]),
    await scene().png().toBuffer(),
    await scene().webp().toBuffer(),
    await scene().avif({ effort: 0 }).toBuffer(),
    await scene().gif().toBuffer(),
    await tiff({ picture: [short(0x0112, 6)] }),
    boxed('heic', 'mif1'),
  ];
  return remove;
});

/** What is wrong with the way in which bytes are answered. */
async function wrongWith(bytes: Buffer): Promise<string[]> {
  await writeFile(path, bytes);
  const [one, other] = [await measuredFile(path), await measured(bytes)];
  const facts = cameraFacts(bytes);
  const said = [one, other].flatMap((verdict) => ('why' in verdict ? [photoProblem(FILE, verdict)] : []));
  const { taken, turned } = facts;
  return [
    ...unsound(said, new Map([[FILE, undefined]])),
    ...[one, other].filter((v) => 'pixels' in v && !(v.pixels > 0)).map((v) => `pixels ${JSON.stringify(v)}`),
    ...(taken === undefined || isDay(taken.slice(0, 10)) ? [] : [`taken ${taken}`]),
    ...(turned === undefined || (turned >= 2 && turned <= 8) ? [] : [`turned ${turned}`]),
  ];
}

const u16 = (figure: number) => Buffer.from([figure >> 8, figure & 255]);
/** EXIF whose directory says what a test wants of it: entries of id, type, count and value, and the next directory. */
const directory = (entries: [number, number, number, number][], next: number) =>
  Buffer.concat([
    Buffer.from('MM\0*\0\0\0\x08', 'latin1'),
    u16(entries.length),
    ...entries.map(([id, type, count, value]) => {
      const entry = Buffer.alloc(12);
      entry.writeUInt16BE(id, 0);
      entry.writeUInt16BE(type, 2);
      entry.writeUInt32BE(count, 4);
      entry.writeUInt32BE(value, 8);
      return entry;
    }),
    Buffer.from([next >>> 24, (next >> 16) & 255, (next >> 8) & 255, next & 255]),
  ]);
const withExif = (tags: Buffer) => jpeg([segment(0xe1, 'Exif\0\0', tags)]);

const HEADS: [what: string, bytes: () => Buffer | Promise<Buffer>, says: RegExp | undefined][] = [
  ['no bytes', () => Buffer.alloc(0), /is empty/],
  ['one byte', () => Buffer.from([0xff]), /no picture/],
  ['a text by a picture’s name', () => Buffer.from('Stripped it.\n'), /no picture/],
  ['a page by a picture’s name', () => Buffer.from('<!doctype html><script>hit()</script>'), /no picture/],
  [
    'a drawing by a picture’s name',
    () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="hit()"/>'),
    /no picture/,
  ],
  ['NUL bytes', () => Buffer.alloc(4096), /no picture/],
  ['the first three bytes of a JPEG', () => Buffer.from([0xff, 0xd8, 0xff]), /damaged from its beginning/],
  [
    'the first bytes of a PNG',
    () => Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    /damaged from its beginning/,
  ],
  [
    'a WebP that is longer than its file',
    () => Buffer.from('RIFF\xff\xff\xff\xffWEBPVP8 \xff\xff\xff\xff', 'latin1'),
    /damaged from its beginning/,
  ],
  [
    'a TIFF without a directory',
    () => Buffer.from('II*\0\xff\xff\xff\xff', 'latin1'),
    /damaged from its beginning/,
  ],
  ['an HEIC head', () => boxed('heic'), /HEIC/],
  ['an HEIC box without an end', () => Buffer.from('\xff\xff\xff\xffftypheic', 'latin1'), /HEIC/],
  ['65,535 by 65,535 pixels in a few bytes', () => pngOfSize(65_535, 65_535), /65535 × 65535 pixels/],
  ['a billion pixels across', () => pngOfSize(1_000_000_000, 1), /pixels|damaged from its beginning/],
  ['no pixels', () => pngOfSize(0, 0), /damaged from its beginning/],
  ['a directory that follows itself', () => withExif(directory([[0x0112, 3, 1, 0x60000]], 8)), undefined],
  ['a directory of the shot that is its own', () => withExif(directory([[0x8769, 4, 1, 8]], 0)), undefined],
  [
    'a tag longer than its file',
    () => withExif(directory([[0x9003, 2, 0xffffffff, 0xfffffff0]], 0xffffffff)),
    undefined,
  ],
  [
    'more tags than there are bytes',
    () => withExif(Buffer.concat([Buffer.from('MM\0*\0\0\0\x08', 'latin1'), u16(65_535)])),
    undefined,
  ],
  [
    'a thumbnail of four gigabytes',
    () => withExif(exif({ picture: [long(0x0201, 8), long(0x0202, 0xffffffff)] })),
    undefined,
  ],
  ['held in a ninth way', () => withExif(exif({ picture: [short(0x0112, 9)] })), undefined],
  [
    'taken on a day of noughts',
    () => withExif(exif({ shot: [text(0x9003, '0000:00:00 00:00:00')] })),
    undefined,
  ],
  ['taken in words', () => withExif(exif({ shot: [text(0x9003, 'yesterday at noon')] })), undefined],
  [
    'taken at a place that is none',
    () => withExif(exif({ place: [text(1, 'X'), fractions(2, 999, 999, 999)] })),
    undefined,
  ],
];

describe('the head of a camera file', () => {
  it.each(HEADS)('%s', async (_, bytes, says) => {
    const made = await bytes();
    expect(await wrongWith(made)).toEqual([]);
    const verdict = await measured(made);
    if (says) expect('why' in verdict ? photoProblem(FILE, verdict).reason : 'read').toMatch(says);
    else expect([verdict, cameraFacts(made).taken]).toEqual([{ pixels: 96 * 64 }, undefined]);
  });

  it(
    'is told or read, wherever it is cut and whichever of its bits are turned',
    async () => {
      const change = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), to: fc.nat(255) });
      const broken = fc.record({
        seed: fc.nat(),
        changes: fc.array(change, { maxLength: 12 }),
        // Most of what can go wrong stands in front.
        within: fc.constantFrom(64, 512, 1e9),
        cut: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
      });
      await fc.assert(
        fc.asyncProperty(broken, async ({ seed, changes, within, cut }) => {
          const bytes = Buffer.from(seeds[seed % seeds.length] ?? '');
          const range = Math.min(within, bytes.length);
          for (const { at, to } of changes) bytes[Math.min(range - 1, Math.floor(at * range))] = to;
          const end = cut === null ? bytes.length : Math.floor(cut * bytes.length);
          expect(await wrongWith(bytes.subarray(0, end))).toEqual([]);
        }),
        tries(0.3),
      );
    },
    PATIENCE,
  );

  it(
    'of any bytes at all has a kind or none',
    () => {
      fc.assert(
        fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => {
          expect(['jpeg', 'png', 'webp', 'tiff', 'gif', 'avif', 'heic', undefined]).toContain(kindOf(bytes));
          const boxes = Buffer.concat([
            Buffer.from(bytes.subarray(0, 4)),
            Buffer.from('ftyp'),
            Buffer.from(bytes.subarray(4)),
          ]);
          expect(['avif', 'heic', undefined]).toContain(kindOf(boxes));
        }),
        tries(0.2),
      );
    },
    PATIENCE,
  );
});
