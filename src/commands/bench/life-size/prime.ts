// Makes the web pictures of a record of life size ready in a fraction of the time: files that show one scene differ in
// their moment alone, so one of them is made, and its two pictures are linked under the names of the others.
import { copyFile, link, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { cameraFacts } from '../../../photos/camera-facts.ts';
import { keepFacts, readKept } from '../../../photos/kept.ts';
import { makePhotos } from '../../../photos/make.ts';
import { contentOf, type Names, namesOf } from '../../../photos/plan.ts';
import { readSeen, seenContent } from '../../../photos/seen.ts';
import { AT_ONCE, eachInTurn } from '../../../photos/turns.ts';
import { inWorkFolder } from '../../../photos/work-folder.ts';
import { SCENES, sceneOf } from './camera-files.ts';

/**
 * Sees that all pictures of a record are made and kept in `cache`. Throws when one that is made in earnest differs from
 * a linked one.
 */
export async function prime(folder: string, files: readonly string[], cache: string): Promise<void> {
  if (await areReady(folder, files, cache)) return;
  await makePhotos(folder, files.slice(0, SCENES), { cache });
  const firsts = await Promise.all(files.slice(0, SCENES).map((file) => namesIn(folder, file)));
  await inWorkFolder(cache, async (work) => {
    await eachInTurn([...files.entries()].slice(SCENES), AT_ONCE, async ([i, file]) => {
      const camera = await readFile(join(folder, file));
      const names = namesOf(contentOf(camera));
      const like = firsts[sceneOf(i)] as Names;
      const facts = readKept(cache, like);
      if (!facts || facts.refused || readKept(cache, names)) return;
      for (const size of ['large', 'small'] as const)
        await beside(join(cache, like[size]), join(cache, names[size]));
      await keepFacts({ cache, work }, names, { ...facts, ...cameraFacts(camera) });
    });
  });
  const { made } = await makePhotos(folder, files, { cache });
  if (made > 0) throw new Error(`${made} pictures weren’t ready`);
  await inEarnest(folder, files.at(-1), cache);
}

/** True when every picture is kept and was seen as it is. */
async function areReady(folder: string, files: readonly string[], cache: string): Promise<boolean> {
  const seen = await readSeen(cache, folder);
  let ready = 0;
  await eachInTurn(files, 2 * AT_ONCE, async (file) => {
    const content = seenContent(seen, file, await stat(join(folder, file)));
    if (content !== undefined && readKept(cache, namesOf(content))) ready += 1;
  });
  return ready === files.length;
}

async function inEarnest(folder: string, file: string | undefined, cache: string): Promise<void> {
  if (file === undefined) return;
  const names = await namesIn(folder, file);
  const apart = join(cache, '..', 'bench', 'in-earnest');
  await makePhotos(folder, [file], { cache: apart });
  for (const name of Object.values(names)) {
    if (!(await readFile(join(apart, name))).equals(await readFile(join(cache, name))))
      throw new Error(`${name} isn’t as it would be made`);
  }
  await rm(apart, { recursive: true });
}

const namesIn = async (folder: string, file: string) =>
  namesOf(contentOf(await readFile(join(folder, file))));

async function beside(from: string, to: string): Promise<void> {
  await rm(to, { force: true });
  await link(from, to).catch(() => copyFile(from, to));
}
