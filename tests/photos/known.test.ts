import { cp, mkdir, readdir, rename, rm, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makePhotos } from '../../src/photos/make.ts';
import { emptyFolder } from '../commands/run.ts';
import { jpeg, pixels, scene } from './pictures.ts';
import { bytesIn, recordOf } from './record-of.ts';

const shade = (gray: number) =>
  pixels(60, 40, () => [gray, gray, gray])
    .jpeg()
    .toBuffer();

const three = async () =>
  recordOf(
    new Map([
      ['2025-04-16/a.jpg', await shade(20)],
      ['2025-04-16/b.jpg', await shade(120)],
      ['2025-04-17/c.jpg', await shade(220)],
    ]),
  );

describe('pictures made before', () => {
  it('aren’t made again, and look the same', async () => {
    const making = await three();
    const first = await making.make();
    expect(first.made).toBe(3);
    const before = await bytesIn(making.cache);
    // At most three files of each picture, and the memory of the record.
    expect(before.size).toBe(3 * 3 + 1);
    expect(await making.make()).toEqual({ ...first, made: 0 });
    expect(await bytesIn(making.cache)).toEqual(before);
  });

  it('are joined by one when one is added', async () => {
    const making = await three();
    await making.make();
    await writeFile(join(making.folder, 'photos/new.jpg'), await shade(70));
    making.files.push('photos/new.jpg');
    const { made, photos } = await making.make();
    expect([made, photos.size]).toEqual([1, 4]);
  });

  it('are known by their content when their name or their date has changed', async () => {
    const making = await three();
    await making.make();
    const at = (file: string) => join(making.folder, file);
    await rename(at('photos/2025-04-16/a.jpg'), at('photos/first.jpg'));
    await utimes(at('photos/2025-04-16/b.jpg'), new Date(0), new Date(0));
    making.files[0] = 'photos/first.jpg';
    const { made, photos } = await making.make();
    expect(made).toBe(0);
    expect([...photos.keys()]).toEqual(making.files);
  });

  it('are made anew from another content, though size and date are the old ones', async () => {
    const making = await three();
    const first = await making.make();
    const path = join(making.folder, 'photos/2025-04-16/a.jpg');
    const { size, mtime } = await stat(path);
    // The color at the end of the file differs; the length doesn't.
    const other = Buffer.concat([await shade(90), Buffer.alloc(size)]).subarray(0, size);
    await writeFile(path, other);
    await utimes(path, mtime, mtime);
    const second = await making.make();
    expect(second.made).toBe(1);
    const file = 'photos/2025-04-16/a.jpg';
    expect(second.photos.get(file)?.file).not.toBe(first.photos.get(file)?.file);
  });

  it('are made once when two files hold the same', async () => {
    const picture = await jpeg();
    const making = await recordOf(new Map([...'abcdefgh'].map((name) => [`${name}.jpg`, picture])));
    const { made, photos } = await making.make();
    expect([made, photos.size, new Set([...photos.values()].map(({ file }) => file)).size]).toEqual([
      1, 8, 1,
    ]);
  });

  it.each(['large.webp', 'small.webp', '.json'])(
    'are made again when %s is gone or cut short',
    async (end) => {
      const making = await three();
      const first = await making.make();
      const before = await bytesIn(making.cache);
      const kept = (await readdir(making.cache)).filter(
        (name) => name.endsWith(end) && !name.startsWith('seen'),
      );
      expect(kept).toHaveLength(3);
      await rm(join(making.cache, kept[0] ?? ''));
      await truncate(join(making.cache, kept[1] ?? ''), 10);
      expect(await making.make()).toEqual({ ...first, made: 2 });
      expect(await bytesIn(making.cache)).toEqual(before);
    },
  );

  it('outlast the memory of what was seen', async () => {
    const making = await three();
    const first = await making.make();
    const before = await bytesIn(making.cache);
    const memory = (await readdir(making.cache)).find((name) => name.startsWith('seen')) ?? '';
    await writeFile(join(making.cache, memory), '{"seen": [[');
    expect(await making.make()).toEqual({ ...first, made: 0 });
    expect(await bytesIn(making.cache)).toEqual(before);
  });
});

describe('caches made apart', () => {
  it('are merged by copying', async () => {
    const making = await three();
    const whole = await making.make();
    const merged = join(await emptyFolder(), 'cache');
    await mkdir(merged);
    for (const file of making.files) {
      const cache = join(await emptyFolder(), 'cache');
      await makePhotos(making.folder, [file], { cache, screen: { write: () => true } });
      await cp(cache, merged, { recursive: true });
    }
    const { made, photos } = await makePhotos(making.folder, making.files, { cache: merged });
    expect(made).toBe(0);
    expect(photos).toEqual(whole.photos);
    expect([...(await bytesIn(merged))].filter(([name]) => !name.startsWith('seen'))).toEqual(
      [...(await bytesIn(making.cache))].filter(([name]) => !name.startsWith('seen')),
    );
  });

  it('may be used by two makings at the same time', async () => {
    const making = await recordOf(
      new Map(
        await Promise.all(
          [1, 2, 3, 4, 5, 6].map(
            async (n) =>
              [
                `${n}.jpg`,
                await scene(40 + n, 30)
                  .jpeg()
                  .toBuffer(),
              ] as const,
          ),
        ),
      ),
    );
    const [one, two] = await Promise.all([making.make(), making.make()]);
    expect(one.photos).toEqual(two.photos);
    expect(one.photos.size).toBe(6);
    expect((await readdir(making.cache)).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});
