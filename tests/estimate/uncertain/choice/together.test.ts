// Where the answer turns on all hours, or all purchases, of an option at once.
import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../../../src/estimate/uncertain/choice/compare.ts';
import { certain } from '../../../../src/figures/ranges.ts';

/** Two lines of hours at 80 an hour, 3 h and 7 h expected, against a purchase at 1,000. */
const choice: Choice = {
  drivers: [
    { id: 'rate', kind: 'rate', range: certain(80) },
    { id: 'weld', kind: 'hours', range: { low: 1, likely: 3, high: 5 } },
    { id: 'fit', kind: 'hours', range: { low: 4, likely: 7, high: 10 } },
    { id: 'new', kind: 'price', range: certain(1000) },
  ],
  options: [
    {
      id: 'repair',
      terms: [
        { amount: 'weld', by: ['rate'] },
        { amount: 'fit', by: ['rate'] },
      ],
    },
    { id: 'buy', terms: [{ amount: 'new' }] },
  ],
  groups: [
    { id: 'hours', drivers: ['weld', 'fit'] },
    { id: 'money', drivers: ['new'] },
  ],
};
const pairs = (changed: Partial<Choice> = {}) => {
  const compared = compareOptions({ ...choice, ...changed }, { seed: 'a', draws: 100 });
  if (!compared.sound) throw new Error(JSON.stringify(compared.troubles));
  return compared.comparison.pairs;
};

describe('the hours of an option together', () => {
  it('turn the answer at the sum where both cost the same', () => {
    // 1,000 / 80 = 12.5 h; `buy` is first by name and is cheaper above it.
    expect(pairs()[0]?.together[0]).toEqual({
      group: 'hours',
      turning: { kind: 'at', value: 12.5, firstCheaperBelow: false },
    });
    // 10 h x 80 = 800
    expect(pairs()[0]?.together[1]).toEqual({
      group: 'money',
      turning: { kind: 'at', value: 800, firstCheaperBelow: true },
    });
  });

  it('never do so beyond the sum of their ends', () => {
    const dear = choice.drivers.map((driver) =>
      driver.id === 'new' ? { ...driver, range: certain(2000) } : driver,
    );
    // 25 h, where 15 h is the most foreseen
    expect(pairs({ drivers: dear })[0]?.together[0]?.turning).toEqual({ kind: 'never', beyond: 25 });
  });

  it('must be drivers of the choice', () => {
    const compared = compareOptions(
      { ...choice, groups: [{ id: 'hours', drivers: ['planish'] }] },
      { seed: 'a', draws: 10 },
    );
    expect(compared).toEqual({
      sound: false,
      troubles: [{ kind: 'unknown-driver', option: 'hours', driver: 'planish' }],
    });
  });
});
