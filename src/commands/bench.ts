// `npm run bench`: how long a long record takes to read, check and roll up, beside the parsing that can't be saved.
// `npm run bench -- record <folder>`: lays down a record of life size, with its pictures.
// `npm run bench -- forecast`: what a forecast costs, beside drawing as many uniform numbers alone.
// `npm run bench -- measure`: what form and pads cost, beside a plain least-squares fit.
// `npm run bench -- what-if`: what one move of a reader costs, beside drawing uniform numbers likewise.
// `npm run bench -- photos [count]`: what pictures cost, beside a bare loop that makes them.
import { readFileSync } from 'node:fs';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parse } from 'yaml';
import { readBody } from '../record/body.ts';
import { splitFrontMatter } from '../record/front-matter.ts';
import { openRecord } from '../record/open.ts';
import type { CarRecord, WrittenFile } from '../record/record.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { asked } from './asked.ts';
import { forecastRows } from './bench/forecast.ts';
import { layDown } from './bench/life-size/lay-down.ts';
import { longRecord } from './bench/long-record.ts';
import { timeMeasures } from './bench/measure.ts';
import { medians, ROUNDS } from './bench/medians.ts';
import { photoRows } from './bench/photos.ts';
import { whatIfRows } from './bench/what-if.ts';

const ENTRIES = 600;
const SEED = 1934;
/** Ours may take this many times the floor. */
const GOAL = 1.5;

function bench(): void {
  const files = longRecord(ENTRIES, SEED);
  const { record, problems, read } = openRecord({ files, photos: [], today: '2026-01-01' });
  const wrong = problems.find(({ severity }) => severity === 'error');
  if (!record || wrong) throw new Error(`The record made for timing must be right: ${JSON.stringify(wrong)}`);
  const timed = medians(stages(files, record));
  const floor = timed.get('floor') ?? Number.NaN;
  const rows = [...timed].map(([stage, time]) => ({
    stage,
    'median, ms': time.toFixed(1),
    'of the floor': (time / floor).toFixed(2),
  }));
  const size = files.reduce((sum, { text }) => sum + text.length, 0);
  const ratio = (timed.get('ours') ?? Number.NaN) / floor;
  console.log(
    `${read.entries} entries and ${read.parts} parts, ${(size / 1e6).toFixed(2)} MB; ${ROUNDS} rounds.`,
  );
  console.table(rows);
  console.log(
    `Ratio ${ratio.toFixed(2)}: ${ratio <= GOAL ? 'within' : 'over'} the goal of ${GOAL}. ${versions()}`,
  );
}

/** What is timed. The floor is the same front matter and the same bodies through the parsers alone. */
function stages(files: readonly WrittenFile[], record: CarRecord): Map<string, () => unknown> {
  const markdown = unified().use(remarkParse).use(remarkGfm).freeze();
  const split = files.map(({ file, text }) => {
    const end = text.indexOf('\n---\n', 3);
    return { file, front: text.slice(4, end + 1), body: text.slice(end + 5) };
  });
  return new Map<string, () => unknown>([
    ['floor', () => split.map(({ front, body }) => [parse(front), markdown.parse(body)])],
    ['ours', () => rollUp(opened(files))],
    ['floor, YAML', () => split.map(({ front }) => parse(front))],
    ['floor, Markdown', () => split.map(({ body }) => markdown.parse(body))],
    ['ours, front matter', () => files.map(({ file, text }) => splitFrontMatter(file, text))],
    ['ours, bodies', () => split.map(({ file, body }) => readBody(file, body, 1))],
    ['ours, read and checked', () => opened(files)],
    ['ours, roll-up', () => rollUp(record)],
  ]);
}

function opened(files: readonly WrittenFile[]): CarRecord {
  const { record } = openRecord({ files, photos: [], today: '2026-01-01' });
  if (!record) throw new Error('The record made for timing must open');
  return record;
}

function versions(): string {
  const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    dependencies: Record<string, string>;
  };
  const named = ['yaml', 'unified', 'remark-parse', 'remark-gfm', 'zod', 'gray-matter'];
  return `Node ${process.versions.node}, ${named.map((name) => `${name} ${dependencies[name]}`).join(', ')}.`;
}

/** `record <folder>`: lays down the record that is timed, to be looked at or built. */
async function record(): Promise<void> {
  const words = asked(
    'Use: npm run bench -- record <folder> [--entries 600] [--photos 3000].',
    { entries: { type: 'string' }, photos: { type: 'string' } },
    (folders) => {
      if (folders.length !== 2) throw new Error('One folder');
    },
  );
  const folder = words?.positionals[1];
  const [entries, photos] = [words?.values.entries ?? '600', words?.values.photos ?? '3000'].map(Number);
  if (folder === undefined || !entries || photos === undefined || !(entries >= 100) || !(photos >= 0)) {
    process.exitCode = 2;
    return;
  }
  await layDown(folder, { entries, photos });
  console.log(`${entries} entries and ${photos} pictures are in ${folder}.`);
}

const [what, count = '200'] = process.argv.slice(2);
if (what === 'record') await record();
else if (what === undefined) bench();
else if (what === 'forecast') console.table(forecastRows());
else if (what === 'measure') console.table(timeMeasures(SEED));
else if (what === 'what-if') console.table(whatIfRows());
else if (what === 'photos' && /^[1-9]\d{0,4}$/.test(count)) console.table(await photoRows(Number(count)));
else {
  console.error('Use: npm run bench, or npm run bench -- forecast, what-if, measure or photos [count].');
  process.exitCode = 2;
}
