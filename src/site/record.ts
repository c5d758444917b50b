// The one module from which pages have the record: as it was handed to them, by a build once, by `npm run dev` again when
// a file of the record has changed. Where nothing is handed it opens the record itself.
import { type Handed, handedToPages } from '../disk/handed.ts';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import type { Day } from '../figures/days.ts';
import { makePhotos } from '../photos/make.ts';
import { PHOTO_RULE } from '../photos/verdict.ts';
import { forAudience } from '../record/audience.ts';
import { once } from '../record/once.ts';
import type { Counts } from '../record/open.ts';
import { type Problem, sorted } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import { choiceDraws } from '../rollup/ahead/choice-draws.ts';
import { drawnBefore } from '../rollup/ahead/drawn-before.ts';
import { finishDraws } from '../rollup/ahead/forecast.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { audienceNamed, type Sees, seesOf } from '../views/audience.ts';
import { type BookCosts, bookCosts } from '../views/book/costs.ts';
import { type Frame, frameOf } from '../views/frame.ts';
import type { Photos } from '../views/photos.ts';
import { countText } from '../views/problem-text.ts';
import { costCharts, forecastCharts } from '../views/told-charts.ts';

/** What the pages are made from. Without `record` only the page of problems can be made. */
export type Site = {
  problems: Problem[];
  count: string;
  errors: number;
  today: Day;
  came?: BookCosts;
} & Book;
type Book = { record: CarRecord; rollup: Rollup; photos: Photos } | { record: undefined };

let opened: { handed: Handed | undefined; site: Promise<Site> } | undefined;

/** The record, opened once for as long as nothing in it changes. */
export function site(): Promise<Site> {
  const handed = handedToPages();
  if (opened && opened.handed === handed) return opened.site;
  const opening = { handed, site: open(handed) };
  opened = opening;
  // What stood in the way may be gone the next time.
  opening.site.catch(() => {
    if (opened === opening) opened = undefined;
  });
  return opening.site;
}

/** The record for a page that can't be made without it. */
export async function book(): Promise<Site & { record: CarRecord }> {
  const whole = await site();
  if (!whole.record) throw new Error('The record can’t be opened; npm run check says why.');
  return whole;
}

/** What stands around every page. */
export async function frame(): Promise<Frame> {
  return framed(await site());
}

const framed = once((site: Site) => frameOf(site.record, site, sees));

/** What the audience that the pages are made for may see, asked anew each time: pages outlive a build in one process. */
export const sees = new Proxy({} as Sees, {
  get: (_, key) => Reflect.get(seesNow(), key),
});

let known: { handed: Handed | undefined; by: string; sees: Sees } | undefined;

/** Looked up once for what a build hands over: a page asks a hundred times, and the environment asks the system. */
function seesNow(): Sees {
  const handed = handedToPages();
  if (known?.handed && known.handed === handed) return known.sees;
  const { ASHFRAME_FOR: audience, ASHFRAME_COSTS: costs } = process.env;
  const by = `${audience} ${costs}`;
  const same = known?.by === by ? known.sees : undefined;
  known = { handed, by, sees: same ?? seesOf(audienceNamed(audience) ?? 'history', costs === 'yes') };
  return known.sees;
}

async function open(handed: Handed | undefined): Promise<Site> {
  const {
    record: whole,
    problems: found,
    read,
    folder,
    today,
  } = handed?.opened ?? (await openFolder(recordFolder()));
  if (!whole) return { ...told(found, read), today, record: undefined };
  const { photos, problems: inPhotos } = handed?.made ?? (await makePhotos(folder, whole.photos));
  // Making a picture says more of it than a look at its head did.
  const problems = sorted([...found.filter(({ rule }) => rule !== PHOTO_RULE), ...inPhotos]);
  // Everything after this, sums too, knows only what this audience may see.
  const record = forAudience(whole, sees.audience);
  if (handed?.drawn) drawnBefore(record, handed.drawn);
  // The one thing of the rest that a history may be asked for: sums, in words and tables.
  const came = sees.came ? { came: bookCosts(whole, rollUp(whole)) } : {};
  const rollup = rollUp(record);
  if (handed?.ahead && sees.money) {
    const isKnown = (name: string) => handed.drawn?.before.has(name) ?? false;
    const charts = costCharts(record, rollup);
    handed
      .ahead({ choices: choiceDraws(record, rollup), finishes: finishDraws(record, rollup, isKnown), charts })
      ?.then(() => handed.ahead?.({ choices: [], finishes: [], charts: forecastCharts(record, rollup) }))
      // It comes up again where it is waited for, or drawn.
      .catch(() => {});
  }
  return { ...told(problems, read), today, record, rollup, photos, ...came };
}

function told(problems: Problem[], read: Counts) {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  return { problems, errors, count: countText(problems, read) };
}
