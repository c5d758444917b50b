import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { lookAtPhotos } from '../../src/photos/look.ts';
import { short } from './exif.ts';
import {
  boxed,
  colorAt,
  dressed,
  exifSegment,
  jpeg,
  pixels,
  pngOfSize,
  scene,
  sceneAt,
  tiff,
} from './pictures.ts';
import { recordOf } from './record-of.ts';

const CORNERS = [
  [0.25, 0.25],
  [0.75, 0.25],
  [0.25, 0.75],
  [0.75, 0.75],
] as const;

/** How far the corners of a picture are from those of the scene, the worst of them, in steps of 255. */
async function offScene(picture: Buffer): Promise<number> {
  const off = await Promise.all(
    CORNERS.map(async ([x, y]) => {
      const wanted = sceneAt(x, y, 1, 1);
      return (await colorAt(picture, x, y)).map((color, i) => Math.abs(color - (wanted[i] ?? 0)));
    }),
  );
  return Math.max(...off.flat());
}

/** Makes one picture of a camera file and gives both sizes. */
async function made(name: string, camera: Buffer) {
  const making = await recordOf(new Map([[name, camera]]));
  const all = await making.make();
  const web = await making.webOf(all, `photos/${name}`);
  return { ...all, ...web, photo: all.photos.get(`photos/${name}`) };
}

describe('a picture', () => {
  // Where the stored picture's first row and first column lie, by EXIF's orientation (CIPA DC-008, 4.6.5.1.6).
  const W = 96;
  const H = 64;
  const SEEN: Record<number, (row: number, column: number) => [x: number, y: number]> = {
    1: (row, column) => [column, row],
    2: (row, column) => [W - 1 - column, row],
    3: (row, column) => [W - 1 - column, H - 1 - row],
    4: (row, column) => [column, H - 1 - row],
    5: (row, column) => [row, column],
    6: (row, column) => [W - 1 - row, column],
    7: (row, column) => [W - 1 - row, H - 1 - column],
    8: (row, column) => [row, H - 1 - column],
  };
  const stored = (turned: number) => {
    const [width, height] = turned > 4 ? [H, W] : [W, H];
    return pixels(width, height, (x, y) => sceneAt(...(SEEN[turned]?.(y, x) ?? [0, 0]), W, H));
  };

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('stored with orientation %i stands upright', async (turned) => {
    const plain = await stored(turned).jpeg({ quality: 95 }).toBuffer();
    const camera = dressed(plain, [exifSegment({ picture: [short(0x0112, turned)] })]);
    const { photo, large, small } = await made('IMG_1103.jpg', camera);
    expect(photo).toMatchObject({ width: W, height: H, small: { width: W, height: H } });
    expect(await offScene(large)).toBeLessThan(12);
    expect(await offScene(small)).toBeLessThan(12);
  });

  it('comes in two sizes of the same shape, neither larger than the camera’s', async () => {
    const wide = await made('wide.jpg', await scene(2400, 1800).jpeg().toBuffer());
    expect(wide.photo).toMatchObject({ width: 1600, height: 1200, small: { width: 480, height: 360 } });
    expect(await sharp(wide.large).metadata()).toMatchObject({ width: 1600, height: 1200, format: 'webp' });
    expect(await sharp(wide.small).metadata()).toMatchObject({ width: 480, height: 360, format: 'webp' });
    const little = await made('little.png', await scene(300, 200).png().toBuffer());
    expect(little.photo).toMatchObject({ width: 300, height: 200, small: { width: 300, height: 200 } });
  });

  it('of any shape can be made: a strip, and a single point', async () => {
    const strip = await made('strip.png', await scene(20, 18000).png().toBuffer());
    expect(strip.photo).toMatchObject({ height: 3200, small: { height: 960 } });
    const point = await made('point.png', await scene(1, 1).png().toBuffer());
    expect(point.photo).toMatchObject({ width: 1, height: 1 });
  });

  const KINDS: Record<string, () => Promise<Buffer>> = {
    'PNG of 16 bits': () => scene().toColourspace('rgb16').png().toBuffer(),
    'PNG with a palette': () => scene().png({ palette: true }).toBuffer(),
    WebP: () => scene().webp({ quality: 95 }).toBuffer(),
    TIFF: () => tiff({}),
    'TIFF of 16 bits': () => scene().toColourspace('rgb16').tiff({ compression: 'lzw' }).toBuffer(),
    AVIF: () => scene().avif({ quality: 90 }).toBuffer(),
    'JPEG in steps': () => scene().jpeg({ progressive: true, quality: 95 }).toBuffer(),
    'JPEG of wider colors': () => scene().withIccProfile('p3').jpeg({ quality: 95 }).toBuffer(),
    'picture with a see-through part': () => scene().ensureAlpha(1).png().toBuffer(),
  };
  it.each(Object.keys(KINDS))('that is a %s shows the scene', async (kind) => {
    const { large, problems } = await made('IMG_1.jpg', (await KINDS[kind]?.()) ?? Buffer.alloc(0));
    expect(problems).toEqual([]);
    expect(await sharp(large).metadata()).toMatchObject({ format: 'webp', space: 'srgb', depth: 'uchar' });
    expect(await offScene(large)).toBeLessThan(14);
  });

  it('printed in four inks shows the scene in the web’s colors', async () => {
    const camera = await scene().toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer();
    expect(await sharp(camera).metadata()).toMatchObject({ space: 'cmyk', channels: 4 });
    const { large } = await made('IMG_1.jpg', camera);
    expect(await sharp(large).metadata()).toMatchObject({ space: 'srgb', channels: 3 });
    // Ink can't give the screen's red and green: each corner is nearest to its own color still.
    for (const [x, y] of CORNERS) {
      const color = await colorAt(large, x, y);
      const far = ([a, b]: readonly [number, number]) =>
        sceneAt(a, b, 1, 1).reduce((sum, wanted, i) => sum + (wanted - (color[i] ?? 0)) ** 2, 0);
      expect(CORNERS.toSorted((a, b) => far(a) - far(b))[0]).toEqual([x, y]);
    }
  });

  it('in gray stays gray', async () => {
    const { large } = await made('IMG_1.jpg', await scene().grayscale().jpeg().toBuffer());
    const [red, green, blue] = await colorAt(large, 0.75, 0.25);
    expect(Math.max(red, green, blue) - Math.min(red, green, blue)).toBeLessThan(3);
  });

  it('shows white where it could be seen through', async () => {
    const clear = await scene().ensureAlpha(0).png().toBuffer();
    const { large } = await made('IMG_1.png', clear);
    expect(await colorAt(large, 0.25, 0.25)).toEqual([255, 255, 255]);
    expect((await sharp(large).metadata()).hasAlpha).toBe(false);
  });

  it.each(['webp', 'gif'] as const)('that moves (%s) shows its first frame', async (format) => {
    const frames = [
      await pixels(40, 30, () => [250, 0, 0])
        .png()
        .toBuffer(),
      await pixels(40, 30, () => [0, 0, 250])
        .png()
        .toBuffer(),
    ];
    const moving = await sharp(frames, { join: { animated: true } })
      .toFormat(format, { delay: [100, 100] })
      .toBuffer();
    expect((await sharp(moving).metadata()).pages).toBe(2);
    const { large, photo } = await made('IMG_1.webp', moving);
    expect(photo).toMatchObject({ width: 40, height: 30 });
    const [red, , blue] = await colorAt(large, 0.5, 0.5);
    expect(red).toBeGreaterThan(200);
    expect(blue).toBeLessThan(60);
  });

  it('with a wrong ending is known by what it holds', async () => {
    const { large, problems } = await made('IMG_1.jpg', await scene().png().toBuffer());
    expect(problems).toEqual([]);
    expect(await offScene(large)).toBeLessThan(12);
  });
});

describe('files that can’t be shown, or not whole', () => {
  const whole = (width: number, height: number) => scene(width, height).jpeg({ quality: 92 }).toBuffer();

  it('each get one sentence, and none stops the others', async () => {
    const picture = await whole(800, 600);
    const noisy = await pixels(400, 300, (x, y) => [(x * 7919 + y * 104729) % 256, x % 256, y % 256])
      .jpeg()
      .toBuffer();
    const files = new Map([
      ['a-good.jpg', picture],
      ['b-cut.jpg', noisy.subarray(0, Math.floor(noisy.length / 2))],
      ['c-empty.jpg', Buffer.alloc(0)],
      ['d-phone.heic', boxed('heic', 'mif1', 'heic')],
      ['e-phone.jpg', boxed('mif1', 'heix')],
      ['f-words.jpg', Buffer.from('The camera was dropped.')],
      ['g-drawing.png', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')],
      ['h-large.png', await pngOfSize(12000, 9000)],
      ['i-head.jpg', picture.subarray(0, 12)],
      ['j-good.png', await scene().png().toBuffer()],
    ]);
    const making = await recordOf(files);
    const { photos, problems } = await making.make();
    expect(problems.map(({ reason, mend }) => `${reason} ${mend}`)).toEqual([
      '`photos/b-cut.jpg` is damaged: the part that can’t be read is left blank. Copy it from the camera or the phone again.',
      '`photos/c-empty.jpg` is empty, so it isn’t shown. Copy it from the camera or the phone again, or take it out.',
      '`photos/d-phone.heic` is an HEIC picture, which can’t be read here, so it isn’t shown. Save it again as JPEG, and set the phone’s camera to write JPEG from now on (“most compatible”).',
      '`photos/e-phone.jpg` is an HEIC picture, which can’t be read here, so it isn’t shown. Save it again as JPEG, and set the phone’s camera to write JPEG from now on (“most compatible”).',
      '`photos/f-words.jpg` is no picture that can be read here, so it isn’t shown. JPEG, PNG, WebP and TIFF can: save it again as JPEG, or take it out of photos/.',
      '`photos/g-drawing.png` is no picture that can be read here, so it isn’t shown. JPEG, PNG, WebP and TIFF can: save it again as JPEG, or take it out of photos/.',
      '`photos/h-large.png` has 12000 × 9000 pixels, more than the 100 million that are read, so it isn’t shown. Save it again at half the width.',
      '`photos/i-head.jpg` is damaged from its beginning on, so it isn’t shown. Copy it from the camera or the phone again, or take it out.',
    ]);
    expect(
      problems.every(({ severity, place }) => severity === 'warning' && files.has(place.file.slice(7))),
    ).toBe(true);
    expect([...photos.keys()]).toEqual(['photos/a-good.jpg', 'photos/b-cut.jpg', 'photos/j-good.png']);
    // Said again from memory, word for word.
    const again = await making.make();
    expect(again).toEqual({ photos, problems, made: 0 });
    expect(await lookAtPhotos(making.folder, making.files, making.cache)).toEqual(problems);
  });

  it('are known by their head before they are made, but for what is damaged further on', async () => {
    const picture = await whole(800, 600);
    const making = await recordOf(
      new Map([
        ['a.jpg', picture.subarray(0, Math.floor(picture.length / 2))],
        ['b.jpg', Buffer.alloc(0)],
        ['c.heic', boxed('heic')],
        ['d.png', await pngOfSize(12000, 9000)],
        ['e.jpg', picture],
      ]),
    );
    const found = await lookAtPhotos(making.folder, [...making.files, 'photos/gone.jpg'], making.cache);
    expect(found.map(({ place }) => place.file).sort()).toEqual([
      'photos/b.jpg',
      'photos/c.heic',
      'photos/d.png',
      'photos/gone.jpg',
    ]);
    const { problems } = await making.make();
    expect(problems.map(({ place }) => place.file)).toEqual([
      'photos/a.jpg',
      'photos/b.jpg',
      'photos/c.heic',
      'photos/d.png',
    ]);
  });

  it('are not those at the limit: 100 million pixels pass', async () => {
    // The header alone is looked at: 10,000 × 10,000 is allowed, a row more is not.
    const making = await recordOf(
      new Map([
        ['a.png', await pngOfSize(10000, 10000)],
        ['b.png', await pngOfSize(10000, 10001)],
      ]),
    );
    const found = await lookAtPhotos(making.folder, making.files, making.cache);
    expect(found.map(({ place }) => place.file)).toEqual(['photos/b.png']);
  });

  it('may be gone by the time they are read', async () => {
    const making = await recordOf(new Map([['a.jpg', await jpeg()]]));
    making.files.push('photos/gone.jpg');
    const { photos, problems } = await making.make();
    expect([...photos.keys()]).toEqual(['photos/a.jpg']);
    expect(problems.map(({ reason }) => reason)).toEqual([
      '`photos/gone.jpg` can’t be opened (ENOENT), so it isn’t shown.',
    ]);
  });
});
