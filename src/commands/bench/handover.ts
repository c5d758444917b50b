// What a hand-over costs, beside copying its bytes and taking the same two sums of them.
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { layDownKept, lifeSizeFolder } from './life-size/lay-down.ts';
import type { Row } from './row.ts';
import { runNode } from './run.ts';

const BAG = join('.cache', 'bench', 'bag');
const COPY = join('.cache', 'bench', 'bag-copy');
const ENTRIES = 100;

/** Hands over a record of a hundred entries with so many pictures, which were made for the web before. */
export async function handoverRows(photos: number): Promise<Row[]> {
  const size = { entries: ENTRIES, photos };
  const folder = lifeSizeFolder(size);
  await layDownKept(size);
  await runNode(['src/commands/build.ts', '--out', join('.cache', 'bench', 'site-handed')], {
    env: { RECORD: resolve(folder) },
  });
  await rm(BAG, { recursive: true, force: true });
  const { seconds, megabytes } = await runNode(['src/commands/handover.ts', BAG], {
    env: { RECORD: resolve(folder) },
  });
  const start = performance.now();
  await copyWithSums();
  const floor = (performance.now() - start) / 1000;
  return [
    {
      id: 'handover',
      what: `hand-over, ${ENTRIES} entries and ${photos} pictures`,
      took: seconds,
      against: 'copying it, with the SHA-256 and SHA-512 of each file',
      floor,
      ...(megabytes === undefined ? {} : { megabytes }),
    },
  ];
}

async function copyWithSums(): Promise<void> {
  await rm(COPY, { recursive: true, force: true });
  for (const entry of await readdir(BAG, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const bytes = await readFile(path);
    for (const sum of ['sha256', 'sha512']) createHash(sum).update(bytes).digest();
    const to = join(COPY, path.slice(BAG.length));
    await mkdir(dirname(to), { recursive: true });
    await writeFile(to, bytes);
  }
  await rm(COPY, { recursive: true, force: true });
}
