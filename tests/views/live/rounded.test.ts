// Expected texts follow from the rule of two significant figures of the spread, worked out by hand.
import { describe, expect, it } from 'vitest';
import {
  hoursAbout,
  hoursSpan,
  hoursStepOf,
  moneyAbout,
  moneySpan,
  roundedTo,
  stepOf,
} from '../../../src/views/live/rounded.ts';

const dollars = { code: 'USD', digits: 2, sign: '$' };
const yen = { code: 'JPY', digits: 0, sign: '¥' };

describe('estimates are rounded to what is known', () => {
  it('keeps two significant figures of the spread', () => {
    expect(stepOf(165_000)).toBe(10_000);
    expect(stepOf(100_000)).toBe(10_000);
    expect(stepOf(99_999)).toBe(1_000);
    expect([stepOf(0), stepOf(9), stepOf(40)]).toEqual([1, 1, 1]);
    expect([hoursStepOf(0), hoursStepOf(9.9), hoursStepOf(10), hoursStepOf(160)]).toEqual([
      0.25, 0.25, 1, 10,
    ]);
  });

  it('rounds halves up in size and knows no minus zero', () => {
    expect([roundedTo(250, 100), roundedTo(-250, 100), roundedTo(-20, 100)]).toEqual([300, -300, 0]);
  });

  it('writes money in the steps of its spread', () => {
    expect(moneyAbout(451_234, 165_000, dollars)).toBe('$4,500');
    expect(moneyAbout(451_234, 0, dollars)).toBe('$4,512.34');
    expect(moneyAbout(450_000, 0, dollars)).toBe('$4,500.00');
    expect(moneyAbout(451_234, 700, dollars)).toBe('$4,512.30');
    expect(moneyAbout(451_234.4, 165_000, yen)).toBe('¥450,000');
    expect(moneySpan(382_345, 566_000, dollars)).toBe('$3,800 – 5,700');
    expect(moneySpan(382_345, 382_345, dollars)).toBe('$3,823.45');
    expect(moneySpan(-20_000, 30_000, dollars)).toBe('−$200 – 300');
  });

  it('writes hours whole from a spread of ten, in quarters below', () => {
    expect(hoursAbout(51.4, 16)).toBe('51 h');
    expect(hoursAbout(4.3, 3)).toBe('4 h 15 m');
    expect(hoursAbout(1234.4, 60)).toBe('1234 h');
    expect(hoursSpan(42.6, 58.7)).toBe('43 – 59 h');
    expect(hoursSpan(4.3, 6.4)).toBe('4 h 15 m – 6 h 30 m');
    expect(hoursSpan(4.1, 6.1)).toBe('4 – 6 h');
    expect(hoursSpan(3, 3)).toBe('3 h');
  });
});
