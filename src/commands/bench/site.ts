// What the site of a record of life size costs: a full build beside a bare one, a build after one entry changed, and
// what its pages weigh.
import { readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { readFolder } from '../../disk/folder.ts';
import { putAside } from './aside.ts';
import { BARE, layDownBare, pagesOf } from './bare.ts';
import { lifeSizeFolder } from './life-size/lay-down.ts';
import { LIFE_SIZE } from './life-size/record.ts';
import type { Row } from './row.ts';
import { type Ran, runNode } from './run.ts';

export const SITE = join('.cache', 'bench', 'site');
export const FOLDER = lifeSizeFolder(LIFE_SIZE);
/** Each is built so many times, in turns, and the shortest counts: what else the machine does only adds. */
const TIMES = 5;
/** Seconds after which no further turn is begun, so that a slow machine comes to an end. */
const ENOUGH = 360;
const GOAL = { full: { ratio: 1.5, megabytes: 1000 }, again: { ratio: 0.35 } };

export async function siteRows(): Promise<Row[]> {
  const [ours, bare, drawn]: [Ran[], Ran[], Ran[]] = [[], [], []];
  const [words, hours]: [Ran[], Ran[]] = [[], []];
  let pages: string[] = [];
  const end = performance.now() + 1000 * ENOUGH;
  for (let time = 0; time < TIMES && (time === 0 || performance.now() < end); time++) {
    ours.push(await buildAll());
    if (time === 0) pages = await layDownBare(SITE, { for: 'build', texts: await texts() });
    bare.push(await buildBare('parse.mjs'));
    drawn.push(await buildBare('build.mjs'));
    words.push(await afterChange((text) => `${text}\nOne more thing was seen at the end of the day.\n`));
    await buildOver();
    hours.push(await afterChange((text) => text.replace(/time: .*/, 'time: 3h 45m')));
  }
  const [full, floor] = [shortest(ours), shortest(bare)];
  const again = (id: string, what: string, ran: Ran): Row => ({
    ...row(id, what, ran, 'the full build', full.seconds),
    goal: GOAL.again,
  });
  return [
    {
      ...row(
        'build',
        `full build of ${pages.length} pages, pictures made`,
        full,
        'a bare Astro site of as many pages, the same bodies and pictures, the texts parsed',
        floor.seconds,
      ),
      goal: GOAL.full,
    },
    row(
      'build-drawn',
      'the same full build',
      full,
      'the bare site, its texts not parsed',
      shortest(drawn).seconds,
    ),
    again('rebuild-words', 'build after a sentence was added', shortest(words)),
    again('rebuild-hours', 'build after an hour was changed', shortest(hours)),
    ...(await weightRows(pages)),
  ];
}

/** What builds keep from one to the next, apart from pictures. */
const KEPT = ['code', 'compiled', 'kept'].map((name) => join('.cache', name));

/** Builds the record of life size from nothing but its made pictures. */
export async function buildAll(): Promise<Ran> {
  for (const folder of [SITE, ...KEPT]) await putAside(folder);
  return buildOver();
}

/** A bare site of one's own making, each time from nothing. */
async function buildBare(script: string): Promise<Ran> {
  for (const made of ['dist', '.astro', 'node_modules']) await putAside(join(BARE, made));
  return runNode([script], { cwd: BARE, env: { NODE_ENV: 'production' } });
}

/** The paths of the record's texts. */
async function texts(): Promise<string[]> {
  const { files } = await readFolder(FOLDER);
  return files.map(({ file }) => resolve(FOLDER, file));
}

function buildOver(): Promise<Ran> {
  return runNode(['src/commands/build.ts', '--out', SITE], { env: { RECORD: resolve(FOLDER) } });
}

/** Builds again after the last entry was changed, and puts the entry back. */
async function afterChange(change: (text: string) => string): Promise<Ran> {
  const { path, text } = await lastEntry();
  try {
    await writeFile(path, change(text));
    return await buildOver();
  } finally {
    await writeFile(path, text);
  }
}

/** The last day of the record, which ends in its words. */
export async function lastEntry(): Promise<{ path: string; day: string; text: string }> {
  const { files } = await readFolder(FOLDER);
  const entry = files.filter(({ file }) => file.startsWith('log/')).at(-1);
  if (!entry) throw new Error(`${FOLDER} has no log`);
  return { path: join(FOLDER, entry.file), day: entry.file.slice(-13, -3), text: entry.text };
}

/** Pages as they lie in the folder, and packed as a server sends them. */
async function weightRows(pages: readonly string[]): Promise<Row[]> {
  const weighed = await Promise.all(
    pages.map(async (page) => ({ page, html: await readFile(join(SITE, `${page}.html`)) })),
  );
  weighed.sort((one, other) => one.html.length - other.html.length);
  const [median, largest] = [weighed[weighed.length >> 1], weighed.at(-1)];
  const all = (await pagesOf(SITE)).length;
  if (!median || !largest || all !== pages.length) throw new Error('The site has no pages');
  const scripts = await scriptsOf(largest.html.toString());
  return [
    weight('page-largest', 'the largest page, packed', largest.html, largest.page),
    weight('page-median', 'the page of middle weight, packed', median.html, median.page),
    ...(scripts.length > 0
      ? [weight('page-scripts', 'scripts of the largest page, packed', scripts, largest.page)]
      : []),
  ];
}

async function scriptsOf(html: string): Promise<Buffer> {
  const named = [...html.matchAll(/<script[^>]* src="([^"]+)"/g)].map(([, src = '']) =>
    src.replace(/^(?:\.{1,2}\/)+/, ''),
  );
  return Buffer.concat(await Promise.all(named.map((src) => readFile(join(SITE, src)))));
}

function weight(id: string, what: string, bytes: Buffer, page: string): Row {
  return {
    id,
    what,
    took: gzipSync(bytes).length / 1000,
    against: `unpacked, ${page}.html`,
    floor: bytes.length / 1000,
    unit: 'kB',
  };
}

function row(id: string, what: string, { seconds, megabytes }: Ran, against: string, floor: number): Row {
  return { id, what, took: seconds, against, floor, ...(megabytes === undefined ? {} : { megabytes }) };
}

function shortest(runs: readonly Ran[]): Ran {
  return [...runs].sort((one, other) => one.seconds - other.seconds)[0] as Ran;
}
