// Makes the web pictures of a record's camera files: what is made stays made, a bad file stops none of the others,
// and it may be interrupted at any moment. Camera files are only read.
import type { Stats } from 'node:fs';
import { mkdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../record/place.ts';
import type { Photos, WebPhoto } from '../views/photos.ts';
import { cameraFacts } from './camera-facts.ts';
import { type Facts, keepFacts, keepPictures, readKept, verdictOf, webPhoto } from './kept.ts';
import { measured } from './measured.ts';
import { contentOf, type Names, namesOf } from './plan.ts';
import { progress, type Screen } from './progress.ts';
import { changedAt, readSeen, type Seen, seenContent, writeSeen } from './seen.ts';
import { AT_ONCE, eachInTurn, room } from './turns.ts';
import { photoProblem, type Verdict } from './verdict.ts';
import { webPictures } from './web-pictures.ts';
import { inWorkFolder } from './work-folder.ts';

/** Where web pictures are kept, named by what they were made from. */
export const photoCache = join('.cache', 'photos');
/** Pixels decoded at once: those of a dozen cameras, or of one picture of the largest size. */
const ROOM = 150_000_000;
/** Files looked up at once: that waits for the disk alone. */
const LOOKED_UP_AT_ONCE = 32;

/** The pictures by camera file, what is wrong with the others, and how many had to be made. */
export type Made = { photos: Photos; problems: Problem[]; made: number };

type Place = { folder: string; cache: string; work: string };
type Found = { names: Names; facts: Facts };

/** The web pictures of a record's camera files, given as paths relative to its folder. */
export async function makePhotos(
  folder: string,
  files: readonly string[],
  { cache = photoCache, screen = process.stderr }: { cache?: string; screen?: Screen } = {},
): Promise<Made> {
  await mkdir(cache, { recursive: true });
  return inWorkFolder(cache, (work) => makeAll({ folder, cache, work }, files, screen));
}

async function makeAll(place: Place, files: readonly string[], screen: Screen): Promise<Made> {
  const { folder, cache, work } = place;
  const before = await readSeen(cache, folder);
  const seen: Seen = new Map();
  const found = new Map<string, Found | Verdict>();
  await eachInTurn(files, LOOKED_UP_AT_ONCE, async (file) => {
    const stats = await stat(join(folder, file)).catch(unopened);
    const content = 'why' in stats ? undefined : seenContent(before, file, stats);
    const names = content === undefined ? undefined : namesOf(content);
    const facts = names && (await readKept(cache, names));
    if ('why' in stats) found.set(file, stats);
    if ('why' in stats || content === undefined || !names || !facts) return;
    seen.set(file, sight(stats, content));
    found.set(file, { names, facts });
  });
  const fresh = files.filter((file) => !found.has(file));
  const bar = progress(fresh.length, screen);
  const make = maker(place);
  await eachInTurn(fresh, AT_ONCE, async (file) => {
    const camera = await readCamera(join(folder, file)).catch(unopened);
    if ('why' in camera) found.set(file, camera);
    else {
      const content = contentOf(camera.bytes);
      found.set(file, await make(content, camera.bytes));
      seen.set(file, sight(camera.stats, content));
    }
    bar.step();
  });
  bar.end();
  if (JSON.stringify([...seen].sort()) !== JSON.stringify([...before].sort())) {
    await writeSeen(cache, work, folder, seen);
  }
  return { ...shown(files, found), made: make.count() };
}

/** The times are taken before the reading: a change in between is then seen as one. */
async function readCamera(path: string): Promise<{ stats: Stats; bytes: Buffer }> {
  return { stats: await stat(path), bytes: await readFile(path) };
}

function unopened({ code = 'unknown' }: NodeJS.ErrnoException): Verdict {
  return { why: 'unopened', code };
}

const sight = (stats: Stats, content: string) => ({ size: stats.size, changed: changedAt(stats), content });

/** Makes what isn't kept yet; of two files with the same content, one. */
function maker({ cache, work }: Place) {
  const begun = new Map<string, Promise<Found>>();
  const decoding = room(ROOM);
  let count = 0;
  const makeNew = async (names: Names, camera: Buffer): Promise<Facts> => {
    const size = await measured(camera);
    if ('why' in size) return keepFacts({ cache, work }, names, { refused: size });
    count += 1;
    const pictures = await decoding(size.pixels, () => webPictures(camera));
    if ('why' in pictures) return keepFacts({ cache, work }, names, { refused: pictures });
    return keepPictures({ cache, work }, names, pictures, cameraFacts(camera));
  };
  const make = (content: string, camera: Buffer): Promise<Found> => {
    const names = namesOf(content);
    const known = begun.get(content);
    if (known) return known;
    const making = readKept(cache, names).then(async (kept) => ({
      names,
      facts: kept ?? (await makeNew(names, camera)),
    }));
    begun.set(content, making);
    return making;
  };
  return Object.assign(make, { count: () => count });
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
