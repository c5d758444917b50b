// Camera files for the tests, each made here: no camera, phone or person is in them.
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { bytes, type Exif, exif, fractions, long, short, text, u32 } from './exif.ts';

type Color = readonly [number, number, number];
const CORNERS: Record<'top' | 'bottom', { left: Color; right: Color }> = {
  top: { left: [220, 30, 30], right: [30, 180, 60] },
  bottom: { left: [40, 60, 210], right: [240, 240, 240] },
};

/** The color of the scene at a place: red and green above, blue and white below. */
export function sceneAt(x: number, y: number, width: number, height: number): Color {
  return CORNERS[y < height / 2 ? 'top' : 'bottom'][x < width / 2 ? 'left' : 'right'];
}

/** Raw pixels, each from its column and row. */
export function pixels(width: number, height: number, at: (x: number, y: number) => Color) {
  const data = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set(at(x, y), (y * width + x) * 3);
  return sharp(data, { raw: { width, height, channels: 3 } });
}

/** The scene, upright. */
export function scene(width = 96, height = 64) {
  return pixels(width, height, (x, y) => sceneAt(x, y, width, height));
}

/** A JPEG of the scene with segments put in after its start, and bytes behind its end. */
export async function jpeg(
  segments: readonly Buffer[] = [],
  behind: Buffer = Buffer.alloc(0),
): Promise<Buffer> {
  return dressed(await scene().jpeg({ quality: 90 }).toBuffer(), segments, behind);
}

/** A JPEG with segments put in after its start, and bytes behind its end. */
export function dressed(
  plain: Buffer,
  segments: readonly Buffer[],
  behind: Buffer = Buffer.alloc(0),
): Buffer {
  return Buffer.concat([plain.subarray(0, 2), ...segments, plain.subarray(2), behind]);
}

/** A segment of a JPEG: its marker (0xe1 is APP1) and what it holds. */
export function segment(marker: number, ...parts: readonly (Buffer | string)[]): Buffer {
  const held = Buffer.concat(
    parts.map((part) => (typeof part === 'string' ? Buffer.from(part, 'latin1') : part)),
  );
  return Buffer.concat([Buffer.from([0xff, marker, (held.length + 2) >> 8, (held.length + 2) & 255]), held]);
}

export const exifSegment = (tags: Exif) => segment(0xe1, 'Exif\0\0', exif(tags));

/** Words that would give a place or a person away; none may be found in what is published. */
export const SECRETS = [
  'secret-maker',
  'secret-note',
  'secret-xmp',
  'secret-iptc',
  'secret-thumb',
  'secret-second',
];

const comment = (words: string) => segment(0xfe, words);
/** A little JPEG that carries a comment of its own. */
const inner = async (words: string) => dressed(await scene(16, 12).jpeg().toBuffer(), [comment(words)]);

const XMP = (about: string) =>
  segment(
    0xe1,
    'http://ns.adobe.com/xap/1.0/\0',
    `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">${about}</rdf:RDF></x:xmpmeta>`,
  );
const IPTC = (words: string) => {
  const record = Buffer.concat([
    Buffer.from([0x1c, 2, 90, 0, words.length]),
    Buffer.from(words, 'latin1'),
    Buffer.alloc((words.length + 5) % 2),
  ]);
  return segment(0xed, 'Photoshop 3.0\x008BIM\x04\x04\0\0', u32(5 + words.length), record);
};

/** A JPEG with a second one behind it and the index that says so (CIPA DC-007): phones hide a picture there. */
async function withSecond(before: readonly Buffer[], second: Buffer): Promise<Buffer> {
  const index = (size: number, offset: number) => {
    const entries = [
      [0x20030000, size, 0, 0],
      [0, second.length, offset, 0],
    ];
    return segment(
      0xe2,
      'MPF\0',
      exif({
        picture: [
          bytes(0xb000, Buffer.from('0100')),
          long(0xb001, entries.length),
          bytes(0xb002, Buffer.concat(entries.flat().map(u32))),
        ],
      }),
    );
  };
  const size = (await jpeg([...before, index(0, 0)])).length;
  // Offsets count from the index itself: behind the start, what stands before, the marker, its length and its name.
  const start = 2 + before.reduce((sum, { length }) => sum + length, 0) + 4 + 4;
  return jpeg([...before, index(size, size - start)], second);
}

/** Camera files that carry something, by what they carry. */
export async function laden(): Promise<Map<string, Buffer>> {
  const second = await inner('secret-second');
  const gainMap = XMP(
    '<rdf:Description xmlns:hdrgm="http://ns.adobe.com/hdr-gain-map/1.0/" hdrgm:Version="1.0" hdrgm:GainMapMax="2" note="secret-xmp"/>',
  );
  const where = [
    bytes(0x0000, Buffer.from([2, 3, 0, 0])),
    text(0x0001, 'N'),
    fractions(0x0002, 44, 58, 12),
    text(0x0003, 'W'),
    fractions(0x0004, 93, 15, 30),
  ];
  return new Map([
    ['gps.jpg', await jpeg([exifSegment({ place: where, shot: [text(0x9003, '2025:04:16 09:30:00')] })])],
    [
      'xmp.jpg',
      await jpeg([
        XMP('<rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" dc:source="secret-xmp"/>'),
      ]),
    ],
    ['iptc.jpg', await jpeg([IPTC('secret-iptc')])],
    [
      'maker-note.jpg',
      await jpeg([
        exifSegment({
          picture: [text(0x010f, 'secret-maker')],
          shot: [bytes(0x927c, Buffer.from('secret-note in a way of its own'))],
        }),
      ]),
    ],
    [
      'thumbnail.jpg',
      await jpeg([exifSegment({ picture: [short(0x0112, 1)], thumbnail: await inner('secret-thumb') })]),
    ],
    ['second-picture.jpg', await withSecond([], second)],
    ['gain-map.jpg', await withSecond([gainMap], dressed(second, [gainMap]))],
    ['profile.jpg', await scene().withIccProfile('p3').jpeg().toBuffer()],
    [
      'png-text.png',
      await scene()
        .withExif({ IFD0: { Artist: 'secret-maker' } })
        .png()
        .toBuffer(),
    ],
    [
      'webp-exif.webp',
      await scene()
        .withExif({ IFD0: { Artist: 'secret-maker' } })
        .webp()
        .toBuffer(),
    ],
    ['tiff-exif.tif', await tiff({ picture: [text(0x013b, 'secret-maker')], place: where })],
  ]);
}

/** A TIFF of the scene, a strip of bare pixels, with EXIF in it as cameras write it. */
export async function tiff({ picture = [], ...more }: Exif): Promise<Buffer> {
  const strip = await scene().raw().toBuffer();
  const tags = (offset: number): Buffer =>
    exif({
      picture: [
        ...[short(0x0100, 96), short(0x0101, 64), short(0x0103, 1), short(0x0106, 2), short(0x0115, 3)],
        { id: 0x0102, type: 3, value: Buffer.from([0, 8, 0, 8, 0, 8]), count: 3 },
        ...[long(0x0111, offset), short(0x0116, 64), long(0x0117, strip.length)],
        ...picture,
      ],
      ...more,
    });
  return Buffer.concat([tags(tags(0).length), strip]);
}

/** A PNG whose header promises another size than it holds. */
export async function pngOfSize(width: number, height: number): Promise<Buffer> {
  const png = Buffer.from(await scene(8, 8).png().toBuffer());
  png.writeUInt32BE(width, 16);
  png.writeUInt32BE(height, 20);
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29);
  return png;
}

/** The beginning of a file in the boxes of ISO/IEC 23008-12, with its brands. */
export function boxed(...brands: readonly string[]): Buffer {
  const [major = '', ...others] = brands;
  const held = Buffer.from(`ftyp${major}\0\0\0\0${others.join('')}`, 'latin1');
  return Buffer.concat([u32(held.length + 4), held, Buffer.alloc(64)]);
}

/** The color of a picture at a place given in shares of its width and height. */
export async function colorAt(picture: Buffer | string, across: number, down: number): Promise<Color> {
  const { data, info } = await sharp(picture).raw().toBuffer({ resolveWithObject: true });
  const at = (Math.floor(info.height * down) * info.width + Math.floor(info.width * across)) * info.channels;
  return [data[at] ?? -1, data[at + 1] ?? -1, data[at + 2] ?? -1];
}
