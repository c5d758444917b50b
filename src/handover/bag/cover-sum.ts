// The one sum that the bound book carries on its cover: of everything that is handed over with it, but not of the book,
// which can't hold its own.
import { manifestText } from './form.ts';
import { sumOf } from './tag-files.ts';

/** Where the book lies, below data/. */
export const BOOK_FOLDER = 'book/';

/** Under this name the sum stands in bag-info.txt. */
export const COVER_SUM = 'Sum-On-Cover';

/** SHA-256 of the lines that manifest-sha256.txt has of all files outside data/book/. */
export function coverSum(listed: readonly { path: string; sha256: string }[]): string {
  const others = listed.filter(({ path }) => !path.startsWith(`data/${BOOK_FOLDER}`));
  return sumOf(manifestText(others.map(({ path, sha256 }) => ({ path, sum: sha256 }))), 'sha256');
}
