// A run of the log in a terminal: the day, its draft, the questions, what would be written, and the writing.
import { type Day, isDay } from '../../figures/days.ts';
import type { Opened } from '../../record/open.ts';
import { type Added, isNothing } from '../../record/writing/add-to-entry.ts';
import type { Lying } from '../../record/writing/day-plan.ts';
import { entryFileOf } from '../../record/writing/entry-file.ts';
import { differenceText } from '../../views/line-difference.ts';
import { askDay } from './ask-day.ts';
import { type Asker, Stopped } from './asker.ts';
import { draftDays, draftOf, dropDraft, hasDeskDraft, keepDraft, readDraft } from './draft.ts';
import { movingAsker } from './moving-asker.ts';
import { plainAsker } from './plain-asker.ts';
import { plannedDay, writeDay } from './write-day.ts';

/** The record that is written in, and how its writer is asked. */
export type At = { root: string; lying: Lying; opened: Opened; plain: boolean };

/** Gives the code that the command ends with: 0, or 1 when nothing was written. */
export async function converse(
  at: At,
  begun: Added,
  on: Day | undefined,
  dryRun: boolean,
  asker: Asker = at.plain ? plainAsker() : movingAsker(),
): Promise<number> {
  let day: Day | undefined;
  try {
    day = on ?? (await askWhen(asker, at));
    return await oneDay(at, asker, day, begun, dryRun);
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    const kept = day !== undefined && (await readDraft(at.root, day)) !== undefined;
    asker.say(
      kept
        ? `Stopped. What was said is kept in ${draftOf(day ?? '')}; npm run log goes on with it.`
        : 'Stopped. Nothing was written.',
    );
    return 1;
  } finally {
    asker.close();
  }
}

async function oneDay(at: At, asker: Asker, day: Day, begun: Added, dryRun: boolean): Promise<number> {
  const { root, lying, opened } = at;
  const { record } = opened;
  if (!record) return 1;
  const { file, isNew } = entryFileOf(
    day,
    lying.files.map((written) => written.file),
  );
  asker.say(
    isNew ? `A new entry, ${file}.` : `${file} is there; what you add goes behind what stands in it.`,
  );
  if (await hasDeskDraft(root, day))
    asker.say('What was typed of this day at the desk isn’t written yet; npm run desk goes on with it.');
  const kept = await readDraft(root, day);
  const goOn = kept && (await asker.yes(`Go on with the draft of ${day}?`, true));
  const from = goOn ? { ...kept, ...begun, lists: { ...kept.lists, ...begun.lists } } : begun;
  const added = await askDay(asker, day, record, from, (soFar) => keepDraft(root, day, soFar));
  if (isNothing(added)) {
    asker.say('Nothing was said, so nothing was written.');
    return 1;
  }
  const plan = plannedDay(lying, opened, day, added);
  if (Array.isArray(plan)) {
    asker.say(['Nothing was written.', ...plan, `What was said is kept in ${draftOf(day)}.`].join('\n'));
    return 1;
  }
  asker.say(differenceText(plan.before ?? '', plan.text));
  if (dryRun || !(await asker.yes(`Write this into ${file}?`, true))) {
    asker.say(`Nothing was written. What was said is kept in ${draftOf(day)}.`);
    return 1;
  }
  const done = await writeDay(root, plan, opened);
  if ('refused' in done) {
    asker.say(`${done.refused} What was said is kept in ${draftOf(day)}.`);
    return 1;
  }
  await dropDraft(root, day);
  asker.say(done.said);
  return 0;
}

/** The day; one that has a draft comes first. */
async function askWhen(asker: Asker, { root, lying }: At): Promise<Day> {
  const [draft] = await draftDays(root);
  if (draft !== undefined) asker.say(`A draft of ${draft} is kept.`);
  return asker.text({
    message: 'Which day',
    initial: draft ?? lying.today,
    needed: true,
    check: (text) => (isDay(text) ? undefined : `\`${text}\` is no day such as \`2025-04-16\`.`),
  });
}
