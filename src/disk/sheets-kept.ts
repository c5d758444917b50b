// Keeps what the texts of a record say from one build to the next: a text that is as it was isn't parsed again.
import { type PlainSheet, plainSheet, readSheet, type SheetsRead, sheetFrom } from '../record/read-sheet.ts';
import type { WrittenFile } from '../record/record.ts';
import { digestOf } from './kept-value.ts';

/** Sheets by file, each with the digest of its text. */
export type KeptSheets = Map<string, { digest: string; sheet: PlainSheet }>;

/** What was kept, and what is to be kept the next time. */
type Pile = { known: KeptSheets | undefined; now: KeptSheets };

/** Reads texts by what was kept of them in their pile; what is to be kept is put into its `now`. */
export function readKept(pileOf: (written: WrittenFile) => Pile): SheetsRead {
  return (written, schema) => {
    const { known, now } = pileOf(written);
    const digest = digestOf(written.text);
    const one = known?.get(written.file);
    if (one?.digest === digest) {
      now.set(written.file, one);
      return { sheet: sheetFrom(one.sheet, written), problems: [] };
    }
    const read = readSheet(written, schema);
    const kept = plainSheet(read);
    if (!kept) return read;
    now.set(written.file, { digest, sheet: kept.plain });
    return { sheet: kept.sheet, problems: [] };
  };
}

/** Whether what is to be kept is what was kept, with no place more. */
export function sameSheets(before: KeptSheets | undefined, placesBefore: number, now: KeptSheets): boolean {
  return (
    (before?.size ?? 0) === now.size &&
    [...now].every(([file, kept]) => before?.get(file) === kept) &&
    placesOf(now) === placesBefore
  );
}

/** How many places are kept: there are more when another check asks for one. */
export function placesOf(sheets: KeptSheets | undefined): number {
  return [...(sheets?.values() ?? [])].reduce((sum, { sheet }) => sum + sheet.places.size, 0);
}

/** The text that says the currency and the units that every other is read by. */
export function carText(files: readonly WrittenFile[]): string {
  return files.find(({ file }) => file === 'car.md')?.text ?? '';
}
