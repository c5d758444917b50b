import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, npmRun } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { text } from './exif.ts';
import { boxed, dressed, exifSegment, jpeg, pixels, scene } from './pictures.ts';

it('a site shows the pictures that entries name, in two sizes, and says of the others why not', async () => {
  const record = await emptyFolder();
  const noisy = await pixels(400, 300, (x, y) => [(x * 7919 + y * 104729) % 256, x % 256, y % 256])
    .jpeg()
    .toBuffer();
  const wide = dressed(await scene(1200, 900).jpeg().toBuffer(), [
    exifSegment({ picture: [text(0x010f, 'secret-maker')] }),
  ]);
  const entry =
    '---\nphotos:\n  - { file: wide.jpg, caption: Front., alt: A car. }\n  - { file: cut.jpg, caption: Cut., alt: Half a car. }\n  - { file: phone.heic, caption: Back., alt: Its back. }\n---\n';
  const files: Record<string, string | Buffer> = {
    ...SMALL,
    'log/2025-03-05.md': entry,
    'photos/2025-03-05/wide.jpg': wide,
    'photos/2025-03-05/cut.jpg': noisy.subarray(0, Math.floor(noisy.length / 2)),
    'photos/2025-03-05/phone.heic': boxed('heic'),
    'photos/2025-03-05/private.jpg': await jpeg([
      exifSegment({ picture: [text(0x010f, 'not to be shown')] }),
    ]),
  };
  for (const [file, held] of Object.entries(files)) {
    await mkdir(join(record, file, '..'), { recursive: true });
    await writeFile(join(record, file), held);
  }
  const out = join(await emptyFolder(), 'site');
  const { code, out: said, err } = await npmRun('build', ['--out', out], record);
  expect([code, err]).toEqual([0, '']);
  const CUT = '`photos/2025-03-05/cut.jpg` is damaged: the part that can’t be read is left blank.';
  const PHONE =
    '`photos/2025-03-05/phone.heic` is an HEIC picture, which can’t be read here, so it isn’t shown.';
  expect(said.split(CUT)).toHaveLength(2);
  expect(said.split(PHONE)).toHaveLength(2);
  const problems = await readFile(join(out, 'problems.html'), 'utf8');
  for (const sentence of [CUT, PHONE]) expect(problems).toContain(sentence);

  // Two named pictures can be shown, two files each; the one that no entry names stays at home.
  const published = (await readdir(join(out, 'pictures'))).filter((file) => file.endsWith('.webp'));
  expect(published).toHaveLength(4);
  const all = await readdir(out, { recursive: true });
  expect(all.filter((file) => /\.(jpe?g|heic|tiff?)$/i.test(file))).toEqual([]);
  const day = await readFile(join(out, 'day/2025-03-05.html'), 'utf8');
  const shown = [...day.matchAll(/pictures\/[0-9a-f]{24}-(?:large|small)\.webp/g)].map(([file]) => file);
  expect([...new Set(shown)].sort()).toEqual(published.map((name) => `pictures/${name}`).sort());
  expect(day).toMatch(/srcset="[^"]+-small\.webp 480w, [^"]+-large\.webp 1200w"/);
  for (const name of published) {
    expect((await readFile(join(out, 'pictures', name))).includes('secret-maker')).toBe(false);
  }
}, 60_000);
