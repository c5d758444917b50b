import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesOf, levelOf, slopeOf } from '../../src/measure/level.ts';
import { answered } from './answered.ts';

describe('a level', () => {
  // Common practice: with the side rail set to zero, brackets that read 1 to 1.5 degrees up are a fault to be put right.
  it.each([
    [1, 'not within'],
    [1.4, 'not within'],
    [-0.5, 'within'],
    [0.2, 'within'],
  ])('%f° on a bracket, half a degree allowed: %s', (value, verdict) => {
    expect(answered(levelOf({ reading: { value }, within: 0.5 })).verdict).toBe(verdict);
  });

  it('gives the rise over a length by the tangent, and what of it is too much', () => {
    // tan 45° = 1, tan 0° = 0; a target of 1° over 1 m takes 17.455065 mm off.
    const { off, rise, riseOff } = answered(
      levelOf({ reading: { value: 45 }, target: 1, over: { value: 1000 } }),
    );
    expect(off.value).toBe(44);
    expect(rise?.value).toBeCloseTo(1000, 9);
    expect(riseOff?.value).toBeCloseTo(1000 - 17.455065, 6);
  });

  it('carries the ± of the reading: a tenth of a degree is 1.745331 mm over a meter', () => {
    const { rise, off } = answered(
      levelOf({ reading: { value: 0, plusMinus: 0.1 }, over: { value: 1000, plusMinus: 1 } }),
    );
    expect(off.plusMinus).toBeCloseTo(0.1, 12);
    expect(rise?.plusMinus).toBeCloseTo(1.745331, 4);
  });

  it('says nothing of a length or a limit that wasn’t given', () => {
    expect(answered(levelOf({ reading: { value: 1 } }))).toEqual({ off: { value: 1 } });
  });

  it('refuses an upright', () => {
    expect(levelOf({ reading: { value: 90 } })).toEqual({
      ok: false,
      why: 'A slope stays below 90 degrees either way.',
    });
  });

  it('a slope comes back from its rise, and turns over with its sign', () => {
    fc.assert(
      fc.property(fc.double({ min: -80, max: 80, noNaN: true }), (degrees) => {
        const slope = slopeOf(degrees);
        expect(degreesOf(slope.mmPerMeter, 1000)).toBeCloseTo(degrees, 9);
        expect(degreesOf(slope.inchesPerFoot, 12)).toBeCloseTo(degrees, 9);
        expect(slopeOf(-degrees).mmPerMeter).toBeCloseTo(-slope.mmPerMeter, 9);
      }),
    );
  });
});
