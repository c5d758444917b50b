// Photo work divided among machines, tried with two shares: each makes its own into a cache of its own, and the caches
// merge by copying.
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { makePhotos } from '../../src/photos/make.ts';
import { shardNamed, shardOf } from '../../src/photos/shard.ts';
import { emptyFolder, npmRun } from '../commands/run.ts';
import { pixels } from '../photos/pictures.ts';
import { bytesIn, recordOf } from '../photos/record-of.ts';

const screen = { write: () => true };

/** The web pictures and their facts, without what a machine remembers of when it saw the camera files. */
async function kept(cache: string): Promise<Map<string, string>> {
  const all = await bytesIn(cache);
  return new Map([...all].filter(([name]) => !name.startsWith('seen-')));
}

it('two shares made apart and copied together are what one machine makes, and nothing is made again', async () => {
  const pictures = await Promise.all(
    Array.from({ length: 7 }, async (_, n) => {
      const picture = pixels(400, 300, (x, y) => [(x * (n + 3)) % 256, (y + n) % 256, (x + y) % 256]);
      return [`IMG_${n}.jpg`, await picture.jpeg().toBuffer()] as const;
    }),
  );
  const { folder, files, cache: whole, make } = await recordOf(new Map(pictures));
  expect((await make()).made).toBe(7);
  const caches: string[] = [];
  for (const nth of [1, 2]) {
    const cache = join(await emptyFolder(), 'cache');
    const share = shardOf(files, { nth, of: 2 });
    expect((await makePhotos(folder, share, { cache, screen })).made).toBe(share.length);
    caches.push(cache);
  }
  const merged = join(await emptyFolder(), 'cache');
  for (const cache of caches) await cp(cache, merged, { recursive: true });
  expect(await kept(merged)).toEqual(await kept(whole));
  expect((await makePhotos(folder, files, { cache: merged, screen })).made).toBe(0);
});

it('every picture is in one share', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.string()), fc.integer({ min: 1, max: 12 }), (files, of) => {
      const shares = Array.from({ length: of }, (_, n) => shardOf(files, { nth: n + 1, of }));
      expect(shares.flat().sort()).toEqual([...files].sort());
      const counts = shares.map(({ length }) => length);
      expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
    }),
  );
});

it('knows a share as it is written', () => {
  expect(shardNamed('2/3')).toEqual({ nth: 2, of: 3 });
  for (const none of ['0/2', '3/2', '1/0', '1', '1/2/3', '-1/2', '1.5/2', '']) {
    expect(shardNamed(none)).toBeUndefined();
  }
});

it('the command makes a share of the demo’s pictures, and refuses what is none', async () => {
  const share = await npmRun('photos', ['--make', '--shard', '2/46']);
  expect(share).toEqual({
    code: 0,
    out: expect.stringMatching(/^1 of 46 pictures looked at, share 2 of 46: [01] made\./),
    err: '',
  });
  const none = await npmRun('photos', ['--make', '--shard', '3/2']);
  expect(none.code).toBe(2);
  expect(none.err).toMatch(/^`3\/2` is no share such as `1\/2`\./);
  const both = await npmRun('photos', ['--make', '--day', '2025-03-03']);
  expect(both.code).toBe(2);
  expect(both.err).toMatch(/^--make stands alone or with --shard\./);
});
