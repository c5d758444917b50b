// Makes what isn't kept yet, and keeps it; of two camera files with the same content, one.
import { type Facts, keepFacts, keepPictures, readKept } from './kept.ts';
import { measured } from './measured.ts';
import { type Names, namesOf } from './plan.ts';
import { room } from './turns.ts';

/** What came of a camera file, and the names it is kept under. */
export type Found = { names: Names; facts: Facts };

/** Pixels decoded at once: those of a dozen cameras, or of one picture of the largest size. */
const ROOM = 150_000_000;

/** Makes from a camera file's bytes; `count` says how many had to be decoded. */
export function maker({ cache, work }: { cache: string; work: string }) {
  const begun = new Map<string, Promise<Found>>();
  const decoding = room(ROOM);
  let count = 0;
  const makeNew = async (names: Names, camera: Buffer): Promise<Facts> => {
    const size = await measured(camera);
    if ('why' in size) return keepFacts({ cache, work }, names, { refused: size });
    count += 1;
    // What decodes is only loaded where something is decoded: most builds start sooner without it.
    const { cameraFacts } = await import('./camera-facts.ts');
    const { webPictures } = await import('./web-pictures.ts');
    const pictures = await decoding(size.pixels, () => webPictures(camera));
    if ('why' in pictures) return keepFacts({ cache, work }, names, { refused: pictures });
    return keepPictures({ cache, work }, names, pictures, cameraFacts(camera));
  };
  const make = (content: string, camera: Buffer): Promise<Found> => {
    const names = namesOf(content);
    const known = begun.get(content);
    if (known) return known;
    const kept = readKept(cache, names);
    const making = (async () => ({ names, facts: kept ?? (await makeNew(names, camera)) }))();
    begun.set(content, making);
    return making;
  };
  return Object.assign(make, { count: () => count });
}
