// Makes the web pictures of a record's camera files: what is made stays made, a bad file stops none of the others,
// and it may be interrupted at any moment. Camera files are only read.
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { onDisk } from '../disk/disk-fault.ts';
import type { Problem } from '../record/place.ts';
import type { Photos, WebPhoto } from '../views/photos.ts';
import { readKept, verdictOf, webPhoto } from './kept.ts';
import { type Found, maker } from './maker.ts';
import { contentOf, namesOf } from './plan.ts';
import { progress, type Screen } from './progress.ts';
import { readSeen, type Seen, type Sight, sameSeen, seenContent, sight, writeSeen } from './seen.ts';
import { AT_ONCE, eachInTurn, room } from './turns.ts';
import { photoProblem, type Verdict } from './verdict.ts';
import { inWorkFolder } from './work-folder.ts';

/** Where web pictures are kept, named by what they were made from. */
export const photoCache = join('.cache', 'photos');
/** Bytes of camera files held at once. */
const BYTES = 200_000_000;
/** Files looked up at once: that waits for the disk alone. */
export const LOOKED_UP_AT_ONCE = 32;

/** The pictures by camera file, what is wrong with the others, and how many had to be made. */
export type Made = { photos: Photos; problems: Problem[]; made: number };

type Place = { folder: string; cache: string; work: string };
/** What came of each file, and what is to be remembered of it. */
type All = { found: Map<string, Found | Verdict>; seen: Seen };

/** What was made of a camera file before. */
export type Known = Found & { sight: Sight };

/**
 * The web pictures of a record's camera files, given as paths relative to its folder. Those `known` from a look a moment
 * ago aren't looked up again. Throws `DiskFault`.
 */
export function makePhotos(
  folder: string,
  files: readonly string[],
  {
    cache = photoCache,
    screen = process.stderr,
    known = new Map(),
  }: { cache?: string; screen?: Screen; known?: ReadonlyMap<string, Known> } = {},
): Promise<Made> {
  return onDisk(cache, () =>
    inWorkFolder(cache, (work) => makeAll({ folder, cache, work }, files, known, screen)),
  );
}

async function makeAll(
  place: Place,
  files: readonly string[],
  known: ReadonlyMap<string, Known>,
  screen: Screen,
): Promise<Made> {
  const before = await readSeen(place.cache, place.folder);
  const all: All = { found: new Map(), seen: new Map() };
  for (const [file, { sight, names, facts }] of known) {
    all.seen.set(file, sight);
    all.found.set(file, { names, facts });
  }
  await lookUp(
    place,
    files.filter((file) => !all.found.has(file)),
    before,
    all,
  );
  const made = await makeFresh(
    place,
    files.filter((file) => !all.found.has(file)),
    all,
    screen,
  );
  if (!sameSeen(all.seen, before)) await writeSeen(place.cache, place.work, place.folder, all.seen);
  return { ...shown(files, all.found), made };
}

/** Finds what is kept of files that haven't changed since they were seen. */
async function lookUp(
  { folder, cache }: Place,
  files: readonly string[],
  before: Seen,
  { found, seen }: All,
) {
  await eachInTurn(files, LOOKED_UP_AT_ONCE, async (file) => {
    const stats = await stat(join(folder, file)).catch(unopened);
    if ('why' in stats) {
      found.set(file, stats);
      return;
    }
    const content = seenContent(before, file, stats);
    const names = content === undefined ? undefined : namesOf(content);
    const facts = names && readKept(cache, names);
    if (content === undefined || !names || !facts) return;
    seen.set(file, sight(stats, content));
    found.set(file, { names, facts });
  });
}

/** Reads the other files and makes what isn't kept of them; gives how many had to be made. */
async function makeFresh(place: Place, fresh: readonly string[], { found, seen }: All, screen: Screen) {
  const bar = progress(fresh.length, screen);
  const make = maker(place);
  const reading = room(BYTES);
  const makeOne = async (file: string): Promise<Found | Verdict> => {
    const path = join(place.folder, file);
    // The times before the reading: a change in between is then seen as one.
    const stats = await stat(path).catch(unopened);
    if ('why' in stats) return stats;
    return reading(stats.size, async () => {
      const camera = await readFile(path).catch(unopened);
      if ('why' in camera) return camera;
      const content = contentOf(camera);
      const one = await make(content, camera);
      seen.set(file, sight(stats, content));
      return one;
    });
  };
  await eachInTurn(fresh, AT_ONCE, async (file) => {
    found.set(file, await makeOne(file));
    bar.step();
  });
  bar.end();
  return make.count();
}

function unopened({ code = 'unknown' }: NodeJS.ErrnoException): Verdict {
  return { why: 'unopened', code };
}

function shown(files: readonly string[], found: ReadonlyMap<string, Found | Verdict>) {
  const photos = new Map<string, WebPhoto>();
  const problems: Problem[] = [];
  for (const file of files) {
    const one = found.get(file);
    if (!one) continue;
    const verdict = 'why' in one ? one : verdictOf(one.facts);
    if (verdict) problems.push(photoProblem(file, verdict));
    const photo = 'why' in one ? undefined : webPhoto(one.names, one.facts);
    if (photo) photos.set(file, photo);
  }
  return { photos, problems };
}
