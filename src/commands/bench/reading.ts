// What reading, checking and rolling up a record costs, beside parsing the same bytes alone, and how it grows.
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parse } from 'yaml';
import { openRecord } from '../../record/open.ts';
import { rollUp } from '../../rollup/roll-up.ts';
import { LIFE_SIZE, lifeSize } from './life-size/record.ts';
import { medians } from './medians.ts';
import type { Row } from './row.ts';

/** In both the front matter and the body of each file are parsed, and nothing is left of them. */
const FLOOR = 'yaml and remark alone, of the same bytes';

export function readingRows(): Row[] {
  const made = lifeSize(LIFE_SIZE);
  const split = halves(made);
  const markdown = unified().use(remarkParse).use(remarkGfm).freeze();
  const timed = medians(
    new Map<string, () => unknown>([
      ['floor', () => split.map(({ front, body }) => [parse(front), markdown.parse(body)])],
      ['ours', () => readWhole(made)],
    ]),
    ROUNDS,
  );
  return [
    {
      id: 'reading',
      what: `read, check and roll up ${LIFE_SIZE.entries} entries`,
      took: seconds(timed.get('ours')),
      against: FLOOR,
      floor: seconds(timed.get('floor')),
      goal: { ratio: 1.5 },
    },
  ];
}

/** Ten times the entries, with as many parts, choices and pictures. */
export function growthRows(): Row[] {
  const once = lifeSize(LIFE_SIZE);
  const tenfold = lifeSize({ ...LIFE_SIZE, entries: 10 * LIFE_SIZE.entries });
  const timed = { once: Number.POSITIVE_INFINITY, tenfold: Number.POSITIVE_INFINITY };
  for (const [record, counts] of TURNS) {
    globalThis.gc?.();
    const start = performance.now();
    readWhole(record === 'once' ? once : tenfold);
    if (counts) timed[record] = Math.min(timed[record], (performance.now() - start) / 1000);
  }
  return [
    {
      id: 'growth',
      what: `the same with ${(10 * LIFE_SIZE.entries).toLocaleString('en-US')} entries`,
      took: timed.tenfold,
      against: `${LIFE_SIZE.entries} entries`,
      floor: timed.once,
      goal: { ratio: 11 },
    },
  ];
}

const ROUNDS = { warm: 1, rounds: 5 };

/** The short record first without counting, then each in turn; of both the shorter time counts. */
const TURNS = [
  ['once', false],
  ['once', false],
  ['once', true],
  ['tenfold', true],
  ['once', true],
  ['tenfold', true],
] as const;

const seconds = (milliseconds = Number.NaN) => milliseconds / 1000;

function readWhole({ files, photos }: ReturnType<typeof lifeSize>): unknown {
  const { record, problems } = openRecord({ files, photos, today: '2026-01-01' });
  const wrong = problems.find(({ severity }) => severity === 'error');
  if (!record || wrong) throw new Error(`The record made for timing must be right: ${JSON.stringify(wrong)}`);
  return rollUp(record);
}

function halves({ files }: ReturnType<typeof lifeSize>) {
  return files.map(({ text }) => {
    const end = text.indexOf('\n---\n', 3);
    return { front: text.slice(4, end + 1), body: text.slice(end + 5) };
  });
}
