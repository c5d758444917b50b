import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { certain } from '../../../../src/figures/ranges.ts';
import { compared, FENDER } from './fender.ts';

// By hand from the PERT means: mend 220/6 h, fit 13 h, paint 7.5 h, panel 1650.
const REPAIR_ALONE = (220 / 6) * 85 + 7.5 * 85 + 120 * 1.07;
const REPRODUCTION = 13 * 85 + 7.5 * 85 + 1650 * 1.07;
const REPAIR = REPAIR_ALONE * (0.85 + 0.15 * 0.4) + 0.15 * REPRODUCTION;

describe('the options of a choice', () => {
  const { options, pairs, knowing, draws } = compared(FENDER);
  const [repair, reproduction] = options as [(typeof options)[0], (typeof options)[0]];

  it('have their expected cost exactly, failure and what follows included', () => {
    expect(repair.cost.expected).toBeCloseTo(REPAIR, 9);
    expect(reproduction.cost.expected).toBeCloseTo(REPRODUCTION, 9);
  });

  it('are drawn about their expected cost, hours and wait', () => {
    for (const { cost, hours, wait } of options) {
      for (const outlook of [cost, hours, wait]) {
        expect(Math.abs(outlook.mean - outlook.expected)).toBeLessThanOrEqual(4 * outlook.error.mean);
      }
    }
    expect(draws).toBe(20_000);
  });

  it('take the hours and days of what follows a failure', () => {
    expect(reproduction.hours.expected).toBeCloseTo(20.5, 12);
    expect(repair.hours.expected).toBeCloseTo((220 / 6 + 7.5) * 0.91 + 0.15 * 20.5, 9);
    expect(reproduction.wait.expected).toBe(50);
    expect(repair.wait.expected).toBeCloseTo(7.5, 12);
    expect(repair.wait.p50).toBe(0);
  });

  it('share out the chance of being cheapest', () => {
    expect(repair.cheapest.chance + reproduction.cheapest.chance).toBeCloseTo(1, 12);
    expect(repair.cheapest.chance).toBeGreaterThan(0.2);
    expect(repair.cheapest.chance).toBeLessThan(0.6);
  });

  it('stand against each other with one difference, seen from both sides', () => {
    const [from, back] = [repair.against[0], reproduction.against[0]];
    expect([from?.other, back?.other]).toEqual(['reproduction', 'repair']);
    expect(from?.mean).toBeCloseTo(REPAIR - REPRODUCTION, 9);
    expect(from?.p10).toBeCloseTo(-(back?.p90 ?? 0), 6);
    expect(from?.p10).toBeLessThan(from?.p50 as number);
  });

  it('come out the same to the last digit when the numbers of earlier draws were kept', () => {
    const kept = new Map();
    const dearer: Choice = {
      ...FENDER,
      drivers: FENDER.drivers.map((driver) => ({
        ...driver,
        range:
          { rate: certain(96), 'too thin': { low: 0.1, likely: 0.2, high: 0.4 } }[driver.id] ?? driver.range,
      })),
    };
    for (const choice of [FENDER, dearer, FENDER]) {
      expect(compared(choice, { kept })).toEqual(compared(choice));
    }
    expect(kept.size).toBeGreaterThan(5);
  });

  it('turn where hand reckoning says', () => {
    const turns = new Map(pairs[0]?.turns.map(({ driver, turning }) => [driver, turning]));
    // REPAIR = REPRODUCTION in the chance: a + c (0.4 a + b - a) = b.
    const chance = (REPRODUCTION - REPAIR_ALONE) / (REPRODUCTION - 0.6 * REPAIR_ALONE);
    expect(chance).toBeLessThan(0);
    expect(turns.get('too thin')).toEqual({ kind: 'never', beyond: null });
    const mend = (REPRODUCTION * 0.85) / 0.91 - 7.5 * 85 - 120 * 1.07;
    expect(turns.get('mend')).toMatchObject({ kind: 'at', firstCheaperBelow: true });
    expect(turns.get('mend')).toHaveProperty('value', expect.closeTo(mend / 85, 9));
    const panel = ((REPAIR_ALONE * 0.91) / 0.85 - 20.5 * 85) / 1.07;
    expect(panel).toBeGreaterThan(2100);
    expect(turns.get('panel')).toEqual({ kind: 'never', beyond: expect.closeTo(panel, 9) });
    // The panel's paint is the fender's paint, but a repair that fails has only 0.4 of it behind it.
    expect(turns.get('paint')?.kind).toBe('never');
  });

  it('swing most by what is known least; certain drivers swing nothing', () => {
    const swings = pairs[0]?.swings ?? [];
    expect(swings.map(({ driver }) => driver)).toEqual(['mend', 'fit', 'panel', 'paint']);
    // Rest at likely: only the share 0.91 of the repair's own hours is at stake.
    expect((swings[0]?.atHigh ?? 0) - (swings[0]?.atLow ?? 0)).toBeCloseTo(0.91 * 36 * 85, 9);
  });

  it('say what knowing would be worth, in money and in hours', () => {
    expect(knowing.worth).toBeGreaterThan(0);
    expect(knowing.hours).toBeCloseTo(knowing.worth / 85, 12);
    expect(compared({ ...FENDER, hourly: 0 }).knowing.hours).toBeNull();
  });

  it('may follow one another in a chain', () => {
    const flat = (id: string, price: number) => ({ id, kind: 'price' as const, range: certain(price) });
    const chained: Choice = {
      drivers: [
        flat('a', 100),
        flat('b', 200),
        flat('c', 400),
        { id: 'p', kind: 'chance', range: certain(0.5) },
      ],
      options: [
        { id: 'a', terms: [{ amount: 'a' }], canFail: { chance: 'p', after: 1, next: 'b' } },
        { id: 'b', terms: [{ amount: 'b' }], canFail: { chance: 'p', after: 0.25, next: 'c' } },
        { id: 'c', terms: [{ amount: 'c', times: 2 }] },
      ],
    };
    // c 800; b 200 (0.5 + 0.5 x 0.25) + 0.5 x 800 = 525; a 100 + 0.5 x 525 = 362.5.
    const { options: chain } = compared(chained);
    expect(chain.map(({ cost }) => cost.expected)).toEqual([362.5, 525, 800]);
    expect(new Set([chain[0]?.cost.p10, chain[0]?.cost.p90])).toEqual(new Set([100, 950]));
    for (const { cost } of chain) {
      expect(Math.abs(cost.mean - cost.expected)).toBeLessThanOrEqual(4 * cost.error.mean);
    }
  });
});
