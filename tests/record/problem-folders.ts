// The folders of tests/problems: each the smallest record that shows one mistake, and what is said of it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isPicture } from '../../src/disk/folder.ts';
import { notPictures } from '../../src/disk/not-read.ts';
import { type Opened, openRecord } from '../../src/record/open.ts';
import { sorted } from '../../src/record/place.ts';

const ROOT = 'tests/problems';

/** The names of all folders, sorted. */
export const problemFolders = readdirSync(ROOT).sort();

/** The text that is pinned for a folder. */
export const saysOf = (name: string) => readFileSync(join(ROOT, name, 'says.txt'), 'utf8');

/** Opens the record of a folder. Its files are divided by lines `=== log/2025-03-03.md`; one in photos/ is empty. */
export function openProblem(name: string): Opened {
  const text = readFileSync(join(ROOT, name, 'record.txt'), 'utf8');
  const pieces = text.split(/^=== (.+)\n/m).slice(1);
  const files = pieces.flatMap((file, i) => (i % 2 === 0 ? [{ file, text: pieces[i + 1] ?? '' }] : []));
  const inPhotos = files.flatMap(({ file }) => (file.startsWith('photos/') ? [file] : []));
  const opened = openRecord({
    files: files.filter(({ file }) => !inPhotos.includes(file)),
    photos: inPhotos.filter(isPicture),
    today: '2025-12-31',
  });
  const beside = notPictures(inPhotos.filter((file) => !isPicture(file)));
  return { ...opened, problems: sorted([...beside, ...opened.problems]) };
}
