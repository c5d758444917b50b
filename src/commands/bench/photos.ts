// What pictures cost: making them beside a bare loop, and a record in which nothing, or one picture, is new.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { lookAtPhotos } from '../../photos/look.ts';
import { makePhotos } from '../../photos/make.ts';
import { publishPhotos } from '../../photos/publish.ts';
import { bareLoop } from '../../photos/timing/bare-loop.ts';
import { madeUpPhotos } from '../../photos/timing/made-up.ts';

/** One line of the answer: what was timed, how it came out, and the goal where there is one. */
export type PhotoRow = { what: string; came: string; goal: string };

const SEED = 1934;
/** Making and the bare loop take turns, so that a slow moment of the machine hits both. */
const TURNS = 10;
const GOAL = { ratio: 1.15, megabytes: 1000, seconds: 3 };

/** Times so many 12-megapixel pictures, made for it in a folder that is gone afterwards. */
export async function photoRows(count: number): Promise<PhotoRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-photos-'));
  try {
    return await timed(folder, count);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function timed(folder: string, count: number): Promise<PhotoRow[]> {
  const cache = join(folder, 'cache');
  const bare = join(folder, 'bare');
  const all = await madeUpPhotos(folder, count + 1, SEED);
  const files = all.slice(0, count);
  let [ours, floor] = [0, 0];
  for (let turn = 0; turn < TURNS; turn++) {
    const from = Math.round((count * turn) / TURNS);
    const to = Math.round((count * (turn + 1)) / TURNS);
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
  // The most that this process held at any moment, the bare loop and the making up of pictures included.
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const still = await secondsOf(() => makePhotos(folder, files, { cache }));
  const looked = await secondsOf(() => lookAtPhotos(folder, files, cache));
  const added = await secondsOf(() => makePhotos(folder, all, { cache }));
  const { seconds: beside } = await secondsOf(() =>
    publishPhotos(added.result.photos.values(), join(folder, 'site'), cache),
  );
  const made = (n: number) => `${n} made`;
  return [
    row(`making ${count}`, `${ours.toFixed(1)} s, ${((1000 * ours) / count).toFixed(0)} ms each`),
    row('a bare loop of the same two sizes', `${floor.toFixed(1)} s`),
    row(
      'making against the bare loop',
      (ours / floor).toFixed(3),
      ours / floor <= GOAL.ratio,
      `${GOAL.ratio}`,
    ),
    row('memory at most', `${megabytes.toFixed(0)} MB`, megabytes < GOAL.megabytes, `${GOAL.megabytes} MB`),
    row(
      'nothing changed',
      `${still.seconds.toFixed(2)} s, ${made(still.result.made)}`,
      still.seconds < GOAL.seconds && still.result.made === 0,
      `${GOAL.seconds} s, ${made(0)}`,
    ),
    row(
      'one added',
      `${added.seconds.toFixed(2)} s, ${made(added.result.made)}`,
      added.seconds < GOAL.seconds && added.result.made === 1,
      `${GOAL.seconds} s, ${made(1)}`,
    ),
    row('looking them over, for check', `${looked.seconds.toFixed(2)} s`),
    row('putting all beside the pages', `${beside.toFixed(2)} s`),
  ];
}

function row(what: string, came: string, within?: boolean, goal = ''): PhotoRow {
  return { what, came, goal: within === undefined ? '' : `${within ? 'within' : 'OVER'} ${goal}` };
}

async function secondsOf<T>(run: () => Promise<T>): Promise<{ seconds: number; result: T }> {
  const start = performance.now();
  const result = await run();
  return { seconds: (performance.now() - start) / 1000, result };
}
