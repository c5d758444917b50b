// Brings the pictures of a phone or card into a record: copies the new ones, and lists them in their days' entries to
// be captioned. It may be interrupted and run again: what is there already is found by its content.
import { readdir, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { openFolder } from '../../disk/open-folder.ts';
import type { Day } from '../../figures/days.ts';
import { mentions } from '../../record/mentions.ts';
import type { CarRecord } from '../../record/record.ts';
import { photoCache } from '../make.ts';
import { progress, type Screen } from '../progress.ts';
import { AT_ONCE, eachInTurn } from '../turns.ts';
import { type Card, filesOnCard, lookInto } from './collect.ts';
import { copyIn } from './copy-in.ts';
import { type Listed, listInEntries } from './list-in-entries.ts';
import { type Incoming, type Plan, planIncoming } from './plan.ts';
import { contentsOf, namesIn } from './present.ts';

/** What was done, or with `dryRun` what would be. */
export type BroughtIn = Plan & { others: string[]; listed: Listed[]; dryRun: boolean };
export type Wish = {
  /** The folder of the phone or card; without it only what lies in photos/ is listed. */
  from?: string;
  /** The day of all pictures, whatever the camera says. */
  day?: Day;
  dryRun: boolean;
  today: Day;
};
type World = { cache?: string; screen?: Screen };

/** Brings pictures in. What can't be begun at all is one sentence instead. */
export async function bringIn(
  folder: string,
  wish: Wish,
  { cache = photoCache, screen = process.stderr }: World = {},
): Promise<BroughtIn | string> {
  const { record } = await openFolder(folder, wish.today);
  if (!record) return 'The record can’t be opened; npm run check says why.';
  const root = await realpath(folder);
  const source = wish.from === undefined ? undefined : await sourceOf(wish.from, root);
  if (typeof source === 'string') return source;
  const card: Card = source ? await filesOnCard(source.path) : { pictures: [], others: [], closed: [] };
  const incoming = source ? await lookedInto(source.path, card, screen) : [];
  const present = {
    byContent: await contentsOf(root, record.photos, new Set(card.pictures.map(({ size }) => size)), cache),
    namesIn: await namesIn(root),
    opened: record.car.opened,
    today: wish.today,
  };
  const plan = planIncoming(incoming, present, wish.day);
  plan.refused.push(...card.closed);
  if (!wish.dryRun && source) plan.refused.push(...(await copyIn(source.path, root, plan, screen)));
  const listed = await listInEntries(root, record, await unlisted(root, record, plan, wish), wish.dryRun);
  return { ...plan, others: card.others, listed, dryRun: wish.dryRun };
}

/** The folder to look through; a sentence when it can't be. */
async function sourceOf(from: string, root: string): Promise<{ path: string } | string> {
  const path = await realpath(from).catch(() => undefined);
  if (path === undefined || !(await stat(path)).isDirectory()) return `There is no folder \`${from}\`.`;
  const code = await readdir(path).then(
    () => undefined,
    (error: NodeJS.ErrnoException) => error.code,
  );
  if (code !== undefined)
    return `\`${from}\` can’t be opened (${code}). See that it is there and may be read.`;
  const photos = join(root, 'photos');
  if (`${path}${sep}`.startsWith(`${photos}${sep}`)) {
    return `\`${from}\` is where the record keeps its pictures. Name the folder of the phone or card; to list what lies in photos/ already, name none.`;
  }
  if (`${photos}${sep}`.startsWith(`${path}${sep}`)) {
    return `\`${from}\` holds the record itself. Name the folder of the phone or card alone.`;
  }
  return { path };
}

async function lookedInto(source: string, { pictures }: Card, screen: Screen): Promise<Incoming[]> {
  const bar = progress(pictures.length, screen);
  const looked: Incoming[] = [];
  await eachInTurn(pictures, AT_ONCE, async ({ path }) => {
    looked.push(await lookInto(source, path));
    bar.step();
  });
  bar.end();
  return looked;
}

/** Pictures to be listed, by day: the new ones, and those that are there and that no entry names. */
async function unlisted(root: string, record: CarRecord, plan: Plan, { from, today, day }: Wish) {
  const named = new Set(
    mentions(record).flatMap(({ refers, name, entry }) => (refers === 'photo' && entry ? [name] : [])),
  );
  const known = from === undefined ? record.photos : plan.known.map(({ path }) => path);
  const there = new Set(known.filter((path) => !named.has(path) && record.photos.includes(path)));
  const days = new Map<Day, string[]>();
  const put = (on: Day, path: string) => days.set(on, [...(days.get(on) ?? []), path]);
  for (const { to, day: on } of plan.copies) put(on, to);
  for (const path of [...there].sort()) {
    const on = day ?? (await dayOf(root, path));
    if (on < record.car.opened || on > today) plan.outside.push({ from: path, day: on });
    else put(on, path);
  }
  return new Map([...days].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** The day of a picture that lies in photos/: its folder's, else the camera's, else the file's. */
async function dayOf(root: string, path: string): Promise<Day> {
  const [, folder] = /^photos\/(\d{4}-\d{2}-\d{2})\//.exec(path) ?? [];
  if (folder) return folder;
  const { taken, changed } = await lookInto(root, path);
  return taken?.slice(0, 10) ?? changed;
}
