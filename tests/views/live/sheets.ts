// Two choices as a page carries them, in round figures that a hand can reckon with.
import type { Driver } from '../../../src/estimate/uncertain/choice/choice.ts';
import {
  type Comparison,
  compareOptions,
  type Outlook,
} from '../../../src/estimate/uncertain/choice/compare.ts';
import { certain } from '../../../src/figures/ranges.ts';
import type { Sheet } from '../../../src/views/live/sheet.ts';

const exactly = (id: string, kind: Driver['kind'], value: number): Driver => ({
  id,
  kind,
  range: certain(value),
});

/** Repair: 42 h at $80 and $100 of metal, $3,460. Reproduction: 10 h at $80 and a panel for $1,476, $2,276. */
export const TWO: Sheet = {
  currency: { code: 'USD', digits: 2, sign: '$' },
  seed: 'Aldermere Fourteen / two',
  sums: {
    drivers: [
      exactly('rate', 'rate', 8_000),
      exactly('mend', 'hours', 42),
      exactly('metal', 'price', 10_000),
      exactly('fit', 'hours', 10),
      exactly('panel', 'price', 147_600),
    ],
    options: [
      { id: 'repair', terms: [{ amount: 'mend', by: ['rate'] }, { amount: 'metal' }] },
      { id: 'reproduction', terms: [{ amount: 'fit', by: ['rate'] }, { amount: 'panel' }] },
    ],
    groups: [
      { id: 'hours repair', drivers: ['mend'] },
      { id: 'money repair', drivers: ['metal'] },
      { id: 'hours reproduction', drivers: ['fit'] },
      { id: 'money reproduction', drivers: ['panel'] },
    ],
    hourly: 8_000,
  },
  names: { repair: 'Repair the original, by hand', reproduction: 'Reproduction fender' },
  labels: {
    rate: 'an hour',
    mend: 'Planish the crown',
    metal: 'Metal',
    fit: 'Fit it',
    panel: 'Fender panel',
  },
  bought: { reproduction: 'Fender panel with freight' },
};

/**
 * Splice: 10 h at $80 and $100; one time in four it fails with half of that spent, and the whole follows: $1,187.50.
 * Whole: 20 h at $80, $1,600. Bought: $1,900.
 */
export const THREE: Sheet = {
  ...TWO,
  seed: 'Aldermere Fourteen / three',
  sums: {
    drivers: [
      exactly('rate', 'rate', 8_000),
      exactly('scarf', 'hours', 10),
      exactly('glue', 'price', 10_000),
      exactly('splice fails', 'chance', 0.25),
      exactly('mill', 'hours', 20),
      exactly('sill', 'price', 190_000),
    ],
    options: [
      {
        id: 'splice',
        terms: [{ amount: 'scarf', by: ['rate'] }, { amount: 'glue' }],
        canFail: { chance: 'splice fails', after: 0.5, next: 'whole' },
      },
      { id: 'whole', terms: [{ amount: 'mill', by: ['rate'] }] },
      { id: 'bought', terms: [{ amount: 'sill' }] },
    ],
    groups: [
      { id: 'hours splice', drivers: ['scarf'] },
      { id: 'money splice', drivers: ['glue'] },
      { id: 'hours whole', drivers: ['mill'] },
      { id: 'money bought', drivers: ['sill'] },
    ],
    hourly: 8_000,
  },
  names: { splice: 'Splice the end', whole: 'Make the whole', bought: 'Buy another' },
  labels: { rate: 'an hour', scarf: 'Cut the scarf', glue: 'Glue', mill: 'Mill it', sill: 'Sill' },
  bought: { bought: 'A sill' },
};

/** A sheet's comparison. With certain figures the draws are all alike, but for what fails. */
export function comparisonOf({ sums, seed }: Sheet, draws = 2_000): Comparison {
  const compared = compareOptions(sums, { seed, draws });
  if (!compared.sound) throw new Error(JSON.stringify(compared.troubles));
  return compared.comparison;
}

/** The sheet with other ranges or values for some of its drivers. */
export function sheetWith(sheet: Sheet, ranges: Readonly<Record<string, Driver['range'] | number>>): Sheet {
  const drivers = sheet.sums.drivers.map((driver) => {
    const given = ranges[driver.id];
    return { ...driver, range: typeof given === 'number' ? certain(given) : (given ?? driver.range) };
  });
  return { ...sheet, sums: { ...sheet.sums, drivers } };
}

/** What draws would say, written by hand. */
export const outlook = (expected: number, p10: number, p50: number, p90: number): Outlook => ({
  draws: 20_000,
  expected,
  mean: expected,
  deviation: 0,
  p10,
  p50,
  p80: p90,
  p90,
  error: { mean: 0, p10: 0, p50: 0, p80: 0, p90: 0 },
});
