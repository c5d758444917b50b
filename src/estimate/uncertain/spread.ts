// Where the spread of a total comes from, and what leaving out shared causes does to it.

import type { Sampled } from './sample.ts';
import { meanAndDeviation } from './summary.ts';

/**
 * Share of the total's variance that comes with each line: cov(line, total) / var(total), largest first. The shares sum
 * to 1; all are 0 when nothing is uncertain. Variance splits this way because a total's covariance with itself is the
 * sum of its lines' covariances with it.
 */
export function spreadByLine({ lines, totals }: Sampled): { id: string; share: number }[] {
  const total = meanAndDeviation(totals);
  const whole = total.deviation ** 2 * (totals.length - 1);
  return lines
    .map(({ id, values }) => {
      const { mean } = meanAndDeviation(values);
      let joint = 0;
      for (let d = 0; d < totals.length; d++) {
        joint += ((values[d] as number) - mean) * ((totals[d] as number) - total.mean);
      }
      return { id, share: whole > 0 ? joint / whole : 0 };
    })
    .sort((a, b) => b.share - a.share || (a.id < b.id ? -1 : 1));
}

/**
 * Standard deviation of a sum whose parts have these deviations and equal pairwise correlation r:
 * sqrt(S + r ((sum of deviations)^2 - S)), S the sum of squares. The closed form beside the sampling.
 * @throws RangeError when r is outside 0…1.
 */
export function deviationOfSum(deviations: readonly number[], correlation: number): number {
  if (!(correlation >= 0 && correlation <= 1)) {
    throw new RangeError(`a correlation lies between 0 and 1, not ${correlation}`);
  }
  const squares = deviations.reduce((sum, each) => sum + each * each, 0);
  const plain = deviations.reduce((sum, each) => sum + each, 0);
  return Math.sqrt(squares + correlation * (plain * plain - squares));
}
