import { describe, expect, it } from 'vitest';
import { constantCurve, curveFrom } from '../../../src/estimate/uncertain/curve.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { deviationOfSum, spreadByLine } from '../../../src/estimate/uncertain/spread.ts';

const scaled = (by: number) => curveFrom((z) => ({ value: 100 + by * z, slope: by }));

describe('the spread of a total', () => {
  it('splits by variance between independent lines: 1, 4 and 4 ninths', () => {
    const lines = [
      { id: 'a', curve: scaled(1) },
      { id: 'b', curve: scaled(2) },
      { id: 'c', curve: scaled(2) },
    ];
    const shares = new Map(
      spreadByLine(sampleLines(lines, { seed: 's', draws: 100_000, correlation: 0 })).map((s) => [
        s.id,
        s.share,
      ]),
    );
    expect(shares.get('a')).toBeCloseTo(1 / 9, 2);
    expect(shares.get('b')).toBeCloseTo(4 / 9, 2);
    expect(shares.get('c')).toBeCloseTo(4 / 9, 2);
  });

  it('names the largest share first, gives none to a certain line, and shares out the whole', () => {
    const lines = [
      { id: 'sure', curve: constantCurve(500) },
      { id: 'narrow', curve: scaled(1) },
      { id: 'wide', curve: scaled(9) },
    ];
    const shares = spreadByLine(sampleLines(lines, { seed: 's', draws: 2_000 }));
    expect(shares.map(({ id }) => id)).toEqual(['wide', 'narrow', 'sure']);
    expect(shares[2]?.share).toBe(0);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('is nobody’s where nothing is uncertain', () => {
    const sampled = sampleLines([{ id: 'sure', curve: constantCurve(5) }], { seed: 's', draws: 10 });
    expect(spreadByLine(sampled)).toEqual([{ id: 'sure', share: 0 }]);
  });

  it('adds deviations end to end only under one common cause', () => {
    // By hand: 3-4-5, and 3 + 4.
    expect(deviationOfSum([3, 4], 0)).toBe(5);
    expect(deviationOfSum([3, 4], 1)).toBe(7);
    expect(deviationOfSum([3, 4], 0.5)).toBeCloseTo(Math.sqrt(37), 12);
    expect(() => deviationOfSum([1, 1, 1], -0.6)).toThrow(RangeError);
  });
});
