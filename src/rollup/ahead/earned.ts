// What the hours worked so far have earned of the hours planned.
import { curveMean } from '../../estimate/uncertain/curve.ts';
import { earnedBy, earnedValue } from '../../estimate/uncertain/earned-value.ts';
import { pertMean } from '../../estimate/uncertain/pert.ts';
import { plannedLines } from '../../record/checks/planned-lines.ts';
import { figuresDigest } from '../../record/figures-digest.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { drawnOnce } from './drawn-before.ts';
import type { Experience } from './experience.ts';
import { inHours } from './hours.ts';
import { lineLeft } from './line-left.ts';

/** In hours, over lines planned with hours. `index` is earned by actual, `whole` all planned hours at that pace. */
export type EarnedHours = {
  planned: number;
  earned: number;
  actual: number;
  index: number | null;
  whole: number | null;
};

/** A finished line has earned what it was planned at on average; one in hand, the share of it that is done. */
export function earnedHours(record: CarRecord, rollup: Rollup, experience: Experience): EarnedHours {
  return drawnOnce(record, 'earned', [figuresDigest(record), experience], () =>
    earned(record, rollup, experience),
  );
}

function earned(record: CarRecord, rollup: Rollup, experience: Experience): EarnedHours {
  const sum = { planned: 0, earned: 0, actual: 0 };
  for (const [name, { line }] of plannedLines(record)) {
    const so = rollup.planned[name];
    if (!line.hours || !so) continue;
    const mean = pertMean(inHours(line.hours));
    const worked = so.minutes / 60;
    const { hours } = lineLeft(line, so, experience);
    sum.planned += mean;
    sum.actual += worked;
    sum.earned += so.finished ? mean : earnedBy(worked, hours ? curveMean(hours.curve) : 0, mean);
  }
  // No day by which a line should be done is written, so that nothing is said of being early or late.
  const { costIndex, finish } = earnedValue({ ...sum, budget: sum.planned });
  return { ...sum, index: costIndex, whole: finish.atCostIndex };
}
