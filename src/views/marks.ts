// The page of marks: a list for putting the car together again, what is kept, and what has no home yet.
import type { CarRecord } from '../record/record.ts';
import { type Lack, type Mark, marksOf } from '../rollup/marks.ts';
import { datedText } from './dated.ts';
import { page } from './links.ts';
import { namesOf } from './names.ts';
import { type Photos, shotsOf, type WebPhoto } from './photos.ts';

/** One tag as the page shows it; `lacks` says in words what is missing of it. */
export type MarkRow = {
  mark: string;
  what: string;
  where: string;
  count: string;
  kept: string;
  lacks: string;
  day: string;
  page: string;
  part: string;
  photo: (WebPhoto & { alt: string }) | undefined;
};

/** Tags under one heading; `id` is its place on the page. */
export type MarkGroup = { id?: string; part?: string; to?: string; rows: MarkRow[] };

/** Everything the page says. */
export type MarksPage = {
  opening: string;
  back: MarkGroup[];
  kept: { key: string; title: string; rows: MarkRow[] }[];
  homeless: MarkRow[];
};

export function marksPage(record: CarRecord, photos: Photos): MarksPage {
  const { all, reassembly, homeless } = marksOf(record);
  const row = rowsOf(record, photos);
  return {
    opening: openingText(all),
    back: reassembly.map(({ part, marks }) => ({
      id: listId(part),
      part: namesOf(record).part(part),
      ...(part !== undefined && { to: page.part(part) }),
      rows: marks.map((mark) => row(mark)),
    })),
    kept: KEPT.map(({ key, title }) => ({
      key,
      title,
      rows: all.filter(({ as }) => as === key).map((mark) => row(mark)),
    })).filter(({ rows }) => rows.length > 0),
    homeless: homeless.map(({ mark, lacks }) => row(mark, lacks)),
  };
}

/** Where on the page the list of a part begins. */
export const listId = (part: string | undefined) => (part === undefined ? 'whole-car' : `part-${part}`);

const KEPT = [
  { key: 'pattern', title: 'Kept as patterns' },
  { key: 'spare', title: 'Kept as spares' },
  { key: 'scrap', title: 'Scrap' },
];

const LACKS: { [lack in Lack]: string } = {
  kept: 'nobody wrote where it is kept',
  'from-where': 'nobody wrote where it came from',
};

function openingText(all: readonly Mark[]): string {
  if (all.length === 0) return 'Nothing has been tagged yet.';
  const back = all.filter(({ as }) => as === 'refit').length;
  const many = `${all.length} ${all.length === 1 ? 'tag' : 'tags'}`;
  if (back === 0) return `${many}, and nothing of it goes back on the car.`;
  return back === all.length
    ? `${many}, all to go back on the car.`
    : `${many}, ${back} of them to go back on the car.`;
}

function rowsOf(record: CarRecord, photos: Photos): (mark: Mark, lacks?: readonly Lack[]) => MarkRow {
  const names = namesOf(record);
  const words = new Map(
    record.entries.flatMap((entry) => shotsOf(entry, photos).map(({ file, alt }) => [file, alt] as const)),
  );
  return ({ mark, what, part, fromWhere, count, kept, day, entry, photo }, lacks = []) => {
    const web = photo === undefined ? undefined : photos.get(photo);
    return {
      mark,
      what,
      where: fromWhere ?? '',
      count: count === undefined ? '' : String(count),
      kept: kept ?? '',
      lacks: lacks.map((each) => LACKS[each]).join('; '),
      day: datedText(day),
      page: page.day(entry),
      part: names.part(part),
      photo: web && { ...web, alt: words.get(web.file) || `${mark}: ${what}` },
    };
  };
}
