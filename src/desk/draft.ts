// Keeps what was typed at the desk and isn’t written yet, so that it outlives the tab, the browser and the desk.
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { deskDraft, draftFolder } from '../disk/drafts.ts';
import { dayHere } from '../disk/open-folder.ts';
import { writeText } from '../disk/write-text.ts';
import { shortDayText } from '../figures/days.ts';
import { lineDifference } from '../views/line-difference.ts';
import type { Form, KeptDraft } from './browser/told.ts';
import { entryAfter } from './entry-after.ts';
import { liesWithin } from './entry-of.ts';
import { form } from './form.ts';
import type { Seen } from './looked.ts';
import type { RecordAt } from './lying.ts';

/** `texts` are those that the form was filled in upon, so that a later desk knows them too. */
const draft = z.strictObject({ at: z.iso.datetime(), form, texts: z.array(z.string()) });

/** Keeps a form that says more than the files; of one that doesn’t, what was kept goes. Gives the time, such as `17:40`. */
export async function keepDraft(
  at: RecordAt,
  filled: Form,
  { told, plans }: Seen,
): Promise<string | undefined> {
  const { entry, read, decided } = filled;
  if (!ENTRY.test(entry)) return undefined;
  const says = plans.length > 0 || told.conflict || told.errors > 0;
  if (!says) return dropDraft(at, entry);
  const path = deskDraft(entry);
  if (!(await liesWithin(at.root, path))) return undefined;
  const now = new Date();
  const texts = [read, decided?.read].flatMap((sign) => (sign && at.given(sign)) ?? []);
  await writeText(join(at.root, path), JSON.stringify({ at: now.toISOString(), form: filled, texts }));
  return clock(now);
}

/** Takes away what was kept of an entry. */
export async function dropDraft(at: RecordAt, entry: string): Promise<undefined> {
  const path = deskDraft(entry);
  if (ENTRY.test(entry) && (await liesWithin(at.root, path))) await rm(join(at.root, path), { force: true });
}

/** What was kept of an entry, beside its text as it is now; nothing where nothing was, or it can’t be read. */
export async function keptDraft(
  at: RecordAt,
  entry: string,
  text: string | undefined,
): Promise<KeptDraft | undefined> {
  const path = deskDraft(entry);
  if (!ENTRY.test(entry) || !(await liesWithin(at.root, path))) return undefined;
  const json = await readFile(join(at.root, path), 'utf8').catch(() => undefined);
  const kept = json === undefined ? undefined : parsed(json);
  if (!kept || kept.form.entry !== entry) return undefined;
  for (const one of kept.texts) at.give(one);
  const filled = kept.form as Form;
  const before = at.given(filled.read) ?? '';
  return {
    said: timeText(new Date(kept.at)),
    form: filled,
    mine: lineDifference(before, entryAfter(before, filled) ?? before),
    ...(at.give(text) === filled.read ? {} : { theirs: lineDifference(before, text ?? '') }),
  };
}

/** The entries of which something is kept, the newest first. */
export async function draftEntries({ root }: RecordAt): Promise<string[]> {
  const names = await readdir(join(root, draftFolder)).catch(() => []);
  return names
    .flatMap((name) => /^(.+)\.desk\.json$/.exec(name)?.[1] ?? [])
    .filter((entry) => ENTRY.test(entry))
    .sort()
    .reverse();
}

const ENTRY = /^\d{4}-\d{2}-\d{2}(?:-[b-z])?$/;

function parsed(json: string) {
  try {
    return draft.parse(JSON.parse(json));
  } catch {
    return undefined;
  }
}

/** `at 17:40` of today, `on November 20 at 17:40` of another day, as the clock on the wall has it. */
function timeText(moment: Date): string {
  const day = dayHere(moment);
  return day === dayHere(new Date()) ? `at ${clock(moment)}` : `on ${shortDayText(day)} at ${clock(moment)}`;
}

const clock = (moment: Date) =>
  [moment.getHours(), moment.getMinutes()].map((figure) => String(figure).padStart(2, '0')).join(':');
