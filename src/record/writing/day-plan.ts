// What adding to a day would come to, before anything is written: the text of its entry, and what would be wrong then.
import type { Day } from '../../figures/days.ts';
import { type Opened, openRecord } from '../open.ts';
import type { Problem } from '../place.ts';
import type { SheetsRead } from '../read-sheet.ts';
import { LARGEST_TEXT, type WrittenFile } from '../record.ts';
import { type Added, addedToEntry } from './add-to-entry.ts';
import { entryFileOf } from './entry-file.ts';

/** The texts and pictures of a record, as they were read from its folder. */
export type Lying = { files: readonly WrittenFile[]; photos: readonly string[]; today: Day };

/** The entry as it would be; `before` is its text now, if it is there. */
export type DayPlan = { file: string; before?: string; text: string };

/** The plan for a day, or a sentence that says why its entry can’t be added to. */
export function dayPlan({ files }: Pick<Lying, 'files'>, day: Day, added: Added): DayPlan | string {
  const { file } = entryFileOf(
    day,
    files.map((written) => written.file),
  );
  const before = files.find((written) => written.file === file)?.text;
  const text = addedToEntry(before ?? '', added);
  if (text === undefined) {
    return `${file} is written in a way that can’t be added to safely. See what npm run check says of it, or write in it by hand.`;
  }
  if (new TextEncoder().encode(text).length > LARGEST_TEXT) {
    return `${file} would become too large to be read again: 1 MB at most.`;
  }
  return { file, text, ...(before === undefined ? {} : { before }) };
}

/** The record with some files as they would be; `read` reads its texts, as `openRecord` says. */
export function openedWith(from: Lying, plans: readonly DayPlan[], read?: SheetsRead): Opened {
  const fresh = new Map(plans.map(({ file, text }) => [file, text]));
  const files = from.files.filter(({ file }) => !fresh.has(file));
  return openRecord({ ...from, files: [...files, ...plans.map(({ file, text }) => ({ file, text }))], read });
}

/** Problems that were not there before; lines may have moved, so places don’t count. */
export function newProblems(before: readonly Problem[], after: readonly Problem[]): Problem[] {
  const key = ({ rule, place, reason }: Problem) => `${rule}\n${place.file}\n${reason}`;
  const known = new Map<string, number>();
  for (const problem of before) known.set(key(problem), (known.get(key(problem)) ?? 0) + 1);
  return after.filter((problem) => {
    const left = known.get(key(problem)) ?? 0;
    known.set(key(problem), left - 1);
    return left <= 0;
  });
}
