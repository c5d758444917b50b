import { describe, expect, it } from 'vitest';
import { pertMean } from '../../../src/estimate/uncertain/pert.ts';
import type { Range } from '../../../src/figures/ranges.ts';
import { controlsOf, controlText, movedSheet, movedText, readMoved } from '../../../src/views/live/moved.ts';
import { expectedWords, movedWords } from '../../../src/views/live/moved-words.ts';
import { comparisonOf, sheetWith, THREE, TWO } from './sheets.ts';

const moved = (entries: Readonly<Record<string, number>>) => new Map(Object.entries(entries));
const rangeOf = (sheet: typeof TWO, id: string) =>
  sheet.sums.drivers.find((driver) => driver.id === id)?.range as Range;

describe('what may be moved', () => {
  it('is the rate, and of each option its hours and what is bought for it', () => {
    // Up to two and a half times the value, on steps that the value itself stands on.
    expect(
      controlsOf(TWO).map(({ key, label, value, min, max, step }) => [key, label, value, min, max, step]),
    ).toEqual([
      ['rate', 'An hour', 80, 0, 200, 1],
      ['repair.hours', 'Hours: Repair the original', 42, 0, 105, 1],
      ['repair.bought', 'Bought for Repair the original', 100, 0, 250, 1],
      ['reproduction.hours', 'Hours: Reproduction fender', 10, 0, 25, 1],
      ['reproduction.bought', 'Fender panel with freight', 1_476, 6, 3_696, 10],
    ]);
  });

  it('is a chance where an option can fail, and nothing where there is nothing to move', () => {
    const controls = controlsOf(THREE);
    expect(controls.map(({ key, option }) => [key, option?.name])).toEqual([
      ['rate', undefined],
      ['splice.hours', 'Splice the end'],
      ['splice.bought', 'Splice the end'],
      ['splice.fails', 'Splice the end'],
      ['whole.hours', 'Make the whole'],
      ['bought.bought', 'Buy another'],
    ]);
    expect(controls[3]).toMatchObject({ value: 25, min: 0, max: 100, step: 1 });
  });

  it('keeps cents of a rate and parts of a percent, and steps around them', () => {
    const [rate, , , fails] = controlsOf(sheetWith(THREE, { rate: 7_850, 'splice fails': 0.125 }));
    expect(rate).toMatchObject({ value: 78.5, min: 0.5, max: 197.5, step: 1 });
    expect(fails).toMatchObject({ value: 12.5, min: 0.5, max: 100, step: 1 });
  });

  it('is said as it is read aloud', () => {
    const texts = controlsOf(THREE).map((control) => controlText(control, control.value, THREE));
    expect(texts).toEqual(['$80.00', '10 h', '$100', '25%', '20 h', '$1,900']);
    const [, hours] = controlsOf(sheetWith(TWO, { mend: 6.25 }));
    expect(hours && [hours.step, controlText(hours, 6.5, TWO)]).toEqual([0.25, '6.5 h']);
  });
});

describe('a moved sheet', () => {
  it('is the record’s own where nothing is moved', () => {
    expect(movedSheet(TWO, new Map())).toBe(TWO);
    expect(movedSheet(TWO, moved({ rate: 80, 'repair.hours': 42 }))).toBe(TWO);
  });

  it('costs what hand reckoning says', () => {
    // 40 h at $96 and $100; 10 h at $96 and $1,500.
    const sheet = movedSheet(TWO, moved({ rate: 96, 'repair.hours': 40, 'reproduction.bought': 1_500 }));
    const costs = comparisonOf(sheet).options.map(({ cost }) => cost.expected);
    expect(costs[0]).toBeCloseTo(394_000, 6);
    expect(costs[1]).toBeCloseTo(246_000, 6);
    expect(sheet.sums.hourly).toBe(9_600);
  });

  it('keeps the shape of each range and the share of each line, and gets the mean asked for', () => {
    const lines = sheetWith(TWO, {
      mend: { low: 24, likely: 34, high: 60 },
      fit: { low: 8, likely: 12, high: 22 },
    });
    lines.sums.groups = [{ id: 'hours repair', drivers: ['mend', 'fit'] }];
    // Means 220/6 and 13 h.
    const sheet = movedSheet(lines, moved({ 'repair.hours': 60 }));
    const [mend, fit] = [rangeOf(sheet, 'mend'), rangeOf(sheet, 'fit')];
    expect(pertMean(mend) + pertMean(fit)).toBeCloseTo(60, 12);
    expect(pertMean(mend) / pertMean(fit)).toBeCloseTo(220 / 6 / 13, 12);
    expect((mend.likely - mend.low) / (mend.high - mend.low)).toBeCloseTo(10 / 36, 12);
    expect(rangeOf(sheet, 'panel')).toEqual(rangeOf(TWO, 'panel'));
  });

  it('fails as often as the reader says', () => {
    const sheet = movedSheet(THREE, moved({ 'splice.fails': 40 }));
    expect(rangeOf(sheet, 'splice fails')).toEqual({ low: 0.4, likely: 0.4, high: 0.4 });
    // 900 x (1 - 0.4 x 0.5) + 0.4 x 1600.
    expect(comparisonOf(sheet).options[0]?.cost.expected).toBeCloseTo(136_000, 6);
  });

  it('names no rate when an hour costs nothing', () => {
    expect(movedSheet(TWO, moved({ rate: 0 })).sums.hourly).toBeUndefined();
  });
});

describe('moves in an address', () => {
  const controls = controlsOf(TWO);

  it('are written and read back', () => {
    const moves = moved({ rate: 96, 'repair.hours': 40 });
    expect(movedText(moves)).toBe('rate=96&repair.hours=40');
    expect(readMoved(`#${movedText(moves)}`, controls)).toEqual(moves);
    expect(movedText(new Map())).toBe('');
  });

  it('are read back whatever an option is called', () => {
    const odd = controls.map((control) => ({ ...control, key: `${control.key} & 50%=#` }));
    const moves = new Map(odd.map(({ key, max }) => [key, max]));
    expect(readMoved(movedText(moves), odd)).toEqual(moves);
  });

  it.each([
    ['rate=abc', 'no number'],
    ['rate=', 'nothing'],
    ['rate', 'nothing'],
    ['rate=NaN', 'no number'],
    ['rate=Infinity', 'out of bounds'],
    ['rate=201', 'out of bounds'],
    ['rate=-1', 'out of bounds'],
    ['reproduction.bought=5', 'out of bounds'],
    ['rate=80', 'the record’s own'],
    ['wages=96', 'no control'],
    ['main', 'a place on the page'],
    ['%E0%A4%A', 'no text'],
  ])('leave the record’s figure for `%s`: %s', (text) => {
    expect(readMoved(`#${text}`, controls)).toEqual(new Map());
    expect(readMoved(`#${text}&repair.hours=40`, controls)).toEqual(moved({ 'repair.hours': 40 }));
  });
});

describe('moves in words', () => {
  it('say what was moved and that nothing else was', () => {
    expect(movedWords(TWO, moved({ 'repair.hours': 40, rate: 96 }))).toBe(
      'With: an hour at $96.00; Hours: Repair the original 40 h. All else stands as the record has it.',
    );
    expect(movedWords(THREE, moved({ 'splice.fails': 40, 'bought.bought': 2_000 }))).toBe(
      'With: Chance of failing: Splice the end 40%; A sill $2,000. All else stands as the record has it.',
    );
    expect(movedWords(TWO, new Map())).toBe('');
  });

  it('say what is expected then, one option after the other', () => {
    const costs = [
      { id: 'repair', cost: '$3,900' },
      { id: 'reproduction', cost: '$2,400' },
    ];
    expect(expectedWords(TWO, costs)).toBe(
      'Expected cost: Repair the original $3,900; Reproduction fender $2,400.',
    );
  });
});
