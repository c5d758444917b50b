import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Mount, type PadsAsked, proposePads } from '../../../src/measure/pads/pads.ts';
import { answered } from '../answered.ts';

const INCH = 25.4;
const inches = (...values: number[]): number[] => values.map((value) => value * INCH);

/**
 * Ten mounts of a frame of 88 by 41 in with the stacks that they were found with: one or two pads, differing between
 * neighbors, is common practice. The third on the left hangs 3/64 in and the fourth on the right 5/64.
 */
const HEIGHTS = inches(0, 0, -3 / 64, 1 / 64, 0, 1 / 64, 0, 0, -5 / 64, 1 / 64);
const STACKS = [[2], [1], [1], [2], [1], [1, 0.5], [1], [1, 0.5], [], [2]].map((pads) =>
  pads.flatMap((eighths) => (eighths === 2 ? inches(1 / 8, 1 / 8) : inches(eighths / 8))),
);
const mounts: Mount[] = HEIGHTS.map((z, i) => ({
  id: `${i < 5 ? 'L' : 'R'}${(i % 5) + 1}`,
  x: (i % 5) * 22 * INCH,
  y: i < 5 ? 0 : 41 * INCH,
  z,
  stack: STACKS[i] ?? [],
}));
const stock = inches(1 / 64, 1 / 16, 1 / 8).map((thickness) => ({ thickness }));
const ask = (more: Partial<PadsAsked>): PadsAsked => ({
  mounts,
  stock,
  tolerance: INCH / 32,
  target: 'level',
  ...more,
});
const touched = (asked: PadsAsked) =>
  answered(proposePads(asked))
    .plan.mounts.filter(({ takeOut, putIn }) => takeOut.length + putIn.length > 0)
    .map(({ id, putIn }) => `${id} ${putIn.map((pad) => `${(pad / INCH) * 64}/64`).join(' ')}`);

describe('a frame with two low mounts', () => {
  it('is brought within 1/32 in by one pad of 1/16 in under the lower of them', () => {
    const { possible, proved, plan } = answered(proposePads(ask({})));
    expect([possible, proved, plan.changes, plan.moved]).toEqual([true, true, 1, 1]);
    expect(touched(ask({}))).toEqual(['R4 4/64']);
    // From -3/64 to 1/64 about the middle.
    expect(plan.furthest.value).toBeCloseTo(INCH / 32, 9);
    expect(plan.taken).toEqual([{ thickness: INCH / 16, count: 1 }]);
  });

  it('within 1/64 in takes a pad under each', () => {
    expect(touched(ask({ tolerance: INCH / 64 }))).toEqual(['L3 4/64', 'R4 4/64']);
  });

  it('takes a pad from another mount when the stock has none', () => {
    const { plan, possible } = answered(proposePads(ask({ stock: [{ thickness: INCH / 16, count: 0 }] })));
    expect(possible).toBe(true);
    // R1 stands 1/64 high and is 3/64 low without its thin pad: still in the 4/64 that are allowed, up to L4's 1/64.
    expect(
      plan.mounts.flatMap(({ id, takeOut, putIn }) => [
        ...takeOut.map(() => `${id} out`),
        ...putIn.map(() => `${id} in`),
      ]),
    ).toEqual(['R1 out', 'R4 in']);
    expect(plan.taken).toEqual([]);
    expect(touched(ask({ stock: [{ thickness: INCH / 16, count: 1 }] }))).toEqual(['R4 4/64']);
  });

  it('is left as it is when it is near enough already', () => {
    const { plan } = answered(proposePads(ask({ tolerance: INCH / 8 })));
    expect(plan.changes).toBe(0);
    expect(plan.mounts.map(({ after }) => after)).toEqual(STACKS);
    expect(plan.taken).toEqual([]);
  });

  it('says plainly when it can’t be done, and how near it can come', () => {
    const { possible, proved, plan, why } = answered(
      proposePads(ask({ tolerance: INCH / 128, stock: inches(1 / 16).map((thickness) => ({ thickness })) })),
    );
    expect(possible).toBe(false);
    expect(proved).toBe(true);
    expect(why).toBe(
      'It cannot be done with these pads: no stacks of up to 4 bring every mount near enough.',
    );
    // Sixteenths leave heights of -1/64, 0 and 1/64 in.
    expect(plan.furthest.value).toBeCloseTo(INCH / 64, 6);
    expect(plan.changes).toBe(2);
  });

  it('carries the ± of the heights', () => {
    const read = mounts.map((mount) => ({ ...mount, plusMinus: 0.2 }));
    expect(answered(proposePads(ask({ mounts: read }))).plan.furthest.plusMinus).toBe(0.2);
    expect(answered(proposePads(ask({}))).plan.furthest).not.toHaveProperty('plusMinus');
  });
});

describe('what a plan goes by', () => {
  const four = (z: readonly number[], stacks: readonly number[][] = [[], [], [], []]): Mount[] =>
    z.map((each, i) => ({
      id: `M${i + 1}`,
      x: i === 1 || i === 2 ? 2000 : 0,
      y: i > 1 ? 1000 : 0,
      z: each,
      stack: stacks[i] ?? [],
    }));

  it('a tilted body is untwisted, but not level', () => {
    const tilted = four([0, 4, 6, 2]);
    const any = [{ thickness: 1 }];
    expect(
      answered(proposePads(ask({ mounts: tilted, stock: any, tolerance: 0, target: 'plane' }))).plan.changes,
    ).toBe(0);
    const level = answered(
      proposePads(ask({ mounts: tilted, stock: any, tolerance: 0, target: 'level', most: 6 })),
    );
    expect(level.plan.mounts.map(({ putIn }) => putIn.length)).toEqual([6, 2, 0, 4]);
  });

  it('a twist of 8 comes out of one corner with one stack', () => {
    const { plan } = answered(
      proposePads(
        ask({ mounts: four([0, 0, 0, 8]), stock: [{ thickness: 8 }], tolerance: 0, target: 'plane' }),
      ),
    );
    expect([plan.changes, plan.moved]).toEqual([1, 1]);
    expect(plan.twist?.value).toBeCloseTo(0, 9);
  });

  it('a pad is given up for two thinner ones where only that frees it', () => {
    // Two pads at most: the first needs the 2 of the second, which takes two of 1 from stock instead.
    const { plan, possible } = answered(
      proposePads(
        ask({
          mounts: four([-2, 0, 0, 0], [[1], [2], [], []]),
          stock: [{ thickness: 1, count: 2 }],
          tolerance: 0,
          target: 'level',
          most: 2,
        }),
      ),
    );
    expect(possible).toBe(true);
    expect([plan.changes, plan.moved]).toEqual([2, 4]);
    expect(plan.mounts.slice(0, 2).map(({ after }) => after)).toEqual([
      [1, 2],
      [1, 1],
    ]);
  });

  it('a stack that is higher than allowed may stay, but none is made so high', () => {
    const high = four([0, 0, 0, -3], [[1, 1, 1, 1, 1], [], [], []]);
    const { plan } = answered(
      proposePads(ask({ mounts: high, stock: [{ thickness: 1 }], tolerance: 0, target: 'plane', most: 3 })),
    );
    expect(plan.mounts.map(({ after }) => after.length)).toEqual([5, 0, 0, 3]);
  });

  it('the order of the mounts and a tilt of the whole car change nothing', () => {
    const quarter = fc.integer({ min: -12, max: 12 }).map((each) => each / 4);
    const six = fc.array(quarter, { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(six, quarter, quarter, fc.integer({ min: 0, max: 5 }), (z, p, q, turn) => {
        const plain = z.map(
          (each, i): Mount => ({ id: `M${i}`, x: (i % 3) * 900, y: i < 3 ? 0 : 1000, z: each, stack: [1] }),
        );
        const pads = [{ thickness: 0.5 }, { thickness: 1, count: 2 }];
        const of = (list: readonly Mount[]) =>
          answered(proposePads({ mounts: list, stock: pads, tolerance: 0.4, target: 'plane' })).plan;
        const first = of(plain);
        const moved = plain.map((each) => ({ ...each, z: each.z + (p * each.x + q * each.y) / 1000 + 3 }));
        const second = of([...moved.slice(turn), ...moved.slice(0, turn)]);
        expect([second.changes, second.moved]).toEqual([first.changes, first.moved]);
        expect(second.furthest.value).toBeCloseTo(first.furthest.value, 4);
      }),
      { numRuns: 60 },
    );
  });

  it('more mounts than one word has bits for are still all seen', () => {
    const forty = Array.from(
      { length: 40 },
      (_, i): Mount => ({
        id: `M${i}`,
        x: (i % 20) * 300,
        y: i < 20 ? 0 : 1000,
        z: i === 37 ? -2 : 0,
        stack: [],
      }),
    );
    const { plan } = answered(
      proposePads(ask({ mounts: forty, stock: [{ thickness: 2 }], tolerance: 0.5, target: 'plane' })),
    );
    expect(plan.mounts.filter(({ putIn }) => putIn.length > 0).map(({ id }) => id)).toEqual(['M37']);
  });
});

describe('what can’t be asked', () => {
  const [first] = mounts as [Mount];
  it.each<[string, Partial<PadsAsked>]>([
    ['There are no mounts to put pads under.', { mounts: [] }],
    ['Mount L1 is given twice.', { mounts: [first, first] }],
    ['A tolerance is zero or more.', { tolerance: -1 }],
    ['A pad is thicker than nothing.', { stock: [{ thickness: 0 }] }],
    ['Pads in stock are counted in whole numbers, from zero.', { stock: [{ thickness: 1, count: 1.5 }] }],
    ['A stack has a whole number of pads.', { most: 1.5 }],
    ['Every mount has a place and a height.', { mounts: [{ ...first, x: Number.NaN }] }],
  ])('%s', (why, more) => {
    expect(proposePads(ask(more))).toEqual({ ok: false, why });
  });

  it('but one mount alone, or two, are always level', () => {
    expect(answered(proposePads(ask({ mounts: [first] }))).plan.changes).toBe(0);
    expect(
      answered(proposePads(ask({ mounts: mounts.slice(2, 4), target: 'plane', tolerance: 0 }))).plan.changes,
    ).toBe(0);
  });
});
