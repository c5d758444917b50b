// `npm run bring -- bills.csv`: turns the rows of a sheet of hours or bills into lines of entries. Exit 0, 1 when a row
// was refused or nothing could be read, 2 for wrong use.
import { join } from 'node:path';
import { readFolder } from '../disk/folder.ts';
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { replaceText } from '../disk/replace-text.ts';
import { openRecord } from '../record/open.ts';
import { withoutThere } from '../record/writing/sheet/already-there.ts';
import { type BringPlan, bringPlan } from '../record/writing/sheet/bring-plan.ts';
import { readColumns } from '../record/writing/sheet/columns.ts';
import { readDayOrder } from '../record/writing/sheet/days.ts';
import { linesFromRows } from '../record/writing/sheet/rows.ts';
import { dayAddedText } from '../views/day-added.ts';
import { countText, problemsText } from '../views/problem-text.ts';
import { asked } from './asked.ts';
import { askColumns } from './bring/ask-columns.ts';
import { broughtText } from './bring/said.ts';
import { readSheet } from './bring/sheet.ts';
import { ended } from './ended.ts';
import { Stopped, wantsPlain } from './log/asker.ts';
import { movingAsker } from './log/moving-asker.ts';
import { plainAsker } from './log/plain-asker.ts';

const USE = `Use: npm run bring -- [--dry-run] [--columns "Datum=date,Note=-"] [--dates m/d/y] [--by tobias] [--plain] sheet.csv. The record is RECORD or content.
A sheet of hours has the columns date, work and time; one of bills has date, what, from and price. Others are named as the keys of the log, such as part, line, by and note, or count, freight, tax and bill; a column as says bought or outside.`;

async function bring(): Promise<number> {
  const words = asked(
    USE,
    {
      columns: { type: 'string', multiple: true },
      dates: { type: 'string' },
      by: { type: 'string' },
      'dry-run': { type: 'boolean' },
      plain: { type: 'boolean' },
      help: { type: 'boolean' },
    },
    (paths) => {
      if (paths.length > 1) throw new Error('one sheet at a time');
    },
  );
  if (!words) return 2;
  const { columns: mapped = [], dates, by, plain = false, help, 'dry-run': dryRun = false } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  const [path] = words.positionals;
  if (path === undefined) return refuse(`Name the sheet.\n${USE}`, 2);
  const order = dates === undefined ? undefined : readDayOrder(dates);
  if (dates !== undefined && order === undefined)
    return refuse(`\`${dates}\` is no order of days such as \`m/d/y\`.\n${USE}`, 2);
  const named = namedColumns(mapped);
  if (typeof named === 'string') return refuse(`${named}\n${USE}`, 2);
  const root = recordFolder();
  const today = dayHere(new Date());
  const { files, photos, problems } = await readFolder(root);
  const lying = { files, photos, today };
  const opened = openRecord(lying);
  const { record } = opened;
  if (!record) return refuse(problemsText([...problems, ...opened.problems], opened.read), 1);
  const sheet = await readSheet(path);
  if (typeof sheet === 'string') return refuse(sheet, 1);
  const columns = await columnsOf(sheet.headings, named, plain);
  if (typeof columns === 'string') return refuse(columns, 2);
  if (by !== undefined && !record.shop.people.some(({ id }) => id === by)) {
    return refuse(
      `\`${by}\` is no person in shop.md. Known: ${record.shop.people.map(({ id }) => id).join(', ')}.`,
      2,
    );
  }
  const { lines, refused } = linesFromRows(sheet.rows, columns, record, { dates: order, by, today });
  const { fresh, there } = withoutThere(lines, record);
  const plan = bringPlan(lying, opened, fresh);
  const written = dryRun ? { days: plan.days, refused: [] } : await writeDays(root, plan.days);
  const all = [...refused, ...plan.refused, ...written.refused].sort((a, b) => a.row - b.row);
  console.log(
    broughtText({ days: written.days, there: there.length, refused: all, leftOut: columns.leftOut, dryRun }),
  );
  if (!dryRun && written.days.length > 0) {
    const after = await openFolder(root);
    if (after.record) console.log(dayAddedText(record, after.record));
    console.log(countText(after.problems, after.read));
  }
  return all.length > 0 ? 1 : 0;
}

/** Writes each entry; one that somebody else changed in the meantime stays as it is, and its rows are told. */
async function writeDays(root: string, days: BringPlan['days']): Promise<BringPlan> {
  const done: BringPlan = { days: [], refused: [] };
  for (const one of days) {
    const { file, before, text } = one.plan;
    if ((await replaceText(join(root, file), before, text)) === 'written') done.days.push(one);
    else {
      const why = `${file} was changed by somebody else in the meantime. Bring the sheet again.`;
      done.refused.push(...one.lines.map(({ row }) => ({ row, why })));
    }
  }
  return done;
}

/** Asks in a terminal what columns are that don’t say it; elsewhere they are left out, and told. */
async function columnsOf(headings: readonly string[], named: ReadonlyMap<string, string>, plain: boolean) {
  const read = readColumns(headings, named);
  const settled = typeof read !== 'string' && read.leftOut.every((heading) => named.has(heading));
  if (settled || named.size > 0 || !process.stdin.isTTY || !process.stdout.isTTY) return read;
  const asker = plain || wantsPlain(process.env) ? plainAsker() : movingAsker();
  try {
    return readColumns(headings, await askColumns(asker, headings));
  } catch (error) {
    if (error instanceof Stopped) return 'Stopped. Nothing was written.';
    throw error;
  } finally {
    asker.close();
  }
}

/** `Datum=date,Note=-` as headings with their keys. */
function namedColumns(mapped: readonly string[]): Map<string, string> | string {
  const named = new Map<string, string>();
  for (const pair of mapped.flatMap((one) => one.split(',')).map((one) => one.trim())) {
    const [, heading, key] = /^(.+?)\s*=\s*([a-z-]+)$/.exec(pair) ?? [];
    if (heading === undefined || key === undefined)
      return `\`${pair}\` is no heading with its key, such as \`Datum=date\`.`;
    named.set(heading, key);
  }
  return named;
}

function refuse(why: string, code: number): number {
  console.error(why);
  return code;
}

process.exitCode = await ended(bring);
