// The pictures of the whole car in the order in which they were taken, on pages of a month each.
import { type Day, monthOf, monthText } from '../figures/days.ts';
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import { page } from './links.ts';
import { type Photos, type Shot, shotsOf } from './photos.ts';
import { takenOn } from './shot-words.ts';

/** Pictures on a page at most. */
export const MOST = 60;

/** A page to turn to. */
type Turn = { path: string; title: string };

/** A page of pictures: one of the `of` pages of its month, its part or its word, with those before and after it. */
export type ShotPage = Turn & {
  shots: Shot[];
  number: number;
  of: number;
  before: Turn | undefined;
  after: Turn | undefined;
};

/** Pages that follow one another; pictures take one at least. */
export type ShotPages = [ShotPage, ...ShotPage[]];

/** A month with its pictures, how many days they are of, and its pages. */
export type ShotMonth = { month: string; title: string; days: number; shots: Shot[]; pages: ShotPages };

/** Every picture, by the clock of its camera; the day of its entry stands before the hours of that day. */
export function allShots(record: CarRecord, photos: Photos): readonly Shot[] {
  return inOrder(record)(photos);
}

/** The months in which pictures were taken, oldest first. Their pages follow one another from month to month. */
export function shotMonths(record: CarRecord, photos: Photos): ShotMonth[] {
  return monthsOnce(record)(photos);
}

const monthsOnce = once((record: CarRecord) => once((photos: Photos) => monthsOfShots(record, photos)));

function monthsOfShots(record: CarRecord, photos: Photos): ShotMonth[] {
  const months = [...Map.groupBy(allShots(record, photos), (shot) => monthOf(takenOn(shot)))];
  const pages = inTurn(
    months.flatMap(([month, shots]) => split(shots, monthText(month), (n) => page.photoMonth(month, n))),
  );
  return months.map(([month, shots]) => ({
    month,
    title: monthText(month),
    days: daysOfShots(shots).size,
    shots,
    pages: pages.filter(({ shots: [first] }) => first && monthOf(takenOn(first)) === month) as ShotPages,
  }));
}

/** The last pictures of those in order, so many at most. */
export function newest(shots: readonly Shot[], most: number): Shot[] {
  return shots.slice(-most);
}

/** Pages of pictures under one title, in order; later ones say their number. */
export function shotPages(shots: readonly Shot[], title: string, path: (n: number) => string): ShotPages {
  return inTurn(split(shots, title, path)) as ShotPages;
}

/** The days of a page, by the first picture of each; `id` is its place there. */
export function daysOfShots(shots: readonly Shot[]): ReadonlyMap<Shot, { day: Day; id: string }> {
  const firsts = shots.filter((shot, i) => i === 0 || takenOn(shot) !== takenOn(shots[i - 1] ?? shot));
  return new Map(firsts.map((shot) => [shot, { day: takenOn(shot), id: `on-${takenOn(shot)}` }]));
}

type Sheet = Omit<ShotPage, 'before' | 'after'>;

function split(shots: readonly Shot[], title: string, path: (n: number) => string): Sheet[] {
  const of = Math.ceil(shots.length / MOST);
  return Array.from({ length: of }, (_, i) => ({
    path: path(i + 1),
    title: i === 0 ? title : `${title}, page ${i + 1}`,
    shots: shots.slice(i * MOST, (i + 1) * MOST),
    number: i + 1,
    of,
  }));
}

function inTurn(sheets: readonly Sheet[]): ShotPage[] {
  return sheets.map((sheet, i) => ({ ...sheet, before: sheets[i - 1], after: sheets[i + 1] }));
}

/** Put in order once: every page of pictures asks for them. */
const inOrder = once((record: CarRecord) =>
  once((photos: Photos) =>
    record.entries
      .flatMap((entry) => shotsOf(entry, photos))
      .map((shot) => ({ shot, clock: clockOf(shot) }))
      .sort((a, b) => (a.clock === b.clock ? 0 : a.clock < b.clock ? -1 : 1))
      .map(({ shot }) => shot),
  ),
);

/** What the camera's clock showed, wherever it was. */
function clockOf({ when }: Shot): string {
  return when.replace(/(?:Z|[+-]\d\d:\d\d)$/, '');
}
