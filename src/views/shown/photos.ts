// What a page of pictures shows: of a month, of a part, or of those that show the car before, during or after the work.
import { shortDayText } from '../../figures/days.ts';
import type { CarRecord } from '../../record/record.ts';
import { type PhotoKind, photoKinds } from '../photo-kinds.ts';
import type { Photos, Shot } from '../photos.ts';
import { shotsByPart, shotsByWord } from '../shot-filters.ts';
import { photographsOnDays } from '../shot-words.ts';
import { daysOfShots, type ShotPage, shotMonths } from '../timeline.ts';

type Turn = { path: string; title: string };

/** `days` lead to the first picture of each day of a month; `about` is the page of the part. */
export type PhotosShown = {
  path: string;
  title: string;
  count: string;
  page: string;
  kinds: PhotoKind[];
  about: string | undefined;
  month: boolean;
  days: { id: string; text: string }[];
  shots: Shot[];
  before: Turn | undefined;
  after: Turn | undefined;
};

/** Nothing where there is no page of pictures at that path. */
export function photosShown(path: string, record: CarRecord, photos: Photos): PhotosShown | undefined {
  const at = (pages: readonly ShotPage[]) => pages.find((sheet) => sheet.path === path);
  const month = at(shotMonths(record, photos).flatMap(({ pages }) => pages));
  const filter = [...shotsByPart(record, photos), ...shotsByWord(record, photos)].find(({ pages }) =>
    at(pages),
  );
  const here = month ?? at(filter?.pages ?? []);
  if (!here) return undefined;
  const turn = (to: Turn | undefined) => to && { path: to.path, title: to.title };
  return {
    path,
    title: here.title,
    count: photographsOnDays(here.shots),
    page: here.of > 1 ? `page ${here.number} of ${here.of}` : '',
    kinds: photoKinds(record, photos),
    about: filter?.about,
    month: month !== undefined,
    days: month
      ? [...daysOfShots(here.shots).values()].map(({ day, id }) => ({ id, text: shortDayText(day) }))
      : [],
    shots: here.shots,
    before: turn(here.before),
    after: turn(here.after),
  };
}
