// Everything that a hand-over holds besides the bound book, in one list: what isn't in it isn't handed over.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { atFullSize, FULL_SIZE_RECIPE, fullSizeName } from '../photos/at-full-size.ts';
import { xmpOf } from '../photos/picture-words.ts';
import { changedAt } from '../photos/seen.ts';
import type { CarRecord, WrittenFile } from '../record/record.ts';
import { exportFiles } from '../views/export/files.ts';
import { namedPhotos, type Photos } from '../views/photos.ts';
import { pictureWords } from '../views/picture-words.ts';
import { sumsOfFile } from './bag/digests.ts';
import { sumOf } from './bag/tag-files.ts';
import { filesBelow } from './bag/walk.ts';
import type { Payload } from './bag.ts';

/** What the list is drawn from. `folder` holds the record, `site` the built site; `files` are the record's texts. */
export type Source = {
  record: CarRecord;
  folder: string;
  files: readonly WrittenFile[];
  photos: Photos;
  site: string;
  /** Camera files go as they are. */
  originals: boolean;
};

/** The files, in the order in which they are put in. */
export async function contentsOf(source: Source): Promise<Payload[]> {
  return [
    ...(await sitePages(source)),
    ...recordTexts(source),
    ...tables(source),
    ...(await pictures(source)),
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

/** The record's own texts. */
function recordTexts({ files }: Source): Payload[] {
  return files.map(({ file, text }) => textAt(`record/${file}`, text));
}

/** Hours, bills and statements as CSV, with the descriptor that says what they hold. */
function tables({ record }: Source): Payload[] {
  return exportFiles(record).map(({ file, text }) => textAt(`tables/${file}`, text));
}

function textAt(path: string, text: string): Payload {
  return { path, key: sumOf(text, 'sha256'), content: () => oneOf(async () => Buffer.from(text)) };
}

/** The camera files that entries name: encoded again, or as they are. */
async function pictures({ record, folder, photos, originals }: Source): Promise<Payload[]> {
  const words = pictureWords(record, photos);
  const files = handedPhotos(record, photos, originals);
  return Promise.all(
    files.map(async (file) => {
      const path = join(folder, file);
      const about = await stat(path);
      const seen = `${about.size} ${changedAt(about)}`;
      if (originals) return { path: file, key: `as it is ${seen}`, content: () => createReadStream(path) };
      const xmp = xmpOf(words(file));
      return {
        path: fullSizeName(file),
        key: `${FULL_SIZE_RECIPE} ${seen} ${sumOf(xmp, 'sha256')}`,
        content: () => oneOf(() => atFullSize(path, xmp)),
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
