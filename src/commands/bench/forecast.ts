// What a forecast costs: two hundred lines drawn twenty thousand times, beside drawing as many uniform numbers alone.
import { DRAWS } from '../../estimate/uncertain/sample.ts';
import { streamFor, uniforms } from '../../estimate/uncertain/stream.ts';
import { openRecord } from '../../record/open.ts';
import { forecastOf } from '../../rollup/ahead/forecast.ts';
import { rollUp } from '../../rollup/roll-up.ts';
import { longPlan } from './long-plan.ts';
import { medians } from './medians.ts';
import type { Row } from './row.ts';

const LINES = 200;
const SEED = 1934;
/** A forecast may take this many times the floor. */
const GOAL = 8;

/** The record is opened and rolled up before; the forecast is whole, from lines of the log to percentiles. */
export function forecastRows(): Row[] {
  const { record, problems } = openRecord({ files: longPlan(LINES, SEED), photos: [], today: '2026-01-01' });
  if (!record || problems.length > 0) {
    throw new Error(`The record made for timing must be right: ${JSON.stringify(problems[0])}`);
  }
  const rollup = rollUp(record);
  const timed = medians(
    new Map<string, () => unknown>([
      ['floor', () => uniforms(LINES * DRAWS, streamFor('floor', String(SEED)))],
      // A forecast is kept for its roll-up: each round gets one of its own.
      ['ours', () => forecastOf(record, { ...rollup })],
    ]),
  );
  const [floor = Number.NaN, ours = Number.NaN] = [timed.get('floor'), timed.get('ours')];
  const { lines } = forecastOf(record, rollup);
  if (lines.length !== LINES) throw new Error(`${LINES} lines are left, not ${lines.length}`);
  return [
    {
      id: 'forecast',
      what: `forecast, ${LINES} lines`,
      took: ours / 1000,
      against: `${LINES} x ${DRAWS.toLocaleString('en-US')} uniform numbers alone`,
      floor: floor / 1000,
      goal: { ratio: GOAL },
    },
  ];
}
