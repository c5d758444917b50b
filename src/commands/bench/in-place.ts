// What a record of three thousand pictures costs when all of them are made.
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { makePhotos, photoCache } from '../../photos/make.ts';
import { AT_ONCE, eachInTurn } from '../../photos/turns.ts';
import { layDownKept, lifeSizeFolder } from './life-size/lay-down.ts';
import { photoPaths } from './life-size/pictures.ts';
import { prime } from './life-size/prime.ts';
import { LIFE_SIZE } from './life-size/record.ts';
import type { Row } from './row.ts';

/** Lays the record of life size down where it is kept, and makes its pictures ready. */
export async function readyRecord(): Promise<void> {
  const photos = await layDownKept(LIFE_SIZE);
  await prime(lifeSizeFolder(LIFE_SIZE), photos, photoCache);
}

export async function inPlaceRows(): Promise<Row[]> {
  const folder = lifeSizeFolder(LIFE_SIZE);
  const files = photoPaths(LIFE_SIZE.photos, LIFE_SIZE.entries);
  let [floor, took] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let time = 0; time < TIMES; time++) {
    const start = performance.now();
    await eachInTurn(files, 2 * AT_ONCE, async (file) => void (await stat(join(folder, file))));
    const middle = performance.now();
    await makePhotos(folder, files);
    floor = Math.min(floor, (middle - start) / 1000);
    took = Math.min(took, (performance.now() - middle) / 1000);
  }
  const what = `${files.length.toLocaleString('en-US')} pictures when nothing is new`;
  const against = 'looking each file up on the disk once';
  return [{ id: 'in-place', what, took, against, floor, goal: { seconds: 3, megabytes: 1000 } }];
}

const TIMES = 3;
