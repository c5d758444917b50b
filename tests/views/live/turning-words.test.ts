// Turning points by hand, from two costs that meet (cost-volume indifference).
import { describe, expect, it } from 'vitest';
import { leastExpected, turnClauses, turnRows } from '../../../src/views/live/turning-words.ts';
import { comparisonOf, sheetWith, THREE, TWO } from './sheets.ts';

describe('where the answer turns between two', () => {
  const comparison = comparisonOf(TWO);

  it('is said of the nearest figures first, and of the cheaper one as `it`', () => {
    expect(leastExpected(comparison)).toEqual(['reproduction', 'repair']);
    // 80 h + 100 = 2276 at 27.2 h; 800 + p = 3460 at 2660; 42 r + 100 = 10 r + 1476 at 43; 80 h + 1476 = 3460 at 24.8 h.
    expect(turnClauses(TWO, comparison)).toEqual([
      {
        to: 'repair',
        clauses: [
          'Repair the original takes less than 27 h (now 42 h)',
          'Fender panel with freight comes to more than $2,660 (now $1,476)',
          'an hour costs less than $43.00 (now $80.00)',
          'it takes more than 25 h (now 10 h)',
        ],
      },
    ]);
  });

  it('stands in the table behind it, with what never turns it', () => {
    expect(turnRows(TWO, comparison)).toEqual([
      { what: 'Hours: Repair the original', now: '42 h', turns: 'below 27 h: Repair the original' },
      { what: 'Bought for Repair the original', now: '$100', turns: 'never, within its range' },
      { what: 'Hours: Reproduction fender', now: '10 h', turns: 'above 25 h: Repair the original' },
      { what: 'Fender panel with freight', now: '$1,476', turns: 'above $2,660: Repair the original' },
      { what: 'An hour', now: '$80.00', turns: 'below $43.00: Repair the original' },
    ]);
  });

  it('is nowhere when every figure would have to be another altogether', () => {
    const far = sheetWith(TWO, { panel: 10_000 });
    expect(turnClauses(far, comparisonOf(far))).toEqual([]);
  });

  it('is not asked of what both share alike', () => {
    const shared = sheetWith(TWO, { mend: 10, fit: 10 });
    expect(turnRows(shared, comparisonOf(shared)).at(-1)).toEqual({
      what: 'An hour',
      now: '$80.00',
      turns: 'none',
    });
  });
});

describe('where the answer turns among three', () => {
  const comparison = comparisonOf(THREE);

  it('names each other way with what leads to it', () => {
    // Cost of the splice: 0.875 (80 h + 100) + 0.25 x 1600. Equal to 1600 at 15.9 h; 787.50 + 20 h = 80 h at 13.1 h;
    // 13.75 r + 87.50 = 1900 at 131.82; the sill below 1187.50.
    expect(turnClauses(THREE, comparison)).toEqual([
      {
        to: 'whole',
        clauses: [
          'Make the whole takes less than 13 h (now 20 h)',
          'Splice the end takes more than 16 h (now 10 h)',
        ],
      },
      {
        to: 'bought',
        clauses: [
          'A sill comes to less than $1,187 (now $1,900)',
          'an hour costs more than $131.82 (now $80.00)',
        ],
      },
    ]);
  });

  it('shows both sides of a figure, and a chance in percent', () => {
    const rows = new Map(turnRows(THREE, comparison).map(({ what, turns }) => [what, turns]));
    // 787.50 + 20 h = 1900 at 55.6 h; 900 + 1150 c = 1600 at 0.609.
    expect(rows.get('Hours: Make the whole')).toBe('above 56 h: Buy another; below 13 h: Make the whole');
    expect(rows.get('Chance of failing: Splice the end')).toBe('above 61%: Make the whole');
  });
});
