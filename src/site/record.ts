// The one module that opens the record for the pages. A build opens it once; `npm run dev` opens it again when
// a file of the record has changed.
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { makePhotos } from '../photos/make.ts';
import type { Problem } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { rollUp } from '../rollup/roll-up.ts';
import type { Photos } from '../views/photos.ts';
import { countText } from '../views/problem-text.ts';

/** What the pages are made from. Without `record` only the page of problems can be made. */
export type Site = { problems: Problem[]; count: string; errors: number } & Book;
type Book = { record: CarRecord; rollup: Rollup; photos: Photos } | { record: undefined };

let opened: { stamp: unknown; site: Promise<Site> } | undefined;

/** The record, opened once for as long as nothing in it changes. */
export function site(): Promise<Site> {
  const { ashframeStamp: stamp } = globalThis as { ashframeStamp?: unknown };
  if (!opened || opened.stamp !== stamp) opened = { stamp, site: open() };
  return opened.site;
}

/** The record for a page that can't be made without it. */
export async function book(): Promise<Site & { record: CarRecord }> {
  const whole = await site();
  if (!whole.record) throw new Error('The record can’t be opened; npm run check says why.');
  return whole;
}

async function open(): Promise<Site> {
  const { record, problems, read, folder } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  const said = { problems, errors, count: countText(problems, read) };
  if (!record) return { ...said, record: undefined };
  return { ...said, record, rollup: rollUp(record), photos: await makePhotos(folder, record.photos) };
}
