// The pictures of a part, and those that show it before, during or after the work, on pages of their own.
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import { SHOWS } from '../record/words.ts';
import { page } from './links.ts';
import { namesOf } from './names.ts';
import type { Photos, Shot } from './photos.ts';
import { allShots, type ShotPages, shotPages } from './timeline.ts';

/** What pictures have in common; `about` is the page of the part itself. */
export type Filter = { name: string; shots: Shot[]; pages: ShotPages; about?: string };

/** How many pictures show each state, as text; empty where none does. */
type Counts = Record<(typeof SHOWS)[number], string>;

/** One part's pictures; those of no part come last, under the car as a whole. */
export type PartFilter = Filter & Counts & { part: string | undefined; group: string };

type WordFilter = Filter & { shows: string };

/** Pictures by part, in the order of the parts; a part without any has no page. */
export function shotsByPart(record: CarRecord, photos: Photos): PartFilter[] {
  return byPartOnce(record)(photos);
}

/** Worked out once: every page of pictures and of a part asks. */
const byPartOnce = once((record: CarRecord) => once((photos: Photos) => filtersByPart(record, photos)));

function filtersByPart(record: CarRecord, photos: Photos): PartFilter[] {
  const byPart = Map.groupBy(allShots(record, photos), ({ part }) => part);
  const names = namesOf(record);
  return [...record.parts, { id: undefined, group: '' }].flatMap(({ id, group }) => {
    const shots = byPart.get(id);
    if (!shots) return [];
    const name = names.part(id);
    const pages = shotPages(shots, `Photographs: ${name}`, (n) => page.photosOfPart(id, n));
    const about = id === undefined ? {} : { about: page.part(id) };
    const count = (word: string) => String(shots.filter(({ shows }) => shows === word).length || '');
    const counts = { before: count('before'), during: count('during'), after: count('after') };
    return [{ part: id, group, name, shots, pages, ...counts, ...about }];
  });
}

/** Pictures by what they show, in the order of the work. */
export function shotsByWord(record: CarRecord, photos: Photos): WordFilter[] {
  return byWordOnce(record)(photos);
}

const byWordOnce = once((record: CarRecord) => once((photos: Photos) => filtersByWord(record, photos)));

function filtersByWord(record: CarRecord, photos: Photos): WordFilter[] {
  const byWord = Map.groupBy(allShots(record, photos), ({ shows }) => shows);
  return SHOWS.flatMap((shows) => {
    const shots = byWord.get(shows);
    if (!shots) return [];
    const name = TITLE[shows];
    return [{ shows, name, shots, pages: shotPages(shots, name, (n) => page.photosShowing(shows, n)) }];
  });
}

const TITLE: Record<(typeof SHOWS)[number], string> = {
  before: 'Before the work',
  during: 'During the work',
  after: 'After the work',
};
