// Where the answer turns between a dear part with little work and a cheap one with much.
import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../src/estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../../src/estimate/uncertain/choice/compare.ts';
import { certain } from '../../../src/figures/ranges.ts';

const outcome = (choice: Choice) => {
  const result = compareOptions(choice, { seed: 'published', draws: 10 });
  if (!result.sound) throw new Error('not sound');
  return result.comparison;
};

describe('indifference of cost and volume', () => {
  const turns = (repairHours: number, reproductionHours: number) =>
    new Map(
      outcome({
        drivers: [
          { id: 'parts', kind: 'price', range: certain(350) },
          { id: 'panel', kind: 'price', range: certain(4_200) },
          { id: 'repair hours', kind: 'hours', range: certain(repairHours) },
          { id: 'reproduction hours', kind: 'hours', range: certain(reproductionHours) },
          { id: 'rate', kind: 'rate', range: certain(85) },
        ],
        options: [
          { id: 'repair', terms: [{ amount: 'parts' }, { amount: 'repair hours', by: ['rate'] }] },
          {
            id: 'reproduction',
            terms: [{ amount: 'panel' }, { amount: 'reproduction hours', by: ['rate'] }],
          },
        ],
      }).pairs[0]?.turns.map(({ driver, turning }) => [driver, turning]),
    );

  // (4200 - 350) / (52 - 6), and (4200 + 6 x 85 - 350) / 85: closed form.
  it('B9: 350 and 52 h meet 4,200 and 6 h at 83.695652 an hour, or with 51.294118 h at 85', () => {
    const found = turns(52, 6);
    expect(found.get('rate')).toEqual({
      kind: 'at',
      value: expect.closeTo(83.695652, 6),
      firstCheaperBelow: true,
    });
    expect(found.get('repair hours')).toHaveProperty('value', expect.closeTo(51.294118, 6));
  });

  it('B9: with equal hours no rate makes a difference', () => {
    expect(turns(6, 6).get('rate')).toEqual({ kind: 'none' });
  });
});
