// Makes the bound book of a record: what it says, its pictures, and the printing.
import { printPictures } from '../photos/for-print.ts';
import { makePhotos } from '../photos/make.ts';
import { forAudience } from '../record/audience.ts';
import type { CarRecord } from '../record/record.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { type BookAsked, bookData } from '../views/book.ts';
import { type Edition, type Printed, printBook } from './book.ts';

/**
 * The book of the record that lies in `folder`, in each edition asked for. It knows only what a later reader may see,
 * and of the rest, when that is asked for, the sums.
 */
export async function makeBook<E extends Edition>(
  record: CarRecord,
  folder: string,
  editions: readonly E[],
  asked: BookAsked,
): Promise<Map<E, Printed>> {
  const { photos } = await makePhotos(folder, record.photos);
  const data = bookData(forAudience(record, 'history'), rollUp(record), photos, asked);
  const pictures = await printPictures(data.plates.map(({ file }) => file));
  const printed = new Map<E, Printed>();
  for (const edition of editions) {
    printed.set(edition, await printBook(data, pictures, { edition, units: record.units }));
  }
  return printed;
}
