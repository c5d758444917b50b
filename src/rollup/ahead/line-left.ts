// What is left of a planned line: what the writer last thought, else its plan less what it has taken.
import { type Calibration, calibrationFrom } from '../../estimate/uncertain/calibration.ts';
import type { Curve } from '../../estimate/uncertain/curve.ts';
import { isOverrun, remainderOf } from '../../estimate/uncertain/remainder.ts';
import type { Day } from '../../figures/days.ts';
import type { Range } from '../../figures/ranges.ts';
import type { PlannedLine } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { type Experience, paidFor } from './experience.ts';
import { inHours } from './hours.ts';

/**
 * Hours in hours, money in minor units as vendors ask it. `likely` is the likely figure as written less what is spent,
 * not below zero. `since`: the day of the writer's word, where that holds and not the plan. `over`: what is spent has
 * reached the high end.
 */
export type Left = {
  from: LeftFrom;
  curve: Curve;
  likely: number;
  since?: Day;
  over?: { spent: number; high: number };
};
export type LineLeft = { hours?: Left; spend?: Left; outside?: Left };

/** What the curve of a remainder is worked out from, as plain values. */
export type LeftFrom = { range: Range; spent: number; calibration: Calibration };

/** The curve of what is left. */
export const curveOfLeft = ({ range, spent, calibration }: LeftFrom): Curve =>
  remainderOf(range, spent, calibration).left;

/** Nothing for what the line has no estimate of. */
export function lineLeft(line: PlannedLine, so: Rollup['planned'][string], experience: Experience): LineLeft {
  const worked = (after = '') =>
    so.lines.reduce((sum, { day, minutes }) => sum + (day > after ? (minutes ?? 0) : 0), 0) / 60;
  const { hours, spend, outside } = line;
  const said = so.left;
  return {
    ...(said?.hours
      ? { hours: stated(inHours(said.hours.range), worked(said.hours.on), said.hours.on) }
      : hours && { hours: asPlanned(inHours(hours), worked(), experience.hours) }),
    ...(said?.spend
      ? { spend: stated(said.spend.range, paidFor(so, 'bought', said.spend.on), said.spend.on) }
      : spend && { spend: asPlanned(spend, paidFor(so, 'bought'), experience.money) }),
    ...(outside && { outside: asPlanned(outside, paidFor(so, 'outside'), experience.money) }),
  };
}

/** The writer knows what is left better than any correction does. */
function stated(range: Range, spentSince: number, since: Day): Left {
  return asPlanned(range, spentSince, NONE, { since });
}

function asPlanned(
  range: Range,
  spent: number,
  calibration: Calibration,
  said: Pick<Left, 'since'> = {},
): Left {
  let drawn: Curve | undefined;
  return {
    ...said,
    from: { range, spent, calibration },
    // Worked out when it is drawn from: a build whose draws are kept, or made on another core, never asks for it.
    get curve() {
      drawn ??= curveOfLeft({ range, spent, calibration });
      return drawn;
    },
    likely: Math.max(0, range.likely - spent),
    ...(isOverrun(range, spent) && { over: { spent, high: range.high } }),
  };
}

const NONE = calibrationFrom([]);
