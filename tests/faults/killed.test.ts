// kill -9 at any moment: at steps of the writing that a seed picks, with half of a file written, and at times of the clock.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PATIENCE, tries } from '../bad-input/size.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { expectWhole } from './expected.ts';
import { counted, layDown, run, type Shop, shopIn, standing } from './shop.ts';
import { WORKS, type Work } from './works.ts';

const { numRuns: KILLS, seed } = tries(1 / 400);
let shop: Shop;
let remove: () => Promise<void>;

beforeAll(async () => {
  const place = await emptyFolderFor('killed');
  remove = place.remove;
  shop = await shopIn(place.folder);
  await layDown(shop);
  expect(await run(shop, ['build', '--out', join(shop.out, 'site')])).toMatchObject({ code: 0 });
}, PATIENCE);
afterAll(() => remove());

/** What an undisturbed run leaves, by how many steps, in how many milliseconds. */
async function undisturbed(work: Work) {
  const { does, after } = work;
  await layDown(shop, work);
  const begun = performance.now();
  expect(await run(shop, does(shop))).toMatchObject({ code: 0 });
  const took = performance.now() - begun;
  const { steps } = await counted(shop);
  const whole = await standing(shop);
  if (after) expect(await run(shop, after(shop))).toMatchObject({ code: 0 });
  return { steps, took, whole, last: await standing(shop) };
}

/** The moments of the kills: the last steps, where things are put in place, any steps, and one by the clock. */
function moments(steps: number, took: number): { env?: NodeJS.ProcessEnv; killAfter?: number }[] {
  const chance = xoroshiro128plus(seed);
  const at = (from: number, to: number) => ({ env: { KILL_AT: String(uniformInt(chance, from, to)) } });
  return Array.from({ length: KILLS }, (_, kill) => {
    if (kill % 3 === 0) return at(Math.max(1, steps - 7), steps);
    return kill % 3 === 1 ? at(1, steps) : { killAfter: uniformInt(chance, 0, Math.ceil(took)) };
  });
}

const isDone = async ({ once }: Work) =>
  once !== undefined &&
  (await readFile(join(shop.record, once.file), 'utf8').catch(() => '')).includes(once.says);

it.each(WORKS)(
  '$name: what stands is whole, and the next run gives what an undisturbed one gives',
  async (work) => {
    const { steps, took, whole, last } = await undisturbed(work);
    await layDown(shop, work);
    const before = await standing(shop);
    for (const moment of moments(steps, took)) {
      if (await isDone(work)) await layDown(shop, work);
      const { signal, code, err } = await run(shop, work.does(shop), moment);
      expect(signal === 'SIGKILL' || code === 0, err).toBe(true);
      expectWhole(await standing(shop), before, whole, {
        when: `after ${JSON.stringify(moment)}`,
        stays: 'record/',
      });
    }
    if (!(await isDone(work))) expect(await run(shop, work.does(shop))).toMatchObject({ code: 0 });
    if (work.after) expect(await run(shop, work.after(shop))).toMatchObject({ code: 0 });
    expect(await standing(shop)).toEqual(last);
  },
  PATIENCE,
);
