// A disk that is full, at once or after a while: one sentence, nothing half there, and the same command goes on when
// there is room.
import { join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PATIENCE, tries } from '../bad-input/size.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { expectSaid, expectWhole } from './expected.ts';
import { layDown, run, type Shop, shopIn, standing } from './shop.ts';
import { type SmallDisk, smallDisk } from './small-disk.ts';
import { WORKS } from './works.ts';

const { numRuns: LEFT, seed } = tries(1 / 1200);
let shop: Shop;
let disk: SmallDisk;
let remove: () => Promise<void>;

beforeAll(async () => {
  const place = await emptyFolderFor('full');
  disk = await smallDisk(place.folder, 48_000_000);
  remove = async () => {
    await disk.remove();
    await place.remove();
  };
  shop = await shopIn(place.folder);
  await layDown(shop);
  expect(await run(shop, ['build', '--out', join(shop.out, 'site')])).toMatchObject({ code: 0 });
}, PATIENCE);
afterAll(() => remove());

it.each(WORKS)(
  '$name: says what can’t be written and why, and gives all of it when there is room',
  async (work) => {
    const { does } = work;
    await layDown(shop, work);
    const before = await standing(shop);
    expect(await run(shop, does(shop))).toMatchObject({ code: 0 });
    const whole = await standing(shop);
    const grown = sizeOf(whole) - sizeOf(before);
    await layDown(shop, work);
    const chance = xoroshiro128plus(seed);
    const rests = Array.from({ length: LEFT }, () => uniformInt(chance, 1, grown));
    for (const rest of [0, ...rests.sort((a, b) => a - b)]) {
      const { before: limit, word } = await disk.full(rest);
      const ran = await run(shop, does(shop), { before: limit, env: { COUNT_INTO: undefined } });
      // What is on the disk is less than its blocks hold, so some of the rests may be room enough.
      if (ran.code === 0 && rest > 0) await layDown(shop, work);
      else expectSaid(ran, `can’t be written: ${word}, and do the same again.`);
      expectWhole(await standing(shop), before, whole);
      await disk.roomy();
    }
    expect(await run(shop, does(shop))).toMatchObject({ code: 0 });
    expect(await standing(shop)).toEqual(whole);
  },
  PATIENCE,
);

const sizeOf = (files: ReadonlyMap<string, string>) =>
  [...files.values()].reduce((sum, bytes) => sum + Buffer.byteLength(bytes, 'base64'), 0);
