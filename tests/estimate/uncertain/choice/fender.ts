// A choice as a shop meets it, for the tests of this folder: mend the fender, or fit a reproduction.
import type { Choice } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { type Comparison, compareOptions } from '../../../../src/estimate/uncertain/choice/compare.ts';
import type { Sampling } from '../../../../src/estimate/uncertain/sample.ts';
import { certain } from '../../../../src/figures/ranges.ts';

/** Money in dollars, hours in hours. */
export const FENDER: Choice = {
  drivers: [
    { id: 'mend', kind: 'hours', range: { low: 24, likely: 34, high: 60 } },
    { id: 'fit', kind: 'hours', range: { low: 8, likely: 12, high: 22 } },
    { id: 'paint', kind: 'hours', range: { low: 5, likely: 7, high: 12 } },
    { id: 'rate', kind: 'rate', range: certain(85) },
    { id: 'metal', kind: 'price', range: certain(120) },
    { id: 'panel', kind: 'price', range: { low: 1400, likely: 1600, high: 2100 } },
    { id: 'tax', kind: 'share', range: certain(0.07) },
    { id: 'too thin', kind: 'chance', range: certain(0.15) },
  ],
  options: [
    {
      id: 'repair',
      terms: [
        { amount: 'mend', by: ['rate'] },
        { amount: 'paint', by: ['rate'] },
        { amount: 'metal' },
        { amount: 'metal', by: ['tax'] },
      ],
      canFail: { chance: 'too thin', after: 0.4, next: 'reproduction' },
    },
    {
      id: 'reproduction',
      terms: [
        { amount: 'fit', by: ['rate'] },
        { amount: 'paint', by: ['rate'] },
        { amount: 'panel' },
        { amount: 'panel', by: ['tax'] },
      ],
      wait: { low: 30, likely: 45, high: 90 },
    },
  ],
  hourly: 85,
};

/** The comparison of a choice that has no troubles. */
export function compared(
  choice: Choice,
  sampling: Partial<Sampling> & { shape?: 'triangular' } = {},
): Comparison {
  const outcome = compareOptions(choice, { seed: 'harrow bend', draws: 20_000, ...sampling });
  if (!outcome.sound) throw new Error(`not sound: ${JSON.stringify(outcome.troubles)}`);
  return outcome.comparison;
}
