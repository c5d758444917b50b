// The search against every plan there is, on cases small enough for that.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PadsAsked, type PadsPlan, proposePads } from '../../../src/measure/pads/pads.ts';
import { answered } from '../answered.ts';
import { tryEverything } from './brute-force.ts';

/** Halves and quarters, so that ties and exact limits come up often. */
const quarters = (from: number, to: number) =>
  fc.integer({ min: from * 4, max: to * 4 }).map((each) => each / 4);
const sizes = [0.5, 1, 1.75];
const pads = fc.record({
  thickness: fc.constantFrom(...sizes),
  count: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined }),
});

/** Mounts on a grid of places, one at each. */
const asked = (
  mounts: number,
  most: number,
  places: readonly (readonly [number, number])[],
): fc.Arbitrary<PadsAsked & { most: number }> =>
  fc.record({
    mounts: fc
      .tuple(
        fc.subarray([...places], { minLength: Math.min(3, mounts), maxLength: mounts }),
        fc.array(quarters(-3, 3), { minLength: mounts, maxLength: mounts }),
        fc.array(fc.array(fc.constantFrom(...sizes), { maxLength: most }), {
          minLength: mounts,
          maxLength: mounts,
        }),
      )
      .map(([at, heights, stacks]) =>
        at.map(([x, y], i) => ({ id: `M${i}`, x, y, z: heights[i] ?? 0, stack: stacks[i] ?? [] })),
      ),
    stock: fc.uniqueArray(pads, { selector: ({ thickness }) => thickness, maxLength: 3 }),
    tolerance: quarters(0, 2),
    target: fc.constantFrom('plane', 'level'),
    most: fc.constant(most),
  });

const GRID = [
  [0, 0],
  [700, 0],
  [1500, 100],
  [0, 900],
  [700, 1000],
  [1500, 900],
] as const;
const ROW = [0, 400, 900, 1500].map((x) => [x, 0] as const);

function expectBest(each: PadsAsked & { most: number }): void {
  const { possible, proved, plan } = answered(proposePads(each));
  const { best, nearest } = tryEverything(each);
  expect(proved).toBe(true);
  expect(possible).toBe(best !== undefined);
  const expected = best ?? nearest;
  expect({ changes: plan.changes, moved: plan.moved }).toEqual({
    changes: expected.changes,
    moved: expected.moved,
  });
  expect(plan.furthest.value).toBeCloseTo(expected.furthest, 4);
  expectHonest(each, plan);
}

/** What the plan says of itself must hold. */
function expectHonest({ mounts, stock, most }: PadsAsked & { most: number }, plan: PadsPlan): void {
  const count = (list: readonly number[], size: number) => list.filter((pad) => pad === size).length;
  plan.mounts.forEach(({ id, before, after, takeOut, putIn, height }, i) => {
    const mount = mounts[i];
    expect(id).toBe(mount?.id);
    expect(before).toEqual(mount?.stack);
    for (const size of sizes) {
      expect(count(after, size)).toBe(count(before, size) - count(takeOut, size) + count(putIn, size));
      expect(count(takeOut, size)).toBeLessThanOrEqual(count(before, size));
    }
    expect(after.length).toBeLessThanOrEqual(Math.max(most, before.length));
    const sum = (list: readonly number[]) => list.reduce((total, pad) => total + pad, 0);
    expect(height).toBeCloseTo((mount?.z ?? 0) + sum(after) - sum(before), 9);
  });
  for (const { thickness, count: taken } of plan.taken) {
    const pile = stock.find((each) => each.thickness === thickness);
    expect(taken).toBeLessThanOrEqual(pile ? (pile.count ?? Infinity) : 0);
  }
  const worst = Math.max(...plan.mounts.map(({ off }) => Math.abs(off)));
  expect(worst).toBeCloseTo(plan.furthest.value, 9);
}

describe('the plan for the pads', () => {
  it('is the best of all, for four mounts and stacks of two', () => {
    fc.assert(fc.property(asked(4, 2, GRID), expectBest), { numRuns: 250 });
  });

  it('is the best of all, for five mounts and stacks of one', () => {
    fc.assert(fc.property(asked(5, 1, GRID), expectBest), { numRuns: 300 });
  });

  it('is the best of all, for mounts in one row', () => {
    fc.assert(fc.property(asked(4, 2, ROW), expectBest), { numRuns: 120 });
  });
});
