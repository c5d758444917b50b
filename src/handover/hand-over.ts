// Makes a hand-over in an open bag: the pages, the texts and the pictures go in, then the book that carries their one
// sum, then the words on top.
import type { Day } from '../figures/days.ts';
import type { Screen } from '../photos/progress.ts';
import { AT_ONCE, eachInTurn } from '../photos/turns.ts';
import { descriptionOf, howToRead, startHere } from '../views/hand-over.ts';
import { namedPhotos } from '../views/photos.ts';
import { BOOK_FOLDER, COVER_SUM, coverSum } from './bag/cover-sum.ts';
import { sumOf } from './bag/tag-files.ts';
import type { OpenBag } from './bag.ts';
import { EDITIONS, type Edition } from './book.ts';
import { contentsOf, handedPhotos, type Source } from './contents.ts';
import { makeBook } from './make-book.ts';
import { fileProgress } from './progress.ts';

/** What is asked of a hand-over besides what goes into it. */
export type Asked = { made: Day; screen: Screen };

/** What came of it: files and octets below data/, the sum on the cover, letters that the book's type hasn't. */
export type Handed = { files: number; octets: number; sum: string; missing: string[] };

/** The book's files, by edition. */
const BOOKS: { [edition in Edition]: string } = {
  archive: `${BOOK_FOLDER}book.pdf`,
  reading: `${BOOK_FOLDER}book-to-be-read-aloud.pdf`,
};

/** Puts everything in and closes the bag. */
export async function handOver(bag: OpenBag, source: Source, asked: Asked): Promise<Handed> {
  const { record, folder, originals, photos } = source;
  const costs = source.came !== undefined;
  const editions = Object.keys(BOOKS) as Edition[];
  const payloads = await contentsOf(source);
  const bar = fileProgress(asked.screen);
  const step = () => bar.step(payloads.length + editions.length);
  try {
    await eachInTurn(payloads, AT_ONCE, async (payload) => {
      await bag.put(payload);
      step();
    });
    const sum = coverSum(bag.listed());
    const books = await makeBook(source.whole, folder, editions, { made: asked.made, costs, sum });
    for (const [edition, { pdf }] of books) {
      await bag.put({ path: BOOKS[edition], key: sumOf(pdf, 'sha256'), content: () => whole(pdf) });
      step();
    }
    const about = {
      record,
      made: asked.made,
      sum,
      books: editions.map((edition) => ({ file: BOOKS[edition], says: EDITIONS[edition].says })),
      originals,
      costs,
      unread: [...namedPhotos(record)].length - handedPhotos(record, photos, originals).length,
    };
    await bag.close({
      info: [
        ['Source-Organization', record.shop.shop],
        ['Bagging-Date', asked.made],
        ['External-Description', descriptionOf(record)],
        [COVER_SUM, sum],
      ],
      more: { 'START-HERE.html': startHere(about), 'HOW-TO-READ.txt': howToRead(about) },
    });
    const listed = bag.listed();
    return {
      files: listed.length,
      octets: listed.reduce((all, { octets }) => all + octets, 0),
      sum,
      missing: [...new Set([...books.values()].flatMap(({ missing }) => missing))],
    };
  } finally {
    bar.end();
  }
}

async function* whole(bytes: Buffer): AsyncGenerator<Uint8Array> {
  yield bytes;
}
