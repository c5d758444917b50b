import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapOf, leftAgainstRight } from '../../src/measure/gaps.ts';
import { summedUp } from '../../src/measure/readings.ts';
import { answered } from './answered.ts';

const figures = (values: readonly number[], plusMinus?: number) =>
  values.map((value) => (plusMinus === undefined ? { value } : { value, plusMinus }));
const list = fc.array(
  fc.integer({ min: 0, max: 900 }).map((each) => each / 100),
  { minLength: 2, maxLength: 9 },
);

describe('readings', () => {
  it('2, 4, 4, 4, 5, 5, 7, 9 have mean 5 and spread 7', () => {
    // A schoolbook row: squares sum to 32.
    const summed = answered(summedUp(figures([2, 4, 4, 4, 5, 5, 7, 9])));
    expect(summed.mean.value).toBe(5);
    expect(summed.spread.value).toBe(7);
    expect(summed.deviation).toBeCloseTo(Math.sqrt(32 / 7), 12);
    expect(summed).not.toHaveProperty('verdict');
  });

  it('are right when the furthest of them is', () => {
    const aim = { target: 1.2, within: 0.1 };
    expect(answered(summedUp(figures([1.15, 1.2, 1.3]), aim))).toMatchObject({ verdict: 'within' });
    const off = answered(summedUp(figures([1.15, 1.05, 1.3]), aim));
    expect(off.off?.value).toBeCloseTo(-0.15, 12);
    expect(off.verdict).toBe('not within');
  });

  it('are judged with their ±, the surest fault first', () => {
    const aim = { target: 0, within: 1 };
    expect(answered(summedUp(figures([0.2, 0.9], 0.2), aim)).verdict).toBe('too close to tell');
    expect(answered(summedUp(figures([0.9, -1.3], 0.2), aim)).verdict).toBe('not within');
    expect(answered(summedUp(figures([0.5, -0.8], 0.2), aim)).verdict).toBe('within');
  });

  it('one alone is its own mean, with its own ±', () => {
    expect(answered(summedUp(figures([3], 0.1)))).toMatchObject({
      mean: { value: 3, plusMinus: 0.1 },
      spread: { value: 0, plusMinus: 0 },
      deviation: null,
    });
  });

  it('of nothing have no answer', () => {
    expect(summedUp([])).toEqual({ ok: false, why: 'Nothing was read.' });
  });
});

describe('a gap', () => {
  it('that opens evenly tapers by what lies between its ends', () => {
    const gap = answered(gapOf(figures([4, 4.5, 5, 5.5]), { target: 4.5, within: 0.5 }));
    expect(gap.taper?.value).toBeCloseTo(1.5, 12);
    expect(gap.ends?.value).toBeCloseTo(1.5, 12);
    expect(gap.mean.value).toBe(4.75);
    expect(gap.off?.value).toBeCloseTo(1, 12);
    expect(gap.verdict).toBe('not within');
  });

  it('read once has no taper', () => {
    expect(answered(gapOf(figures([4])))).not.toHaveProperty('taper');
  });

  it('carries the ± of its readings', () => {
    // Two readings: the taper is their difference, 2 x 0.3 x sqrt(2/3).
    expect(answered(gapOf(figures([4, 5], 0.3))).taper?.plusMinus).toBeCloseTo(0.6 * Math.sqrt(2 / 3), 12);
  });

  it('read from its other end tapers the other way', () => {
    fc.assert(
      fc.property(list, (values) => {
        const plain = answered(gapOf(figures(values)));
        const back = answered(gapOf(figures(values.toReversed())));
        expect(back.taper?.value).toBeCloseTo(-(plain.taper?.value ?? 0), 9);
        expect(back.spread.value).toBeCloseTo(plain.spread.value, 12);
      }),
    );
  });
});

describe('left against right', () => {
  it('compares place with place', () => {
    const sides = answered(leftAgainstRight(figures([4, 5, 6]), figures([4, 4, 9])));
    expect(sides.places?.map(({ value }) => value)).toEqual([0, 1, -3]);
    expect(sides.widest?.value).toBe(-3);
    expect(sides.mean.value).toBeCloseTo(-2 / 3, 12);
    expect(sides.taper?.value).toBeCloseTo(2 - 5, 12);
  });

  it('changes its sign when the sides change', () => {
    fc.assert(
      fc.property(list, list, (left, right) => {
        const plain = answered(leftAgainstRight(figures(left), figures(right)));
        const swapped = answered(leftAgainstRight(figures(right), figures(left)));
        expect(swapped.mean.value).toBeCloseTo(-plain.mean.value, 9);
        expect(swapped.spread.value).toBeCloseTo(-plain.spread.value, 9);
        expect(swapped.taper?.value).toBeCloseTo(-(plain.taper?.value ?? 0), 9);
        expect(plain.places === undefined).toBe(left.length !== right.length);
      }),
    );
  });

  it('has no answer for a side that wasn’t read', () => {
    expect(leftAgainstRight([], figures([4]))).toMatchObject({ ok: false });
    expect(leftAgainstRight(figures([4]), [])).toMatchObject({ ok: false });
  });
});
