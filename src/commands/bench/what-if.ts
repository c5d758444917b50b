// What one move of the what-if costs: a choice of three ways worked out and said again, beside drawing as many uniform
// numbers as it stands on.
import type { Driver, Option } from '../../estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../estimate/uncertain/choice/compare.ts';
import type { KeptDraws } from '../../estimate/uncertain/kept-draws.ts';
import { DRAWS } from '../../estimate/uncertain/sample.ts';
import { streamFor, uniforms } from '../../estimate/uncertain/stream.ts';
import { certain } from '../../figures/ranges.ts';
import { costRanges } from '../../views/live/cost-ranges.ts';
import { movedSheet } from '../../views/live/moved.ts';
import type { Sheet } from '../../views/live/sheet.ts';
import { sheetWords } from '../../views/live/sheet-words.ts';
import { turnRows } from '../../views/live/turning-words.ts';
import { medians } from './medians.ts';
import type { Row } from './row.ts';

/** A reader doesn't notice a wait of so many seconds; the drawing of the figure comes on top. */
const GOAL = 0.05;
const AHEAD = 20;

export function whatIfRows(): Row[] {
  const kept: KeptDraws = new Map();
  let hours = 30;
  const move = () => {
    // Every move is another, as a reader's are.
    hours = hours < 60 ? hours + 1 : 30;
    return worked(movedSheet(SHEET, new Map([['first.hours', hours]])), kept);
  };
  // The page works the choice out once ahead, and a slider that is drawn along makes many moves a second.
  for (let ahead = 0; ahead < AHEAD; ahead++) move();
  const numbers = kept.size * DRAWS;
  const timed = medians(
    new Map<string, () => unknown>([
      ['floor', () => uniforms(numbers, streamFor('floor', 'what-if'))],
      ['ours', move],
    ]),
  );
  const [floor = Number.NaN, ours = Number.NaN] = [timed.get('floor'), timed.get('ours')];
  return [
    {
      id: 'what-if',
      what: `one move of the what-if, ${SHEET.sums.drivers.length} figures`,
      took: ours / 1000,
      against: `${kept.size} x ${DRAWS.toLocaleString('en-US')} uniform numbers alone`,
      floor: floor / 1000,
      goal: { seconds: GOAL },
    },
  ];
}

function worked(sheet: Sheet, kept: KeptDraws) {
  const compared = compareOptions(sheet.sums, { seed: sheet.seed, kept });
  if (!compared.sound) throw new Error('The choice made for timing must be right');
  const { comparison } = compared;
  return [sheetWords(sheet, comparison), turnRows(sheet, comparison), costRanges(sheet, comparison)];
}

const range = (id: string, kind: Driver['kind'], low: number, likely: number, high: number): Driver => ({
  id,
  kind,
  range: { low, likely, high },
});

const option = (id: string, next?: string): Option => ({
  id,
  terms: [
    { amount: `${id} off`, by: ['rate'] },
    { amount: `${id} on`, by: ['rate'] },
    { amount: `${id} price`, times: 1.07 },
  ],
  ...(next !== undefined && { canFail: { chance: `${id} fails`, after: 0.4, next } }),
});

/** Three ways, each of which may fail into the next, with two lines of hours and one of money each. */
const SHEET: Sheet = {
  currency: { code: 'USD', digits: 2, sign: '$' },
  seed: 'timing',
  sums: {
    drivers: [
      { id: 'rate', kind: 'rate', range: certain(8_500) },
      ...['first', 'second', 'third'].flatMap((id, i) => [
        range(`${id} off`, 'hours', 4, 7, 12),
        range(`${id} on`, 'hours', 12 + i, 18, 30 + i),
        range(`${id} price`, 'price', 40_000 * i + 9_000, 60_000 * i + 12_000, 90_000 * i + 20_000),
      ]),
      range('first fails', 'chance', 0.1, 0.2, 0.4),
      range('second fails', 'chance', 0.05, 0.1, 0.2),
    ],
    options: [option('first', 'second'), option('second', 'third'), option('third')],
    groups: ['first', 'second', 'third'].flatMap((id) => [
      { id: `hours ${id}`, drivers: [`${id} off`, `${id} on`] },
      { id: `money ${id}`, drivers: [`${id} price`] },
    ]),
    hourly: 8_500,
  },
  names: { first: 'First way', second: 'Second way', third: 'Third way' },
  labels: { rate: 'an hour' },
  bought: {},
};
