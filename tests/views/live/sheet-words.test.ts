// The comparison is written by hand; the words follow from the rule of two significant figures of the spread.
import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../src/estimate/uncertain/choice/compare.ts';
import { plain } from '../../../src/views/live/said.ts';
import { sheetWords } from '../../../src/views/live/sheet-words.ts';
import { comparisonOf, outlook, sheetWith, THREE, TWO } from './sheets.ts';

const none = outlook(0, 0, 0, 0);
const sheet = sheetWith(TWO, {
  mend: { low: 24, likely: 42, high: 60 },
  panel: { low: 140_000, likely: 147_600, high: 210_000 },
});

const COMPARISON: Comparison = {
  draws: 20_000,
  options: [
    {
      id: 'repair',
      cost: outlook(451_234, 382_345, 448_000, 566_000),
      hours: outlook(51.4, 42.6, 51, 58.7),
      wait: none,
      cheapest: { chance: 0.634, error: 0 },
      against: [{ other: 'reproduction', mean: -28_766, p10: -130_000, p50: -30_000, p90: 84_000 }],
    },
    {
      id: 'reproduction',
      cost: outlook(480_000, 430_000, 478_000, 550_000),
      hours: outlook(20.5, 20.5, 20.5, 20.5),
      wait: none,
      cheapest: { chance: 0.366, error: 0 },
      against: [{ other: 'repair', mean: 28_766, p10: -84_000, p50: 30_000, p90: 130_000 }],
    },
  ],
  pairs: [
    {
      first: 'repair',
      second: 'reproduction',
      turns: [{ driver: 'rate', turning: { kind: 'at', value: 9_050, firstCheaperBelow: true } }],
      together: [],
      swings: ['mend', 'panel', 'fit'].map((driver) => ({ driver, atLow: 0, atHigh: 0 })),
    },
  ],
  knowing: { worth: 24_000, error: 0, hours: 3 },
};

const said = (comparison: Comparison) =>
  sheetWords(sheet, comparison).sentences.map(({ head, text }) => `${head} ${plain(text)}`);

describe('the words of a choice sheet', () => {
  it('give each option its cost, range, hours and how often it is the cheapest', () => {
    expect(sheetWords(sheet, COMPARISON).options).toEqual([
      {
        id: 'repair',
        cost: '$4,500',
        span: '$3,800 – 5,700, middle $4,500',
        hours: '43 – 59 h, expected 51 h',
        cheapest: '63 of 100',
      },
      {
        id: 'reproduction',
        cost: '$4,800',
        span: '$4,300 – 5,500, middle $4,800',
        hours: '20 h 30 m',
        cheapest: '37 of 100',
      },
    ]);
  });

  it('say what two ways come to, and rank nothing', () => {
    expect(said(COMPARISON)).toEqual([
      'Cheapest. Repair the original in 63 of 100, Reproduction fender in 37. On average Repair the original costs $300 less than Reproduction fender; eight times in ten, between $1,300 less and $800 more.',
      'The answer turns from Repair the original if an hour costs more than $90.50 (now $80.00).',
      'What swings it most: Planish the crown, 24 – 60 h; then Fender panel, $1,400 – $2,100.',
      'A trial. To know for certain beforehand is worth at most $240, or 3 h 00 m of work at $80.00. A trial that tells less is worth less.',
    ]);
  });

  it('tell what is estimated from what is not', () => {
    const [first] = sheetWords(sheet, COMPARISON).sentences;
    expect(first?.text.filter((piece) => typeof piece !== 'string')).toEqual(
      ['$300', '$1,300', '$800'].map((text) => ({ estimate: text })),
    );
  });

  it('leave the other side out where one way costs less in nine cases of ten', () => {
    const [repair, reproduction] = COMPARISON.options as [Comparison['options'][0], Comparison['options'][0]];
    const against = [{ other: 'reproduction', mean: -100_000, p10: -180_000, p50: -100_000, p90: -20_000 }];
    const words = said({ ...COMPARISON, options: [{ ...repair, against }, reproduction] });
    expect(words[0]).toMatch(/costs \$1,000 less than .* between \$200 and \$1,800 less\.$/);
  });

  it('say so where nothing turns, nothing swings and a trial is worth nothing', () => {
    const sure = sheetWith(TWO, { panel: 10_000 });
    const words = sheetWords(sure, comparisonOf(sure));
    expect(words.options[1]).toEqual({
      id: 'reproduction',
      cost: '$900.00',
      span: 'certain',
      hours: '10 h',
      cheapest: '100 of 100',
    });
    expect(words.sentences.slice(1).map(({ head, text }) => `${head} ${plain(text)}`)).toEqual([
      'The answer turns nowhere near these figures: Reproduction fender is expected to cost least throughout.',
      'A trial. To know for certain beforehand would change nothing: the same way costs least however it goes.',
    ]);
  });

  it('say of three which way each figure turns the answer to', () => {
    const turns = sheetWords(THREE, comparisonOf(THREE)).sentences[1];
    expect(turns && plain(turns.text)).toBe(
      'from Splice the end to Make the whole if Make the whole takes less than 13 h (now 20 h) or Splice the end takes more than 16 h (now 10 h); to Buy another if A sill comes to less than $1,187 (now $1,900) or an hour costs more than $131.82 (now $80.00).',
    );
  });
});
