// `npm run bench`: one table of what the program costs, each row beside a floor or a peer that is measured in the same run.
// Exit 0, 1 when a part couldn't be timed, 2 for wrong use. Goals that are missed are named in the table.
import { asked } from './asked.ts';
import { clearAside } from './bench/aside.ts';
import { GROUPS, timeGroup, timeInside } from './bench/groups.ts';
import { keepLast, readLast } from './bench/last.ts';
import { layDown } from './bench/life-size/lay-down.ts';
import { LIFE_SIZE } from './bench/life-size/record.ts';
import type { Row } from './bench/row.ts';
import { markdownText, tableText } from './bench/table.ts';
import { loadNow, underTable } from './bench/under.ts';

const USE = `Use: npm run bench -- [--only reading,site] [--against] [--photos 24], or -- --markdown.
Parts: ${GROUPS.join(', ')}. One of them may be named alone: npm run bench -- forecast.
--against says what moved since the last table; --markdown prints the last one and times nothing.
Or npm run bench -- record <folder> [--entries 600] [--photos 3000]: lays down the record that is timed.`;

const OPTIONS = {
  only: { type: 'string' },
  against: { type: 'boolean' },
  markdown: { type: 'boolean' },
  photos: { type: 'string' },
  entries: { type: 'string' },
  inside: { type: 'string' },
} as const;

async function bench(): Promise<number> {
  const words = asked(USE, OPTIONS, knownWords);
  if (!words) return 2;
  const [what, named] = words.positionals;
  const { only, against = false, markdown, photos, entries, inside } = words.values;
  const counts = [named, photos, entries].filter((one) => one !== undefined && what !== 'record');
  if (counts.some((count) => !/^\d{1,5}$/.test(count ?? ''))) return wrongUse();
  if (what === 'record') return record(named as string, entries, photos);
  const pictures = Number(named ?? photos ?? 24);
  if (inside !== undefined) {
    await timeInside(inside, { photos: pictures });
    return 0;
  }
  if (markdown) return printLast();
  const groups = only?.split(',') ?? (what === undefined ? GROUPS : [what]);
  if (groups.some((group) => !GROUPS.includes(group)) || pictures < 1) return wrongUse();
  return table(groups, pictures, against);
}

function knownWords([what, ...more]: string[]): void {
  if (what === undefined) return;
  if (
    what === 'record'
      ? more.length !== 1
      : !GROUPS.includes(what) || more.length > (what === 'photos' ? 1 : 0)
  )
    throw new Error(`Unexpected \`${[what, ...more].join(' ')}\``);
}

/** Times the parts one after another, prints what came, and keeps it. */
async function table(groups: readonly string[], photos: number, against: boolean): Promise<number> {
  const [begun, load, last] = [new Date(), loadNow(), await readLast()];
  const rows: Row[] = [];
  let failed = false;
  for (const group of groups) {
    console.error(`${new Date().toTimeString().slice(0, 8)}  ${group}`);
    await timeGroup(group, { photos }).then(
      (timed) => rows.push(...timed),
      (error: Error) => {
        failed = true;
        console.error(`${group} couldn’t be timed: ${error.message}`);
      },
    );
  }
  const under = underTable(begun, load);
  console.log(tableText(rows, against ? last : undefined));
  console.log(`\n${under}${against && last ? `\nAgainst ${last.under}` : ''}`);
  await keepLast(under, rows);
  await clearAside();
  return failed ? 1 : 0;
}

async function printLast(): Promise<number> {
  const last = await readLast();
  if (!last) {
    console.error('Nothing was timed yet: npm run bench.');
    return 1;
  }
  console.log(`${markdownText(last.rows)}\n\n${last.under}`);
  return 0;
}

async function record(
  folder: string,
  entries = String(LIFE_SIZE.entries),
  photos = String(LIFE_SIZE.photos),
): Promise<number> {
  if (!/^\d{3,5}$/.test(entries) || !/^\d{1,5}$/.test(photos)) return wrongUse();
  await layDown(folder, { entries: Number(entries), photos: Number(photos) });
  console.log(`${entries} entries and ${photos} pictures are in ${folder}.`);
  return 0;
}

function wrongUse(): number {
  console.error(USE);
  return 2;
}

process.exitCode = await bench();
