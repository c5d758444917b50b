// Folders that may not be written to: one sentence, nothing changed, and the same command works once they may.
import { chmod, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PATIENCE } from '../bad-input/size.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { expectSaid } from './expected.ts';
import { layDown, run, type Shop, shopIn, standing } from './shop.ts';
import { WORKS, type Work } from './works.ts';

let shop: Shop;
let remove: () => Promise<void>;

beforeAll(async () => {
  const place = await emptyFolderFor('read-only');
  remove = place.remove;
  shop = await shopIn(place.folder);
  await layDown(shop);
  expect(await run(shop, ['build', '--out', join(shop.out, 'site')])).toMatchObject({ code: 0 });
}, PATIENCE);
afterAll(() => remove());

/** Root may write everywhere by two capabilities (capabilities(7)); without them permissions count for it as for all. */
const AS_ALL = ['--bounding-set', '--inh-caps'].map((set) => `${set}=-dac_override,-dac_read_search`);
const before = process.getuid?.() === 0 ? ['setpriv', ...AS_ALL] : [];

/** Takes the right to write away from what a command writes into, and gives it back. */
async function locked(folders: readonly string[], work: () => Promise<void>): Promise<void> {
  for (const folder of folders) await chmod(folder, 0o555);
  try {
    await work();
  } finally {
    for (const folder of folders) await chmod(folder, 0o755);
  }
}

const writesInto = ({ into }: Work): string =>
  ({ record: shop.record, out: shop.out, cache: join(shop.program, '.cache') })[into];

it.each(WORKS)(
  '$name: says which folder may not be written to',
  async (work) => {
    await layDown(shop, work);
    const first = await standing(shop);
    const place = writesInto(work);
    const below = await readdir(place, { recursive: true, withFileTypes: true });
    const folders = below
      .filter((one) => one.isDirectory())
      .map(({ parentPath, name }) => join(parentPath, name));
    await locked([place, ...folders], async () => {
      expectSaid(
        await run(shop, work.does(shop), { before }),
        'can’t be written: it may not be written to (EACCES). See that it may, and do the same again.',
      );
      expect(withoutCache(await standing(shop))).toEqual(withoutCache(first));
    });
    expect(await run(shop, work.does(shop))).toMatchObject({ code: 0 });
  },
  PATIENCE,
);

/** Web pictures may be made before a folder refuses what they are for. */
const withoutCache = (files: ReadonlyMap<string, string>) =>
  new Map([...files].filter(([name]) => !name.startsWith('cache/')));
