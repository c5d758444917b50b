// What pictures cost: making them beside a bare loop, and a record in which nothing, or one picture, is new.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makePhotos } from '../../photos/make.ts';
import { bareLoop } from '../../photos/timing/bare-loop.ts';
import { madeUpPhotos } from '../../photos/timing/made-up.ts';
import type { Row } from './row.ts';

const SEED = 1934;
/**
 * Making and the bare loop take turns, so that a slow moment of the machine hits both; in each turn so many pictures at
 * least, so that it isn't the start and the end of a turn that is timed.
 */
const TURNS = { most: 10, pictures: 12 };
const GOAL = { ratio: 1.15, megabytes: 1000, seconds: 3 };

/** Times so many 12-megapixel pictures, made for it in a folder that is gone afterwards. */
export async function photoRows(count: number): Promise<Row[]> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-photos-'));
  try {
    return await timed(folder, count);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function timed(folder: string, count: number): Promise<Row[]> {
  const cache = join(folder, 'cache');
  const bare = join(folder, 'bare');
  const all = await madeUpPhotos(folder, count + 1, SEED);
  const files = all.slice(0, count);
  // What is loaded with the first picture has nothing to do with how many there are.
  await makePhotos(folder, all.slice(count), { cache: join(folder, 'first') });
  await bareLoop(folder, all.slice(count), join(folder, 'first-bare'));
  let [ours, floor] = [0, 0];
  const turns = Math.max(1, Math.min(TURNS.most, Math.floor(count / TURNS.pictures)));
  for (let turn = 0; turn < turns; turn++) {
    const from = Math.round((count * turn) / turns);
    const to = Math.round((count * (turn + 1)) / turns);
    const both = [
      async () => {
        ours += (await secondsOf(() => makePhotos(folder, files.slice(0, to), { cache }))).seconds;
      },
      async () => {
        floor += (await secondsOf(() => bareLoop(folder, files.slice(from, to), bare))).seconds;
      },
    ];
    for (const run of turn % 2 ? both.reverse() : both) await run();
  }
  const still = await secondsOf(() => makePhotos(folder, files, { cache }));
  const one = await secondsOf(() => bareLoop(folder, all.slice(count), bare));
  const added = await secondsOf(() => makePhotos(folder, all, { cache }));
  if (still.result.made !== 0 || added.result.made !== 1)
    throw new Error(`${still.result.made} and ${added.result.made} pictures were made, not 0 and 1`);
  const { ratio, megabytes, seconds } = GOAL;
  const loop = 'a bare loop of sharp';
  return [
    {
      id: 'photos-cold',
      what: `make ${count} pictures of 12 megapixels`,
      took: ours,
      against: `${loop}, the same two sizes`,
      floor,
      goal: { ratio, megabytes },
    },
    {
      id: 'photos-warm',
      what: 'the same when nothing is new',
      took: still.seconds,
      against: `${loop} over all of them`,
      floor,
      goal: { seconds },
    },
    {
      id: 'photos-added',
      what: 'the same when one is new',
      took: added.seconds,
      against: `${loop} over that one`,
      floor: one.seconds,
      goal: { seconds },
    },
  ];
}

async function secondsOf<T>(run: () => Promise<T>): Promise<{ seconds: number; result: T }> {
  const start = performance.now();
  const result = await run();
  return { seconds: (performance.now() - start) / 1000, result };
}
