// A record of life size: made up from a seed, the same at every run, with nothing wrong in it.
import type { WrittenFile } from '../../../record/record.ts';
import { dayOf } from './calendar.ts';
import { choiceFiles, choicesOf } from './choices.ts';
import { drawFrom } from './draw.ts';
import { entryFiles } from './entries.ts';
import { partFiles, partsOf } from './parts.ts';
import { photoPaths } from './pictures.ts';
import { shopFiles } from './shop.ts';
import { statementFiles } from './statements.ts';

export const LIFE_SIZE = { entries: 600, photos: 3000 } as const;
const SEED = 1934;
const PARTS = 250;
const CHOICES = 60;
/** Lines of bills for each entry. */
const BILLS = 2.5;

/** How many entries and pictures a record is to have. */
export type Size = { entries: number; photos: number };

/** The texts and the names of the pictures. Parts and choices are as many whatever the entries. */
export function lifeSize({ entries, photos }: Size): { files: WrittenFile[]; photos: string[] } {
  const draw = drawFrom(SEED);
  const parts = partsOf(PARTS, entries, draw);
  const choices = choicesOf(CHOICES, parts, entries);
  const pictures = photoPaths(photos, entries);
  const bills = Math.round(BILLS * entries);
  const files = [
    ...shopFiles(dayOf(0, entries)),
    ...partFiles(parts, entries, draw),
    ...choiceFiles(choices, entries, draw),
    ...entryFiles({ entries, bills, parts, choices, photos: pictures }, draw),
  ];
  return { files: [...files, ...statementFiles(files, pictures, entries)], photos: pictures };
}
