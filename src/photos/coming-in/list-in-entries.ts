// Lists pictures in their days' entries, making an entry where there is none.
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { replaceText } from '../../disk/replace-text.ts';
import type { Day } from '../../figures/days.ts';
import type { CarRecord } from '../../record/record.ts';
import { entryFileOf } from '../../record/writing/entry-file.ts';
import { entryWith, withPhotos } from './entry-text.ts';

/** The pictures of a day and the entry they stand in now; `by-hand` when the entry can't be added to. */
export type Listed = { day: Day; photos: string[]; entry: string; how: 'added' | 'made' | 'by-hand' };

/** Writes each day's pictures into its entry; with `dryRun` nothing is written. */
export async function listInEntries(
  root: string,
  record: CarRecord,
  days: ReadonlyMap<Day, string[]>,
  dryRun: boolean,
): Promise<Listed[]> {
  const files = [...record.entries.map(({ file }) => file), ...record.unread];
  const listed: Listed[] = [];
  for (const [day, photos] of days) {
    const { file, isNew } = entryFileOf(day, files);
    const own = `photos/${day}/`;
    const names = photos.map((path) => (path.startsWith(own) ? path.slice(own.length) : path));
    const path = join(root, file);
    const before = isNew ? undefined : await readFile(path, 'utf8');
    const text = before === undefined ? entryWith(names) : withPhotos(before, names);
    // A file that is there and isn't known to the record can't be read, and isn't written over.
    let byHand = text === undefined || (isNew && (await isThere(path)));
    if (text !== undefined && !byHand && text !== before && !dryRun) {
      byHand = (await replaceText(path, before, text)) === 'changed';
    }
    listed.push({ day, photos: names, entry: file, how: byHand ? 'by-hand' : isNew ? 'made' : 'added' });
  }
  return listed;
}

async function isThere(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}
