// Whether a folder may be written into: it is empty, or holds a bag of the same thing and nothing else.
import { mkdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { onDisk } from '../../disk/disk-fault.ts';
import { Stopped } from '../stopped.ts';
import { ALGORITHMS, decodedPath } from './form.ts';
import { infoOf, readInfo } from './info.ts';
import { readUnfinished, UNFINISHED, type Unfinished, WRITING } from './unfinished.ts';
import { filesBelow } from './walk.ts';

/** By this a bag is known as made here, in its bag-info.txt. */
export const MADE_BY = ['Bag-Software-Agent', 'Ashframe'] as const;
export const IDENTIFIER = 'External-Identifier';

/** What is in the folder from before; `unfinished` when it goes on with a bag that was interrupted. */
export type Before = Omit<Unfinished, 'identifier'> & { unfinished: boolean };

/** Makes a folder where there is none, and looks at it. Throws `Stopped` when it holds what isn't ours. */
export async function ownFolder(folder: string, identifier: string): Promise<Before> {
  await onDisk(folder, () => mkdir(folder, { recursive: true })).catch((error: NodeJS.ErrnoException) => {
    throw error.code === 'EEXIST' ? new Stopped(`${folder} isn’t a folder.`) : error;
  });
  const files = (await filesBelow(folder)).map(({ path }) => path);
  for (const path of files) if (WRITING.test(path)) await onDisk(folder, () => rm(join(folder, path)));
  const there = files.filter((path) => !WRITING.test(path));
  if (there.length === 0) return { own: new Set(), done: new Map(), unfinished: false };
  const unfinished = await readUnfinished(folder);
  const ours = unfinished ?? (await finished(folder));
  if (!ours) throw new Stopped(`${folder} isn’t empty. Name an empty folder, or one that isn’t there yet.`);
  if (ours.identifier !== identifier) {
    throw new Stopped(
      `${folder} holds a hand-over of ${ours.identifier || 'another car'}, not of ${identifier}.`,
    );
  }
  const foreign = there.find((path) => path !== UNFINISHED && !ours.own.has(path));
  if (foreign !== undefined) {
    throw new Stopped(
      `${join(folder, foreign)} wasn’t put there by a hand-over. Take it away, or name another folder.`,
    );
  }
  return { own: ours.own, done: ours.done, unfinished: unfinished !== undefined };
}

/** A bag of ours that was closed: its files are those that its manifests name. */
async function finished(folder: string): Promise<Unfinished | undefined> {
  const text = await readFile(join(folder, 'bag-info.txt'), 'utf8').catch(() => '');
  const { info } = readInfo(text);
  if (infoOf(info, MADE_BY[0]) !== MADE_BY[1]) return undefined;
  const own = new Set<string>();
  for (const name of ALGORITHMS) {
    own.add(`tagmanifest-${name}.txt`);
    for (const manifest of [`manifest-${name}.txt`, `tagmanifest-${name}.txt`]) {
      const lines = await readFile(join(folder, manifest), 'utf8').catch(() => '');
      for (const [, path] of lines.matchAll(/^[0-9a-f]+ {2}(.+)$/gm)) own.add(decodedPath(path ?? ''));
    }
  }
  return { identifier: infoOf(info, IDENTIFIER) ?? '', own, done: new Map() };
}
