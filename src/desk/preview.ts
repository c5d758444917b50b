// The day’s page as the site would draw it, of a form that isn’t written yet. It is drawn only while somebody looks at
// it, and kept for as long as the browser takes to fetch what belongs to it.
import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Day } from '../figures/days.ts';
import { lookAtPhotos } from '../photos/look.ts';
import { type Made, photoCache } from '../photos/make.ts';
import { pictureAt } from '../photos/plan.ts';
import type { Opened } from '../record/open.ts';
import { type CarRecord, type Entry, photoPath } from '../record/record.ts';
import { page } from '../views/links.ts';
import type { Form } from './browser/told.ts';
import { fileOf, liesWithin } from './entry-of.ts';
import type { Seen } from './looked.ts';
import type { RecordAt } from './lying.ts';
import { type Served, servedFile } from './served.ts';
import { webPictures } from './web-pictures.ts';

/** What a page is drawn from: the record as it would be, and what was made of the pictures on it. */
export type Drawn = { opened: Opened; today: Day; made: Made };
/** Draws the page of an entry, or without one that of the checks, as HTML with relative links. */
export type Draws = (entry: string | undefined, from: Drawn) => Promise<string>;

/** Pages by their path in the site; those that few look at are drawn when they are asked for. */
type Pages = Map<string, () => Promise<string>>;

/** Where the page is, on the desk; or a sentence that says why there is none. */
export type Preview = { page: string } | { refused: string };
export type Previews = ReturnType<typeof previews>;

export function previews(draw: Draws, at: RecordAt) {
  const pictures = webPictures(at.root);
  const kept = new Map<string, Pages>();
  const keep = (pages: Pages): string => {
    const key = randomUUID();
    kept.set(key, pages);
    for (const old of [...kept.keys()].slice(0, -MOST)) kept.delete(old);
    return key;
  };
  return {
    /** Draws what was seen of a form. */
    async of({ entry }: Form, { told, lying: { files: texts, today }, would }: Seen): Promise<Preview> {
      if (told.conflict)
        return { refused: 'The page isn’t drawn while the file is changed by somebody else.' };
      const record = would?.record;
      const file = fileOf(
        entry,
        texts.map((written) => written.file),
      );
      const written = record?.entries.find((one) => one.file === file);
      if (!would || !record || !written)
        return { refused: told.others[0] ?? 'Nothing is written of this day yet, so there is no page.' };
      try {
        const photos = await pictures(await lyingPictures(at.root, written, record));
        const problems = await lookAtPhotos(at.root, record.photos);
        const from = { opened: would, today, made: { photos, problems, made: 0 } };
        const day = withoutScripts(await draw(written.id, from));
        const pages: Pages = new Map([
          [page.day(written.id), async () => day],
          [page.problems, async () => withoutScripts(await draw(undefined, from))],
        ]);
        return { page: `/preview/${keep(pages)}/${page.day(written.id)}` };
      } catch (error) {
        console.error('The page couldn’t be drawn.', error);
        return { refused: 'The page can’t be drawn now; the terminal says why. Writing goes on as before.' };
      }
    },
    /** A page that was drawn, or what belongs to it, by its path on the desk. */
    async at(path: string): Promise<Served | undefined> {
      const [, key = '', file = ''] = /^\/preview\/([^/]+)\/(.+)$/.exec(path) ?? [];
      const pages = kept.get(key);
      if (!pages) return undefined;
      const drawn = pages.get(file);
      if (drawn) return { type: HTML, body: await drawn() };
      if (file.endsWith('.html')) return { type: HTML, body: ELSEWHERE };
      const picture = pictureAt(file);
      if (picture === undefined) return servedFile(`/${file}`);
      const body = await readFile(join(photoCache, picture)).catch(() => undefined);
      return body && { type: 'image/webp', body };
    },
  };
}

/** The pictures of an entry that lie in the record, as paths in it. */
async function lyingPictures(
  root: string,
  { photos = [], day }: Entry,
  record: CarRecord,
): Promise<string[]> {
  const files = photos.map(({ file }) => photoPath(file, day)).filter((file) => record.photos.includes(file));
  const within = await Promise.all(files.map((file) => liesWithin(root, file)));
  return files.filter((_, n) => within[n]);
}

/** So many pages are kept: those of a few browsers that look at once. */
const MOST = 12;
const HTML = 'text/html; charset=utf-8';
const ELSEWHERE =
  '<!doctype html><html lang="en-US"><title>Another page</title><p>Only the day and its checks are drawn here. npm run dev shows the other pages.</p></html>';

/** Scripts are off where the page is shown; a browser would say so of each. */
const withoutScripts = (html: string) => html.replaceAll(/<script\b[^>]*>[\s\S]*?<\/script>/g, '');

/** What such a page may do: be shown by the desk, with its own styles and pictures, and run nothing. */
export const SHOWN_ONLY =
  "default-src 'none'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'; sandbox allow-same-origin";
