// Everything that a hand-over holds besides the bound book, in one list: what isn't in it isn't handed over.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { atFullSize, FULL_SIZE_RECIPE } from '../photos/at-full-size.ts';
import { xmpOf } from '../photos/picture-words.ts';
import { changedAt } from '../photos/seen.ts';
import { openRecord } from '../record/open.ts';
import type { CarRecord, WrittenFile } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { historyFiles } from '../views/export/files.ts';
import { namedPhotos, type Photos } from '../views/photos.ts';
import { pictureWords } from '../views/picture-words.ts';
import { sumsOfFile } from './bag/digests.ts';
import { sumOf } from './bag/tag-files.ts';
import { filesBelow } from './bag/walk.ts';
import type { Payload } from './bag.ts';
import { photoNames } from './photo-names.ts';
import { handedTexts } from './texts/texts.ts';

/**
 * What the list is drawn from. `whole` is the record in `folder`, `record` what a later reader may see of it; `files`
 * are its texts as they were written, `site` holds the pages that were built for that reader.
 */
export type Source = {
  whole: CarRecord;
  record: CarRecord;
  folder: string;
  files: readonly WrittenFile[];
  photos: Photos;
  site: string;
  /** Camera files go as they are. */
  originals: boolean;
  /** The sums of all of it, where what the work came to is handed over. */
  came: Rollup | undefined;
};

/** Where the record lies in the bag. */
export const RECORD = 'record/';

/** The files, in the order in which they are put in. */
export async function contentsOf(source: Source): Promise<Payload[]> {
  const names = photoNames(source.record, source.originals);
  const texts = handedTexts(source.files, (photo) => names.get(photo));
  return [
    ...(await sitePages(source)),
    ...texts.map(({ file, text }) => textAt(`${RECORD}${file}`, text)),
    ...tables(texts, names, source.came),
    ...(await pictures(source, names)),
  ];
}

/** The built site, as it was built. */
async function sitePages({ site }: Source): Promise<Payload[]> {
  const files = await filesBelow(site);
  return Promise.all(
    files.map(async ({ path }) => {
      const file = join(site, path);
      const { sums } = await sumsOfFile(file, ['sha256']);
      return { path: `site/${path}`, key: sums.sha256, content: () => createReadStream(file) };
    }),
  );
}

/** Hours and things bought as CSV, with the descriptor that says what they hold. Files and lines are those handed over. */
function tables(
  files: readonly WrittenFile[],
  names: ReadonlyMap<string, string>,
  came: Rollup | undefined,
): Payload[] {
  const { record } = openRecord({ files, photos: [...names.values()], today: LAST_DAY });
  if (!record) throw new Error('The texts to be handed over don’t make a record.');
  return historyFiles(record, came).map(({ file, text }) => textAt(`tables/${file}`, text));
}

/** Whether a day is still to come is told before a hand-over is begun. */
const LAST_DAY = '9999-12-31';

function textAt(path: string, text: string): Payload {
  return { path, key: sumOf(text, 'sha256'), content: () => oneOf(async () => Buffer.from(text)) };
}

/** The camera files that the record names: encoded again, or as they are. */
async function pictures(
  { record, folder, photos, originals }: Source,
  names: ReadonlyMap<string, string>,
): Promise<Payload[]> {
  const words = pictureWords(record, photos);
  const files = handedPhotos(record, photos, originals);
  return Promise.all(
    files.map(async (file) => {
      const from = join(folder, file);
      const about = await stat(from);
      const seen = `${about.size} ${changedAt(about)}`;
      const path = `${RECORD}${names.get(file)}`;
      if (originals) return { path, key: `as it is ${seen}`, content: () => createReadStream(from) };
      const xmp = xmpOf(words(file));
      return {
        path,
        key: `${FULL_SIZE_RECIPE} ${seen} ${sumOf(xmp, 'sha256')}`,
        content: () => oneOf(() => atFullSize(from, xmp)),
      };
    }),
  );
}

/** The camera files that go along: those that entries name, and of these, unless they go as they are, those that can be read. */
export function handedPhotos(record: CarRecord, photos: Photos, originals: boolean): string[] {
  const named = namedPhotos(record);
  return record.photos.filter((file) => named.has(file) && (originals || photos.has(file)));
}

/** Bytes that are made when they are asked for. */
async function* oneOf(make: () => Promise<Buffer>): AsyncGenerator<Uint8Array> {
  yield await make();
}
