// Checks a record and builds its site.
import { access, cp, readdir } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { onDisk } from '../disk/disk-fault.ts';
import { handToPages } from '../disk/handed.ts';
import { keptOf } from '../disk/kept.ts';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { putFolder } from '../disk/put-folder.ts';
import { makePhotos } from '../photos/make.ts';
import { PICTURES } from '../photos/plan.ts';
import { publishPhotos, stillPublished } from '../photos/publish.ts';
import { inWorkFolder } from '../photos/work-folder.ts';
import { forAudience } from '../record/audience.ts';
import { type Audience, BUILT, type Sees, seesOf } from '../views/audience.ts';
import { namedPhotos } from '../views/photos.ts';
import { problemsText, problemText } from '../views/problem-text.ts';
import { drawsAhead } from './build/ahead.ts';
import { bundleForNext, type Compiled, compiledPages } from './build/compiled.ts';
import { drawPages } from './build/draw.ts';
import { programDigest } from './build/program.ts';
import { standingPages } from './build/standing.ts';

/** Which program builds, by its digest, and what was kept of it. */
export type Started = { program: string; compiled: Compiled | undefined };

/**
 * Builds the site of the record for one audience into a folder; with `costs` a history says what the work came to. Errors
 * stop it, after all of them are printed; false then. The site is made beside and put in place when it is whole, so that
 * builds of several records don't meet. `say` gets what is told of a build that went well. Throws `DiskFault`; the
 * site that was there is as it was then.
 */
export async function buildSite(
  out = siteFolder(),
  say: (text: string) => void = console.log,
  audience: Audience = 'shop',
  costs = false,
  { program, compiled: pagesKept }: Started = { program: programDigest(), compiled: undefined },
): Promise<boolean> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  publishedWhatever(process.env);
  process.env.ASHFRAME_FOR = audience;
  process.env.ASHFRAME_COSTS = costs ? 'yes' : '';
  if (await holdsOther(out)) {
    console.error(`${out} holds something other than a built site. Name an empty folder, or a new one.`);
    return false;
  }
  // Compiled while the record is read; nothing is told of it before the record is.
  const given = new AbortController();
  const compiling = pagesKept
    ? { done: Promise.resolve(pagesKept) }
    : await compiledPages(program, given.signal);
  compiling.done.catch(() => {});
  const kept = await keptOf(recordFolder(), `${audience}${costs ? '-costs' : ''}`, program);
  const opened = await openFolder(recordFolder(), undefined, kept);
  const { record, problems, read, folder, known } = opened;
  say(problemsText(problems, read));
  if (!record || problems.some(({ severity }) => severity === 'error')) {
    given.abort();
    console.error('The site isn’t built while the record has errors.');
    return false;
  }
  // Making a picture can find more than the look at its head that was told of above.
  const told = new Set(problems.map(problemText));
  const made = await makePhotos(folder, record.photos, { known });
  for (const more of made.problems.map(problemText)) if (!told.has(more)) say(more);
  const place = resolve(out);
  const last = kept.site.place === place ? kept.site : { published: new Map(), pages: new Map() };
  const standing = standingPages(place, last.pages);
  const ahead = drawsAhead(kept.drawn, pagesKept?.thread === undefined ? {} : { script: pagesKept.thread });
  handToPages({ opened, made, drawn: kept.drawn, ahead: ahead.begin });
  let bundling = { done: Promise.resolve() };
  const make = async (work: string): Promise<void> => {
    const making = join(work, 'site');
    const compiled = await compiling.done;
    const { pages, beside } = compiled;
    bundling = await bundleForNext(compiled, given.signal);
    const sees = seesOf(audience, costs);
    await layOut(beside, making, sees);
    await drawPages(pages, making, { sees, takenOver: standing.takenOver, drawn: ahead.done });
    const named = namedPhotos(forAudience(record, audience));
    const shown = [...made.photos].flatMap(([file, photo]) => (named.has(file) ? [photo] : []));
    const pictures = { folder: join(place, PICTURES), published: last.published };
    const stay = stillPublished(shown, pictures);
    const published = stay
      ? last.published
      : await publishPhotos(shown, join(making, PICTURES), { last: pictures });
    kept.site = { place, published, pages: standing.keptOf(making) };
    await putFolder(making, out, stay ? [PICTURES] : []);
  };
  try {
    await onDisk(WORK, () => inWorkFolder(WORK, make));
    await onDisk(WORK, kept.keep);
  } catch (error) {
    given.abort();
    throw error;
  } finally {
    await ahead.rest();
  }
  say(`The site is in ${out}: open index.html in it.`);
  await bundling.done;
  return true;
}

/** Where sites are made before they are put in place. */
const WORK = join('.cache', 'sites');

/** Lays out what every site has besides its pages. */
function layOut(beside: string, making: string, sees: Sees): Promise<void> {
  return cp(beside, making, {
    recursive: true,
    filter: (from) => sees.has(relative(beside, from).split(sep).join('/')),
  });
}

/** A folder that is put in place of another takes all of it: only a site made here, or nothing, may give way. */
async function holdsOther(out: string): Promise<boolean> {
  const files = await readdir(out).catch(({ code }: NodeJS.ErrnoException) =>
    code === 'ENOENT' ? [] : [code],
  );
  if (files.length === 0) return false;
  return access(join(out, 'style', 'ashframe.css')).then(
    () => false,
    () => true,
  );
}

/** Frees the build from what a shell is set up for: a published page always says what it may load. */
function publishedWhatever(env: NodeJS.ProcessEnv): void {
  env.NODE_ENV = 'production';
  for (const name of ['DEV', 'PROD', 'MODE', 'SSR', 'BASE_URL']) delete env[name];
}

/** Where the site built for an audience lies. */
export function siteFolder(audience: Audience = 'shop'): string {
  return process.env.ASHFRAME_OUT || BUILT[audience];
}
