// The ways into the pictures: by month, by part, before, during and after the work, and in pairs.
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import { page } from './links.ts';
import { pairsOf } from './pairs.ts';
import type { Photos } from './photos.ts';
import { shotsByWord } from './shot-filters.ts';
import { allShots } from './timeline.ts';

export type PhotoKind = { name: string; to: string };

/** Those that lead anywhere. */
export function photoKinds(record: CarRecord, photos: Photos): PhotoKind[] {
  return kindsOnce(record)(photos);
}

const kindsOnce = once((record: CarRecord) =>
  once((photos: Photos) => [
    { name: 'By month', to: page.photos },
    { name: 'By part', to: `${page.photos}#by-part` },
    ...shotsByWord(record, photos).map(({ name, shows }) => ({ name, to: page.photosShowing(shows) })),
    ...(pairsOf(allShots(record, photos)).length > 0
      ? [{ name: 'Before against after', to: page.pairs }]
      : []),
  ]),
);
