// Writes a bag (BagIt 1.0, RFC 8493): files go in one by one, each is whole or not there, and what was interrupted
// goes on. It writes only into a folder that is empty or its own.
import { createWriteStream } from 'node:fs';
import { mkdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { onDisk } from '../disk/disk-fault.ts';
import { summing, sumsOfFile } from './bag/digests.ts';
import { ALGORITHMS, formOf, type Listed, pathFault } from './bag/form.ts';
import type { Info } from './bag/info.ts';
import { IDENTIFIER, MADE_BY, ownFolder } from './bag/own-folder.ts';
import { tagNames, writeTagFiles } from './bag/tag-files.ts';
import { type Done, notes, UNFINISHED, writingName } from './bag/unfinished.ts';
import { Stopped } from './stopped.ts';

/**
 * A file to put in. `path` is below data/, with `/`; `key` changes when the content does, so that what is there
 * already isn't made again; `content` is asked for only when it is needed.
 */
export type Payload = { path: string; key: string; content: () => AsyncIterable<Uint8Array> };

/** A bag that is being written. */
export type OpenBag = {
  /** Puts a file in, or leaves it as it is when it is there from before. Several may go at once. */
  put: (payload: Payload) => Promise<Listed>;
  /** What has been put in so far, in order of the paths. */
  listed: () => Listed[];
  /** Takes away what wasn't put in, writes the tag files, `more` of them at the top of the bag, and ends. */
  close: (about: { info: Info; more?: Record<string, string> }) => Promise<void>;
};

/**
 * Opens a bag of what `identifier` names. Throws `Stopped` when the folder is neither empty nor a bag of the same,
 * or holds a file that no bag of ours put there; `DiskFault` when the disk takes no more.
 */
export async function openBag(folder: string, identifier: string): Promise<OpenBag> {
  const before = await ownFolder(folder, identifier);
  const begun = [{ identifier }, ...[...before.own].map((begun) => ({ begun }))];
  const note = await notes(folder, before.unfinished ? undefined : begun);
  // From here on it isn't a bag until it is closed.
  await onDisk(folder, () => rm(join(folder, 'bagit.txt'), { force: true }));
  const put = new Map<string, Listed>();
  const forms = new Map<string, string>();
  let writings = 0;

  const write = async (path: string, { key, content }: Payload): Promise<Listed> => {
    const kept = await stillThere(folder, before.done.get(path), key);
    if (kept) return kept;
    await note({ begun: path });
    const writing = writingName(++writings);
    const sums = await onDisk(join(folder, path), () => writeSummed(folder, path, content(), writing));
    const listed = { path, ...sums };
    await note({ done: { key, listed } });
    return listed;
  };
  const listed = () => [...put.values()].sort((a, b) => (a.path < b.path ? -1 : 1));

  return {
    listed,
    put: async (payload) => {
      const path = `data/${payload.path}`;
      refuseClash(payload.path, forms);
      const one = await write(path, payload);
      put.set(path, one);
      return one;
    },
    close: async ({ info, more = {} }) => {
      const tags = tagNames(more);
      await onDisk(folder, async () => {
        for (const path of before.own) {
          if (!put.has(path) && !tags.includes(path)) await rm(join(folder, path), { force: true });
        }
        await note(...tags.map((begun) => ({ begun })));
        await writeTagFiles(folder, listed(), [...info, [IDENTIFIER, identifier], MADE_BY], more);
        await rm(join(folder, UNFINISHED));
      });
    },
  };
}

/** Writes a file beside the others and puts it in its place when it is whole. */
async function writeSummed(folder: string, path: string, content: AsyncIterable<Uint8Array>, beside: string) {
  const writing = join(folder, beside);
  const { through, sums } = summing(ALGORITHMS);
  await pipeline(Readable.from(through(content)), createWriteStream(writing)).catch(async (error) => {
    await rm(writing, { force: true });
    throw error;
  });
  const target = join(folder, path);
  await mkdir(dirname(target), { recursive: true });
  await rename(writing, target);
  const { octets, sums: of } = sums();
  return { octets, ...of };
}

/** A file from before is taken as it is only if its octets are still those that were written. */
async function stillThere(folder: string, done: Done | undefined, key: string): Promise<Listed | undefined> {
  if (done?.key !== key) return undefined;
  const found = await sumsOfFile(join(folder, done.listed.path), ALGORITHMS).catch(() => undefined);
  const same = ALGORITHMS.every((name) => found?.sums[name] === done.listed[name]);
  return same ? done.listed : undefined;
}

function refuseClash(path: string, forms: Map<string, string>): void {
  const fault = pathFault(path);
  if (fault) throw new Stopped(`\`${path}\` can’t be handed over: ${fault}.`);
  const same = forms.get(formOf(path));
  if (same !== undefined) {
    throw new Stopped(`\`${path}\` and \`${same}\` are one name to many disks. Rename one of them.`);
  }
  forms.set(formOf(path), path);
}
