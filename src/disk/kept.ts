// What one build leaves for the next one of the same record: what its texts say, what was drawn, and which pictures
// lie in its site.
import { realpath } from 'node:fs/promises';
import { join } from 'node:path';
import type { Published } from '../photos/publish.ts';
import type { SheetsRead } from '../record/read-sheet.ts';
import type { WrittenFile } from '../record/record.ts';
import type { DrawnBefore } from '../rollup/ahead/drawn-before.ts';
import { digestOf, readKeptValue, writeKeptValue } from './kept-value.ts';
import { carText, type KeptSheets, placesOf, readKept, sameSheets } from './sheets-kept.ts';

/** `reading` is asked for once, with all texts; `keep` is called when the build is done. */
export type Kept = {
  reading: (files: readonly WrittenFile[]) => Promise<SheetsRead>;
  drawn: DrawnBefore;
  /** Where the last site was put, the pictures that lie in it and the pages that may stand; the next one says its own. */
  site: { place: string; published: Published; pages: KeptPages };
  keep: () => Promise<void>;
};

/** What pages were drawn from, as a digest, and the sign of each file, by its path in the site. */
export type KeptPages = Map<string, { digest: string; sign: string }>;

const FOLDER = join('.cache', 'kept');

/** What texts say is kept in so many files: after a change in one text, one of them is written anew. */
const PILES = 16;
const pileOf = (file: string) => Number.parseInt(digestOf(file).slice(0, 4), 16) % PILES;

/** What this `program` kept of a folder for one `audience`. */
export async function keptOf(folder: string, audience: string, program: string): Promise<Kept> {
  const record = digestOf(await realpath(folder).catch(() => folder)).slice(0, 16);
  const file = (what: string) => join(FOLDER, `${record}-${audience}-${what}`);
  const before = <Value>(what: string, by: string) => readKeptValue<Value>(file(what), by);
  const drawn: DrawnBefore = { before: (await before('drawn', program)) ?? new Map(), now: new Map() };
  let keepSheets = async () => {};
  const reading = async (files: readonly WrittenFile[]) => {
    const by = `${program} ${digestOf(carText(files))}`;
    const piles = await Promise.all(
      Array.from({ length: PILES }, async (_, i) => {
        const known = await before<KeptSheets>(`sheets-${i}`, by);
        return { i, known, places: placesOf(known), now: new Map() as KeptSheets };
      }),
    );
    keepSheets = async () => {
      for (const { i, known, places, now } of piles) {
        if (!sameSheets(known, places, now)) await writeKeptValue(file(`sheets-${i}`), by, now);
      }
    };
    return readKept(({ file }) => piles[pileOf(file)] as (typeof piles)[number]);
  };
  const kept: Kept = {
    reading,
    drawn,
    site: (await before('site', program)) ?? { place: '', published: new Map(), pages: new Map() },
    keep,
  };
  return kept;

  async function keep(): Promise<void> {
    await keepSheets();
    await writeKeptValue(file('site'), program, kept.site);
    const { before: drawnBefore, now } = drawn;
    if (drawnBefore.size !== now.size || [...now.keys()].some((name) => !drawnBefore.has(name)))
      await writeKeptValue(file('drawn'), program, now);
  }
}
