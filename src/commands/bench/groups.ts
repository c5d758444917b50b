// The parts that the table is made of. A row that only calls is timed in a process of its own, so that its memory is known;
// a row that runs commands is timed from outside.
import { devRows } from './dev.ts';
import { forecastRows } from './forecast.ts';
import { handoverRows } from './handover.ts';
import { inPlaceRows, readyRecord } from './in-place.ts';
import { measureRows } from './measure.ts';
import { photoRows } from './photos.ts';
import { growthRows, readingRows } from './reading.ts';
import type { Row } from './row.ts';
import { runNode } from './run.ts';
import { siteRows } from './site.ts';
import { whatIfRows } from './what-if.ts';

/** `photos`: how many pictures are made. */
export type Asked = { photos: number };

type Rows = (asked: Asked) => Row[] | Promise<Row[]>;

/** In a process of its own each. */
const INSIDE: Record<string, Rows> = {
  reading: readingRows,
  growth: growthRows,
  forecast: forecastRows,
  'what-if': whatIfRows,
  measure: () => measureRows(),
  photos: ({ photos }) => photoRows(photos),
  'in-place': inPlaceRows,
};
const OUTSIDE: Record<string, Rows> = {
  site: siteRows,
  dev: devRows,
  handover: ({ photos }) => handoverRows(photos),
};
const NEEDS_RECORD = ['in-place', 'site', 'dev'];
let ready: Promise<unknown> | undefined;

export const GROUPS: readonly string[] = [...Object.keys(INSIDE), ...Object.keys(OUTSIDE)];

/** Times one part; throws when it can't be. */
export async function timeGroup(group: string, asked: Asked): Promise<Row[]> {
  const outside = OUTSIDE[group];
  if (NEEDS_RECORD.includes(group)) {
    ready ??= inOwnProcess('ready', asked);
    await ready;
  }
  if (outside) return outside(asked);
  const { said, megabytes } = await inOwnProcess(group, asked);
  const rows = JSON.parse(said) as Row[];
  return rows.map((row) => ({ ...row, ...(megabytes === undefined ? {} : { megabytes }) }));
}

/** What the process of one part does: it prints its rows. */
export async function timeInside(group: string, asked: Asked): Promise<void> {
  if (group === 'ready') await readyRecord();
  else console.log(JSON.stringify(await INSIDE[group]?.(asked)));
}

/** Megabytes: ten times the entries take more than a small machine leaves a program unasked. */
const ROOM = 6000;

function inOwnProcess(group: string, { photos }: Asked) {
  return runNode([
    `--max-old-space-size=${ROOM}`,
    '--expose-gc',
    'src/commands/bench.ts',
    '--inside',
    group,
    '--photos',
    String(photos),
  ]);
}
