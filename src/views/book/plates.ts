// The plates: every picture with its caption and its words, in the order of the days; pictures that were joined as a
// pair stand together.
import type { CarRecord } from '../../record/record.ts';
import { namesOf } from '../names.ts';
import { type Photos, type Shot, shotsOf } from '../photos.ts';
import { captionText, takenText } from '../shot-words.ts';

/** `file` is the web picture's, `pictures/…-large.webp`; `ratio` its width over its height. */
export type BookPlate = {
  file: string;
  ratio: number;
  caption: string;
  alt: string;
  day: string;
  part: string;
};

export function bookPlates(record: CarRecord, photos: Photos): BookPlate[] {
  const names = namesOf(record);
  return inPairs(record.entries.flatMap((entry) => shotsOf(entry, photos))).map((shot) => ({
    file: shot.file,
    ratio: shot.ratio,
    caption: captionText(shot),
    alt: shot.alt,
    day: takenText(shot, true),
    part: shot.part === undefined ? '' : names.part(shot.part),
  }));
}

/** Each pair stands where its first picture does. */
function inPairs(shots: readonly Shot[]): Shot[] {
  const placed = new Set<Shot>();
  return shots.flatMap((shot) => {
    if (placed.has(shot)) return [];
    const own = shot.pair === undefined ? [shot] : shots.filter(({ pair }) => pair === shot.pair);
    for (const each of own) placed.add(each);
    return own;
  });
}
