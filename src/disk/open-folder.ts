// Opens the record that a command or the site works on.
import { resolve } from 'node:path';
import type { Day } from '../figures/days.ts';
import { type KnownPhotos, lookUpPhotos } from '../photos/look.ts';
import { type Opened, openRecord } from '../record/open.ts';
import { sorted } from '../record/place.ts';
import type { SheetsRead } from '../record/read-sheet.ts';
import type { WrittenFile } from '../record/record.ts';
import { type ReadsText, readFolder } from './folder.ts';
import { inPlainEnvironment } from './plain-environment.ts';

/** The record's folder: `RECORD` when it is set, else `content`. */
export function recordFolder(): string {
  return resolve(process.env.RECORD || 'content');
}

/** A folder as it was opened. `known` are its pictures that were made before. */
export type OpenedFolder = Opened & { folder: string; today: Day; known: KnownPhotos };

/** What spares the work on files that are as they were: the reading of texts, what they say, the look at pictures. */
export type FromBefore = {
  text?: ReadsText;
  reading: (files: readonly WrittenFile[]) => Promise<SheetsRead>;
  look?: typeof lookUpPhotos;
};

/** Reads and opens a folder. Totals miss a file that couldn't be read, and its problem says so. */
export async function openFolder(
  folder: string,
  today: Day = dayHere(new Date()),
  before?: FromBefore,
): Promise<OpenedFolder> {
  const { files, photos, problems } = await readFolder(folder, before?.text);
  if (files.length === 0 && problems.length > 0)
    return { folder, today, problems: sorted(problems), read: NOTHING, known: new Map() };
  const unreadable = new Set(problems.map(({ place }) => place.file));
  const reading = await before?.reading(files);
  const opened = inPlainEnvironment(() =>
    openRecord({ files, photos, today, ...(reading && { read: reading }) }),
  );
  const more = opened.problems.filter(
    ({ rule, place }) => rule !== 'file-missing' || !unreadable.has(place.file),
  );
  const { problems: inPhotos, known } = await (before?.look ?? lookUpPhotos)(folder, photos);
  return { ...opened, folder, today, problems: sorted([...problems, ...more, ...inPhotos]), known };
}

const NOTHING = { entries: 0, parts: 0, choices: 0, vendors: 0, bills: 0, photos: 0 };

/** The day of a moment, as the clock on the wall has it. */
export function dayHere(moment: Date): Day {
  const two = (figure: number) => String(figure).padStart(2, '0');
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}
