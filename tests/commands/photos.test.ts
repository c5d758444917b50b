import { chmod, mkdir, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { text } from '../photos/exif.ts';
import { boxed, dressed, exifSegment, pixels } from '../photos/pictures.ts';
import { bytesIn } from '../photos/record-of.ts';
import { SMALL } from '../record/small.ts';
import { emptyFolder, npmRun, npmRunAsAll } from './run.ts';

/** A picture of one gray, with the time the camera wrote into it. */
async function shot(gray: number, time?: string): Promise<Buffer> {
  const plain = await pixels(40, 30, () => [gray, gray, gray])
    .jpeg()
    .toBuffer();
  return time === undefined ? plain : dressed(plain, [exifSegment({ shot: [text(0x9003, time)] })]);
}

async function lay(files: Record<string, string | Buffer>): Promise<string> {
  const folder = await emptyFolder();
  for (const [name, held] of Object.entries(files)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), held);
  }
  return folder;
}

/** Lines of what was said, without the empty ones. */
const lines = (out: string) => out.split('\n').filter((line) => line !== '');
const NEXT =
  'Next: write what each shows under `caption` and `alt`. npm run check says which are still without.';

describe('npm run photos', () => {
  it('copies new pictures into their days and lists them to be captioned, word for word', async () => {
    const card = {
      'DCIM/100/IMG_0001.JPG': await shot(10, '2025:03:03 09:30:00'),
      'DCIM/100/IMG_0002.JPG': await shot(20, '2025:03:05 10:00:00'),
      'DCIM/101/IMG_0003.JPG': await shot(30, '2025:03:03 08:00:00'),
      'DCIM/101/CLIP.MOV': 'a film',
      'DCIM/.hidden.jpg': await shot(40),
    };
    const [record, from] = [await lay(SMALL), await lay(card)];
    const before = await bytesIn(from);
    const { code, out, err } = await npmRun('photos', [from], record);
    expect(err).toBe('');
    expect(lines(out)).toEqual([
      '3 pictures copied into photos/.',
      '  2025-03-03: IMG_0003.JPG, IMG_0001.JPG, added to log/2025-03-03.md.',
      '  2025-03-05: IMG_0002.JPG, listed in log/2025-03-05.md, which is new.',
      '`DCIM/101/CLIP.MOV` is no picture and was left alone.',
      NEXT,
    ]);
    expect(code).toBe(0);
    expect(await bytesIn(from)).toEqual(before);
    const copied = await bytesIn(join(record, 'photos'));
    expect(Object.fromEntries(copied)).toEqual({
      '2025-03-03/IMG_0001.JPG': card['DCIM/100/IMG_0001.JPG'].toString('base64'),
      '2025-03-03/IMG_0003.JPG': card['DCIM/101/IMG_0003.JPG'].toString('base64'),
      '2025-03-05/IMG_0002.JPG': card['DCIM/100/IMG_0002.JPG'].toString('base64'),
    });
    const item = (file: string) => `  - file: ${file}\n    caption:\n    alt:\n`;
    expect(await readFile(join(record, 'log/2025-03-03.md'), 'utf8')).toBe(
      SMALL['log/2025-03-03.md'].replace(
        'finished: [cowl/strip]\n',
        `photos:\n${item('IMG_0003.JPG')}${item('IMG_0001.JPG')}finished: [cowl/strip]\n`,
      ),
    );
    expect(await readFile(join(record, 'log/2025-03-05.md'), 'utf8')).toBe(
      `---\nphotos:\n${item('IMG_0002.JPG')}---\n`,
    );
    const checked = await npmRun('check', [record]);
    expect(checked.out).toContain('`IMG_0003.JPG` and 1 other have no `caption` and no `alt`.');
    expect(checked.out).toContain('0 errors and 2 warnings.');
  });

  it('writes nothing with --dry-run, and says the same', async () => {
    const [record, from] = [await lay(SMALL), await lay({ 'a.jpg': await shot(10, '2025:03:05 10:00:00') })];
    const before = await bytesIn(record);
    const { code, out } = await npmRun('photos', ['--dry-run', from], record);
    expect(lines(out)).toEqual([
      'With --dry-run nothing is written; this is what would be done.',
      '1 picture copied into photos/.',
      '  2025-03-05: a.jpg, listed in log/2025-03-05.md, which is new.',
    ]);
    expect(code).toBe(0);
    expect(await bytesIn(record)).toEqual(before);
    expect(await readdir(record)).not.toContain('photos');
  });

  it('knows a picture by what it holds, whatever it is named, and brings it in once', async () => {
    const [one, two] = [await shot(10, '2025:03:05 10:00:00'), await shot(20, '2025:03:05 11:00:00')];
    const record = await lay({
      ...SMALL,
      'log/2025-03-05.md': '---\nphotos: [{ file: front.jpg, caption: Front., alt: A car. }]\n---\n',
      'photos/2025-03-05/front.jpg': one,
    });
    const from = await lay({ 'x/IMG_1.jpg': one, 'x/IMG_2.jpg': two, 'y/IMG_2 copy.jpg': two });
    const { out } = await npmRun('photos', [from], record);
    expect(lines(out)).toEqual([
      '1 picture copied into photos/.',
      '  2025-03-05: IMG_2.jpg, added to log/2025-03-05.md.',
      '2 pictures are in the record already: `x/IMG_1.jpg` as `photos/2025-03-05/front.jpg`, `y/IMG_2 copy.jpg` as `photos/2025-03-05/IMG_2.jpg`.',
      NEXT,
    ]);
    const after = await bytesIn(record);
    const again = await npmRun('photos', [from], record);
    expect(lines(again.out)[0]).toBe('No new pictures.');
    expect(await bytesIn(record)).toEqual(after);
  });

  it('never puts a picture over another, also where capitals don’t count', async () => {
    const time = '2025:03:05 10:00:00';
    const record = await lay({ ...SMALL, 'photos/2025-03-05/img_1.JPG': await shot(10, time) });
    const from = await lay({
      'a/IMG_1.jpg': await shot(20, time),
      'b/IMG_1.jpg': await shot(30, time),
      'c/Img_1-2.jpg': await shot(40, time),
    });
    const { out } = await npmRun('photos', [from], record);
    expect(out).toContain(
      'Another picture has the name `IMG_1.jpg`, so this one is `photos/2025-03-05/IMG_1-2.jpg`.',
    );
    const held = await bytesIn(join(record, 'photos/2025-03-05'));
    const wanted = { 'img_1.JPG': 10, 'IMG_1-2.jpg': 20, 'IMG_1-3.jpg': 30, 'Img_1-2-2.jpg': 40 };
    for (const [name, gray] of Object.entries(wanted)) {
      expect(held.get(name), name).toBe((await shot(gray, time)).toString('base64'));
    }
    expect(held.size).toBe(4);
  });

  it('takes the day the file was changed when the camera wrote none, and says so', async () => {
    const [record, from] = [
      await lay(SMALL),
      await lay({
        'scan.png': await pixels(9, 9, () => [9, 9, 9])
          .png()
          .toBuffer(),
      }),
    ];
    const noon = new Date(2025, 2, 7, 12);
    await utimes(join(from, 'scan.png'), noon, noon);
    const { out } = await npmRun('photos', [from], record);
    expect(lines(out).slice(1, 3)).toEqual([
      '  2025-03-07: scan.png, listed in log/2025-03-07.md, which is new.',
      '`scan.png` has no date from a camera, and went to the day on which the file was last changed.',
    ]);
  });

  it('leaves what is dated wrong until the day is named', async () => {
    const [record, from] = [await lay(SMALL), await lay({ 'a.jpg': await shot(10, '2000:01:01 00:00:10') })];
    const { out } = await npmRun('photos', [from], record);
    expect(lines(out)).toEqual([
      'No new pictures.',
      '`a.jpg` is dated 2000-01-01, before the record opens or after today, and was left alone. If the camera’s clock was wrong, name the day: --day 2025-04-16.',
    ]);
    const named = await npmRun('photos', ['--day', '2025-03-09', from], record);
    expect(lines(named.out)[1]).toBe('  2025-03-09: a.jpg, listed in log/2025-03-09.md, which is new.');
  });

  it('leaves what can’t be read, says why, and brings in the others', async () => {
    const from = await lay({
      'a.heic': boxed('heic', 'mif1'),
      'b.heic': Buffer.concat([boxed('heic'), Buffer.alloc(3)]),
      'c.jpg': '',
      'd.jpg': await shot(10, '2025:03:05 10:00:00'),
    });
    const record = await lay(SMALL);
    const { code, out } = await npmRun('photos', [from], record);
    expect(lines(out).slice(2, 4)).toEqual([
      '`a.heic` is an HEIC picture, which can’t be read here. It was left alone. So was `b.heic`. Save it again as JPEG, and set the phone’s camera to write JPEG from now on (“most compatible”).',
      '`c.jpg` is empty. It was left alone. Copy it from the camera or the phone again, or take it out.',
    ]);
    expect([...(await bytesIn(join(record, 'photos'))).keys()]).toEqual(['2025-03-05/d.jpg']);
    expect(code).toBe(1);
  });

  it('lists what a run that was stopped had copied only', async () => {
    const picture = await shot(10, '2025:03:05 10:00:00');
    const record = await lay({ ...SMALL, 'photos/2025-03-05/a.jpg': picture });
    const { out } = await npmRun('photos', [await lay({ 'a.jpg': picture })], record);
    expect(lines(out).slice(0, 2)).toEqual([
      'No new pictures.',
      '  2025-03-05: a.jpg, listed in log/2025-03-05.md, which is new.',
    ]);
  });

  it('without a folder lists what lies in photos/ and stands in no entry', async () => {
    const record = await lay({
      ...SMALL,
      'photos/2025-03-05/a.jpg': await shot(10, '2025:03:01 10:00:00'),
      'photos/loose.jpg': await shot(20, '2025:03:03 10:00:00'),
    });
    const { out } = await npmRun('photos', [], record);
    expect(lines(out)).toEqual([
      'No new pictures.',
      '  2025-03-03: photos/loose.jpg, added to log/2025-03-03.md.',
      '  2025-03-05: a.jpg, listed in log/2025-03-05.md, which is new.',
      NEXT,
    ]);
    const checked = await npmRun('check', [record]);
    expect(checked.out).toContain('0 errors and 2 warnings.');
    expect(lines((await npmRun('photos', [], record)).out)).toEqual(['No new pictures.']);
  });

  it('keeps its hands off an entry that can’t be added to, and off a file that can’t be read', async () => {
    const broken = '---\nby: "tobias\n---\n';
    const latin = Buffer.from('---\nby: tobias\n---\n\nT\xfcr.\n', 'latin1');
    const record = await lay({ ...SMALL, 'log/2025-03-05.md': broken, 'log/2025-03-06.md': latin });
    const from = await lay({
      'a.jpg': await shot(10, '2025:03:05 10:00:00'),
      'b.jpg': await shot(20, '2025:03:06 10:00:00'),
    });
    const { code, out } = await npmRun('photos', [from], record);
    expect(lines(out).slice(1, 3)).toEqual(
      [
        ['2025-03-05', 'a'],
        ['2025-03-06', 'b'],
      ].map(
        ([day, name]) =>
          `  ${day}: ${name}.jpg, not listed: log/${day}.md is written in a way that can’t be added to safely. See what npm run check says of it, or list them under \`photos\` by hand.`,
      ),
    );
    expect(code).toBe(1);
    expect(await readFile(join(record, 'log/2025-03-05.md'), 'utf8')).toBe(broken);
    expect((await readFile(join(record, 'log/2025-03-06.md'))).equals(latin)).toBe(true);
  });

  it('tells of a folder and of a picture on the card that can’t be opened, and brings in the rest', async () => {
    const time = '2025:03:05 10:00:00';
    const [record, from] = [
      await lay(SMALL),
      await lay({
        'DCIM/100/a.jpg': await shot(10, time),
        'DCIM/101/b.jpg': await shot(20, time),
        'DCIM/102/c.jpg': await shot(30, time),
      }),
    ];
    await chmod(join(from, 'DCIM/101'), 0o000);
    await chmod(join(from, 'DCIM/102/c.jpg'), 0o000);
    const { code, out, err } = await npmRunAsAll('photos', [from], record);
    await chmod(from, 0o000);
    const whole = await npmRunAsAll('photos', [from], record);
    for (const path of ['', 'DCIM/101', 'DCIM/102/c.jpg']) await chmod(join(from, path), 0o755);
    expect([code, err]).toEqual([1, '']);
    expect(lines(out)).toEqual([
      '1 picture copied into photos/.',
      '  2025-03-05: a.jpg, listed in log/2025-03-05.md, which is new.',
      '`DCIM/102/c.jpg` can’t be opened (EACCES). It was left alone. So was `DCIM/101`. See that it is there and may be read.',
      NEXT,
    ]);
    expect([whole.code, whole.err]).toEqual([
      1,
      `\`${from}\` can’t be opened (EACCES). See that it is there and may be read.\n`,
    ]);
    const again = await npmRun('photos', [from], record);
    expect(lines(again.out).slice(0, 2)).toEqual([
      '2 pictures copied into photos/.',
      '  2025-03-05: b.jpg, c.jpg, added to log/2025-03-05.md.',
    ]);
    expect(again.code).toBe(0);
  });
});

describe('npm run photos, wrongly used', () => {
  it('refuses the record’s own pictures, a folder around them, and one that isn’t there', async () => {
    const record = await lay({ ...SMALL, 'photos/2025-03-05/a.jpg': await shot(10) });
    const before = await bytesIn(record);
    const said = async (from: string) => (await npmRun('photos', [from], record)).err;
    expect(await said(join(record, 'photos'))).toContain('is where the record keeps its pictures.');
    expect(await said(join(record, 'photos/2025-03-05'))).toContain(
      'is where the record keeps its pictures.',
    );
    expect(await said(record)).toContain('holds the record itself.');
    expect(await said(dirname(record))).toContain('holds the record itself.');
    expect(await said(join(record, 'gone'))).toContain('There is no folder');
    expect(await said(join(record, 'car.md'))).toContain('There is no folder');
    expect(await bytesIn(record)).toEqual(before);
  });

  it('says that the record can’t be opened', async () => {
    const record = await lay(SMALL);
    await rm(join(record, 'car.md'));
    const { code, err } = await npmRun('photos', [await emptyFolder()], record);
    expect([code, err]).toEqual([1, 'The record can’t be opened; npm run check says why.\n']);
  });

  it.each([[['--dry']], [['a', 'b']], [['--day', '2025-02-30', 'a']]])(
    'says how it is used when asked %j',
    async (words) => {
      const { code, err } = await npmRun('photos', words);
      expect(code).toBe(2);
      expect(err).toContain('Use: npm run photos --');
      expect(err).not.toContain('    at ');
    },
  );
});
