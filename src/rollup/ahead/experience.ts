// What the finished lines of a record say about those still open: hours apart from money.
import {
  type Calibration,
  calibrationFrom,
  type FinishedLine,
} from '../../estimate/uncertain/calibration.ts';
import { plannedLines } from '../../record/checks/planned-lines.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { inHours } from './hours.ts';

/** Hours in hours, money in minor units; `money` takes what was bought and outside work together. */
export type Experience = { hours: Calibration; money: Calibration };

/** From every finished line that was planned with a range. `on` false corrects nothing and still says what was seen. */
export function experienceOf(record: CarRecord, rollup: Rollup, on: boolean): Experience {
  const hours: FinishedLine[] = [];
  const money: FinishedLine[] = [];
  for (const [name, { line }] of plannedLines(record)) {
    const so = rollup.planned[name];
    if (!so?.finished) continue;
    if (line.hours) hours.push({ range: inHours(line.hours), actual: so.minutes / 60 });
    if (line.spend) money.push({ range: line.spend, actual: paidFor(so, 'bought') });
    if (line.outside) money.push({ range: line.outside, actual: paidFor(so, 'outside') });
  }
  return { hours: calibrationFrom(hours, on), money: calibrationFrom(money, on) };
}

/** Vendors' prices on a planned line, net of what went back, before freight, tax and handling. */
export function paidFor(
  { lines }: Rollup['planned'][string],
  kind: 'bought' | 'outside',
  after = '',
): number {
  const paid = lines.filter((line) => line.kind === kind && line.day > after);
  return Math.max(
    0,
    paid.reduce((sum, { cost }) => sum + cost, 0),
  );
}
