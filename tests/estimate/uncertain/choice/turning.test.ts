import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { turningOf } from '../../../../src/estimate/uncertain/choice/turning.ts';
import { certain } from '../../../../src/figures/ranges.ts';
import { compared } from './fender.ts';

const OPEN = { low: 0, high: Infinity };

describe('a turning point', () => {
  it('of a straight line is where it crosses zero', () => {
    expect(turningOf((v) => 5 * v - 30, OPEN, 100, 1)).toEqual({
      kind: 'at',
      value: 6,
      firstCheaperBelow: true,
    });
    expect(turningOf((v) => 30 - 5 * v, { low: 4, high: 9 }, 100, 5)).toEqual({
      kind: 'at',
      value: 6,
      firstCheaperBelow: false,
    });
  });

  it('outside what the driver can take is never reached; where it would be is told unless below zero', () => {
    expect(turningOf((v) => 5 * v - 30, { low: 7, high: 9 }, 100, 8)).toEqual({ kind: 'never', beyond: 6 });
    expect(turningOf((v) => 5 * v + 30, OPEN, 100, 8)).toEqual({ kind: 'never', beyond: null });
  });

  it('is none where the driver changes nothing, rounding aside', () => {
    expect(turningOf((v) => 5000 + 0.1 * v + 0.2 * v - 0.3 * v, OPEN, 10_000, 8)).toEqual({ kind: 'none' });
  });

  it('of a bent line is found by halving, the one nearest to where the driver stands', () => {
    const bent = (v: number) => (v - 0.2) * (v - 0.7);
    const domain = { low: 0, high: 1 };
    expect(turningOf(bent, domain, 1, 0.6)).toMatchObject({
      value: expect.closeTo(0.7, 12),
      firstCheaperBelow: true,
    });
    expect(turningOf(bent, domain, 1, 0.1)).toMatchObject({
      value: expect.closeTo(0.2, 12),
      firstCheaperBelow: false,
    });
    expect(turningOf((v) => v * v + 1, domain, 1, 0.5)).toEqual({ kind: 'never', beyond: null });
    expect(turningOf((v) => (v - 0.25) * (v + 1), domain, 1, 0.5)).toMatchObject({
      value: expect.closeTo(0.25, 12),
    });
  });

  it('in a chance met twice on one way bends: 100 + 200 p + 800 p^2 meets 324 at 0.418', () => {
    const flat = (id: string, price: number) => ({ id, kind: 'price' as const, range: certain(price) });
    const choice: Choice = {
      drivers: [
        flat('a', 100),
        flat('b', 200),
        flat('c', 800),
        flat('d', 324),
        { id: 'p', kind: 'chance', range: certain(0.1) },
      ],
      options: [
        { id: 'a', terms: [{ amount: 'a' }], canFail: { chance: 'p', after: 1, next: 'b' } },
        { id: 'b', terms: [{ amount: 'b' }], canFail: { chance: 'p', after: 1, next: 'c' } },
        { id: 'c', terms: [{ amount: 'c' }] },
        { id: 'd', terms: [{ amount: 'd' }] },
      ],
    };
    const pair = compared(choice, { draws: 10 }).pairs.find(
      ({ first, second }) => first === 'a' && second === 'd',
    );
    const turning = pair?.turns.find(({ driver }) => driver === 'p')?.turning;
    const root = (-200 + Math.sqrt(200 ** 2 + 4 * 800 * 224)) / 1600;
    expect(turning).toMatchObject({ kind: 'at', firstCheaperBelow: true });
    expect(turning).toHaveProperty('value', expect.closeTo(root, 12));
  });
});
