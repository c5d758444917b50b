// `npm run log`: asks what a day brought and writes it into its entry. Every question has a flag. Exit 0, 1 when nothing
// was written, 2 for wrong use.
import { readFolder } from '../disk/folder.ts';
import { dayHere, recordFolder } from '../disk/open-folder.ts';
import { isDay } from '../figures/days.ts';
import { openRecord } from '../record/open.ts';
import { isNothing } from '../record/writing/add-to-entry.ts';
import { differenceText } from '../views/line-difference.ts';
import { problemsText } from '../views/problem-text.ts';
import { visible } from '../views/visible.ts';
import { asked, oneFolder } from './asked.ts';
import { ended } from './ended.ts';
import { wantsPlain } from './log/asker.ts';
import { converse } from './log/converse.ts';
import { draftOf, dropDraft, readDraft } from './log/draft.ts';
import { addedByFlags, contentFlags, flagsText, saysNothing } from './log/flags.ts';
import { plannedDay, writeDay } from './log/write-day.ts';

const USE = `Use: npm run log -- [--day 2025-04-16] [--dry-run] [--draft] [--ask] [--plain] [folder]. The folder is the record; RECORD or content unless named.
In a terminal it asks. With any of these it writes what they say and asks nothing, unless --ask is there; each may be named again:
${flagsText()}
What a line is about comes first; the rest of it is divided by semicolons, each piece begun with its key. ;; is a semicolon.
--draft takes what an earlier run kept; --plain asks in lines that don't move, as NO_COLOR and ACCESSIBLE do.`;

async function log(): Promise<number> {
  const words = asked(
    USE,
    {
      ...contentFlags,
      day: { type: 'string' },
      'dry-run': { type: 'boolean' },
      draft: { type: 'boolean' },
      ask: { type: 'boolean' },
      plain: { type: 'boolean' },
      help: { type: 'boolean' },
    },
    oneFolder,
  );
  if (!words) return 2;
  const {
    day: on,
    ask = false,
    draft = false,
    plain = false,
    help,
    'dry-run': dryRun = false,
    ...given
  } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  if (on !== undefined && !isDay(on)) return refuse([`\`${on}\` is no day such as \`2025-04-16\`.`, USE], 2);
  const asks = ask || (saysNothing(given) && !draft);
  if (asks && !(process.stdin.isTTY && process.stdout.isTTY)) {
    return refuse(['This is no terminal that could be asked in. Say it with flags.', USE], 2);
  }
  const root = words.positionals[0] ?? recordFolder();
  const today = dayHere(new Date());
  const { files, photos, problems } = await readFolder(root);
  const lying = { files, photos, today };
  const opened = openRecord(lying);
  if (!opened.record) return refuse([problemsText([...problems, ...opened.problems], opened.read)], 1);
  const flags = addedByFlags(given, opened.record);
  if ('wrong' in flags) return refuse(['Nothing was written.', ...flags.wrong], 1);
  if (asks)
    return converse(
      { root, lying, opened, plain: plain || wantsPlain(process.env) },
      flags.added,
      on,
      dryRun,
    );
  const day = on ?? today;
  const kept = draft ? await readDraft(root, day) : undefined;
  if (draft && !kept) return refuse([`There is no draft ${draftOf(day)}.`], 1);
  const added = {
    ...kept,
    ...flags.added,
    lists: joined(kept?.lists ?? {}, flags.added.lists),
  };
  if (isNothing(added)) return refuse(['There is nothing to write.', USE], 2);
  const plan = plannedDay(lying, opened, day, added);
  if (Array.isArray(plan)) return refuse(['Nothing was written.', ...plan], 1);
  if (dryRun) {
    console.log(`With --dry-run nothing is written; this is what ${plan.file} would get:`);
    console.log(visible(differenceText(plan.before ?? '', plan.text)));
    return 0;
  }
  const done = await writeDay(root, plan, opened);
  if ('refused' in done) return refuse([done.refused], 1);
  if (draft) await dropDraft(root, day);
  console.log(done.said);
  return 0;
}

type Lists = Parameters<typeof isNothing>[0]['lists'];
const joined = (some: Lists, more: Lists): Lists =>
  Object.fromEntries(
    [...new Set([...Object.keys(some), ...Object.keys(more)])].map((list) => [
      list,
      [...(some[list] ?? []), ...(more[list] ?? [])],
    ]),
  );

function refuse(lines: readonly string[], code: number): number {
  console.error(lines.join('\n'));
  return code;
}

process.exitCode = await ended(log);
