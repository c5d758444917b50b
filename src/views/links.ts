// Where each page lies, and links between pages: relative, with file names, so that the site opens from a
// folder by double click as well as from a web host.
import { keptByWindows } from '../record/id.ts';
import type { CarRecord } from '../record/record.ts';
import type { Grouping } from '../rollup/cost-lines.ts';

export type { Grouping };

export const page = {
  front: 'index.html',
  days: 'days.html',
  month: (month: string) => `days/${month}.html`,
  day: (entry: string) => `day/${entry}.html`,
  parts: 'parts.html',
  part: (part: string) => `part/${part}.html`,
  order: 'order.html',
  marks: 'marks.html',
  /** What is original, repaired and new. */
  fabric: 'fabric.html',
  /** Where figures come from. */
  sources: 'sources.html',
  measurements: 'measurements.html',
  /** A part’s own page of measurements; the sheet of pads has its name already. */
  measured: (part: string) => `measured/${part === 'pads' ? 'pads-part' : part}.html`,
  pads: 'measured/pads.html',
  photos: 'photos.html',
  photoMonth: (month: string, number = 1) => `photos/${month}${number > 1 ? `-${number}` : ''}.html`,
  photosOfPart: (part: string | undefined, number = 1) =>
    `photos/part/${lineKey(part)}${number > 1 ? `/${number}` : ''}.html`,
  photosShowing: (shows: string, number = 1) => `photos/shows/${shows}${number > 1 ? `-${number}` : ''}.html`,
  pairs: 'photos/pairs.html',
  choices: 'choices.html',
  choice: (choice: string) => `choice/${choice}.html`,
  costs: 'costs.html',
  /** What the work came to: in a history alone, and only when it is asked to say it. */
  cameTo: 'came-to.html',
  orders: 'orders.html',
  /** The shop’s own: no other audience gets it. */
  earned: 'earned.html',
  statements: 'statements.html',
  statement: (key: string) => `statement/${key}.html`,
  forecast: 'forecast.html',
  lines: (by: Grouping, key: string | undefined) => `lines/${by}/${lineKey(key)}.html`,
  linesOfYear: (by: Grouping, key: string | undefined, year: string) =>
    `lines/${by}/${lineKey(key)}/${year}.html`,
  search: 'search.html',
  problems: 'problems.html',
};

/** Letters of a key in a file name: disks take 255 bytes, and a letter may have four. */
const MOST_OF_A_KEY = 50;

/** A row's key as a file name, another for each key: lines that belong to none stand under `none`. */
export function lineKey(key: string | undefined): string {
  if (key === undefined) return 'none';
  const name = key
    .toLowerCase()
    .replace(/[^\p{L}\p{N}-]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  const asRead = name.replaceAll('-', ' ').replace(/^./u, (first) => first.toUpperCase());
  const short = [...name].slice(0, MOST_OF_A_KEY).join('');
  const plain = short === name && name !== 'none' && !keptByWindows(name);
  return plain && (key === name || key === asRead) ? name : `${short}-${signOf(key)}`;
}

/** A short sign for a text, so that names that differ in a capital or a comma don't share a file. */
function signOf(text: string): string {
  let sign = 5381;
  for (const letter of text) sign = (Math.imul(sign, 33) ^ (letter.codePointAt(0) ?? 0)) >>> 0;
  return sign.toString(36);
}

/** The page that a row is about, where it has one: that of its part or its choice. */
export function aboutOf(
  by: Grouping,
  key: string | undefined,
  { parts, choices }: CarRecord,
): { about?: string } {
  if (by === 'part' && parts.some(({ id }) => id === key)) return { about: page.part(key ?? '') };
  if (by === 'choice' && choices.some(({ id }) => id === key)) return { about: page.choice(key ?? '') };
  return {};
}

/** The link from one page to another, or to a file beside the pages. */
export function href(from: string, to: string): string {
  return '../'.repeat(from.split('/').length - 1) + to;
}
