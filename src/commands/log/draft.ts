// Keeps what has been answered so far beside the record, where no reader of the record looks: an entry like any other.
import { access, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { deskDraft, draftFolder } from '../../disk/drafts.ts';
import { writeText } from '../../disk/write-text.ts';
import { type Day, isDay } from '../../figures/days.ts';
import { splitFrontMatter } from '../../record/front-matter.ts';
import { type Added, addedToEntry, isNothing } from '../../record/writing/add-to-entry.ts';
import type { Keys, Value } from '../../record/writing/edit.ts';
import { withoutPlaces } from '../../record/writing/read-back.ts';

/** The draft of a day, as a path from the record’s folder. */
export const draftOf = (day: Day) => `${draftFolder}/${day}.md`;

/** Writes down what there is; a draft of nothing is taken away. */
export async function keepDraft(root: string, day: Day, added: Added): Promise<void> {
  const text = addedToEntry('', added);
  if (text === undefined || isNothing(added)) await dropDraft(root, day);
  else await writeText(join(root, draftOf(day)), text);
}

/** What a draft holds; nothing when there is none or it can’t be read. */
export async function readDraft(root: string, day: Day): Promise<Added | undefined> {
  const text = await readFile(join(root, draftOf(day)), 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  const { values, body, broken } = splitFrontMatter(draftOf(day), text);
  if (broken) return undefined;
  const { by, ...lists } = withoutPlaces(values);
  const words = body.markdown.trim();
  return {
    ...(typeof by === 'string' ? { by } : {}),
    lists: Object.fromEntries(Object.entries(lists).map(([key, value]) => [key, listed(value)])),
    ...(words === '' ? {} : { words }),
  };
}

/** True when something was typed of the day at the desk and isn’t written. */
export async function hasDeskDraft(root: string, day: Day): Promise<boolean> {
  return access(join(root, deskDraft(day))).then(
    () => true,
    () => false,
  );
}

/** The days that have a draft, the newest first. */
export async function draftDays(root: string): Promise<Day[]> {
  const names = await readdir(join(root, draftFolder)).catch(() => []);
  return names
    .map((name) => name.replace(/\.md$/, ''))
    .filter(isDay)
    .sort()
    .reverse();
}

export async function dropDraft(root: string, day: Day): Promise<void> {
  await rm(join(root, draftOf(day)), { force: true });
}

const listed = (value: Value | undefined): Value[] =>
  Array.isArray(value) ? [...(value as Value[])] : value === undefined ? [] : [value as Keys | string];
