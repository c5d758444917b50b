// A file that is there when a command looks, and gone when it turns to it again: a problem or one sentence, and the next
// run is right, with the file and without.
import { readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PATIENCE, tries } from '../bad-input/size.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { expectNoTrace } from './expected.ts';
import { counted, layDown, run, type Shop, shopIn, standing, TAKEN } from './shop.ts';
import { WORKS } from './works.ts';

const { numRuns: TIMES, seed } = tries(1 / 600);
let shop: Shop;
let remove: () => Promise<void>;

beforeAll(async () => {
  const place = await emptyFolderFor('vanishing');
  remove = place.remove;
  shop = await shopIn(place.folder);
  await layDown(shop);
  expect(await run(shop, ['build', '--out', join(shop.out, 'site')])).toMatchObject({ code: 0 });
}, PATIENCE);
afterAll(() => remove());

const RECORD_TEXT = ['record', 'log/2025-03-03.md'] as const;
const RECORD_PICTURE = ['record', 'photos/2025-03-03/b.jpg'] as const;
const CASES = [
  ['build', ...RECORD_TEXT],
  ['build', ...RECORD_PICTURE],
  ['photos --make', ...RECORD_PICTURE],
  ['photos', 'card', 'd.jpg'],
  ['log', ...RECORD_TEXT],
  ['handover', ...RECORD_PICTURE],
] as const;

it.each(CASES)(
  '%s: goes well or says so when a file of the %s, %s, is gone',
  async (name, of, file) => {
    const work = WORKS.find((one) => one.name === name);
    if (!work) throw new Error(name);
    const path = join(shop[of], file);
    await layDown(shop);
    const VANISHING = path;
    expect(await run(shop, work.does(shop), { env: { VANISHING } })).toMatchObject({ code: 0 });
    const { turns } = await counted(shop);
    expect(turns).toBeGreaterThan(1);
    const whole = await standing(shop);
    const chance = xoroshiro128plus(seed);
    for (const at of new Set([turns, ...Array.from({ length: TIMES }, () => uniformInt(chance, 1, turns))])) {
      await layDown(shop);
      const [bytes, others] = [await readFile(path), await standing(shop)];
      const ran = await run(shop, work.does(shop), { env: { VANISHING, VANISHES_AT: String(at) } });
      const said = `${ran.out}${ran.err}`;
      expectNoTrace(said);
      expect([0, 1], said).toContain(ran.code);
      if (ran.code === 1) expect(said, `gone at turn ${at} of ${turns}`).toContain(file);
      for (const [other, held] of others)
        if (other.startsWith('record/') && other !== `record/${file}` && name !== 'photos')
          expect((await standing(shop)).get(other)).toBe(held);
      // It comes back as it was, and what a run that stopped left is no hindrance.
      if (name === 'log' && ran.code === 0) continue;
      await writeFile(path, bytes);
      if (of === 'card') await utimes(path, TAKEN, TAKEN);
      expect(await run(shop, work.does(shop))).toMatchObject({ code: 0 });
      expect(inAnyOrder(await standing(shop))).toEqual(inAnyOrder(whole));
    }
  },
  PATIENCE,
);

/** A picture that comes in later stands behind the others of its day. */
const inAnyOrder = (files: ReadonlyMap<string, string>) =>
  new Map([...files].map(([name, bytes]) => [name, name === MADE ? linesOf(bytes) : bytes]));
const MADE = 'record/log/2025-03-05.md';
const linesOf = (bytes: string) => Buffer.from(bytes, 'base64').toString().split('\n').sort();
