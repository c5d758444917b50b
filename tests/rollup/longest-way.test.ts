// The longest way through a chain, against every way tried one by one.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Link, longestWay } from '../../src/rollup/longest-way.ts';

/** Plans without a circle: a line waits only for lines of a lower number. */
const plans = fc
  .array(fc.record({ minutes: fc.nat(600), after: fc.array(fc.nat(8), { maxLength: 3 }) }), { maxLength: 8 })
  .map((lines) =>
    lines.map(
      ({ minutes, after }, i): Link => ({
        name: `l${i}`,
        minutes,
        after: after.filter((other) => other < i).map((other) => `l${other}`),
      }),
    ),
  );

/** The longest of all ways that end at a line, tried one by one. */
function tried(links: readonly Link[], name: string): number {
  const link = links.find((each) => each.name === name);
  if (!link) return 0;
  return link.minutes + Math.max(0, ...link.after.map((other) => tried(links, other)));
}

describe('the longest way', () => {
  test('is as long as the longest of all ways tried one by one', () => {
    fc.assert(
      fc.property(plans, (links) => {
        const { ways, longest } = longestWay(links);
        expect(ways.get(longest.at(-1) ?? '')?.to ?? 0).toBe(
          Math.max(0, ...links.map(({ name }) => tried(links, name))),
        );
        for (const { name } of links) expect(ways.get(name)?.to).toBe(tried(links, name));
      }),
    );
  });

  test('goes from a line to one that waits for it, and sums to its length', () => {
    fc.assert(
      fc.property(plans, (links) => {
        const { ways, longest } = longestWay(links);
        const of = new Map(links.map((link) => [link.name, link]));
        longest.slice(1).forEach((name, i) => {
          expect(of.get(name)?.after).toContain(longest[i]);
        });
        expect(longest.reduce((sum, name) => sum + (of.get(name)?.minutes ?? 0), 0)).toBe(
          ways.get(longest.at(-1) ?? '')?.to ?? 0,
        );
      }),
    );
  });

  test('is the same whatever order the lines come in', () => {
    fc.assert(
      fc.property(
        plans.chain((links) =>
          fc.tuple(fc.constant(links), fc.shuffledSubarray(links, { minLength: links.length })),
        ),
        ([links, mixed]) => {
          expect(longestWay(mixed).longest).toEqual(longestWay(links).longest);
          expect(new Map(longestWay(mixed).ways)).toEqual(new Map(longestWay(links).ways));
        },
      ),
    );
  });

  test('leaves out a circle and what is behind it, and goes on with the rest', () => {
    const { ways, longest } = longestWay([
      { name: 'a', minutes: 60, after: ['b'] },
      { name: 'b', minutes: 60, after: ['a'] },
      { name: 'c', minutes: 60, after: ['b'] },
      { name: 'd', minutes: 30, after: [] },
    ]);
    expect([...ways]).toEqual([['d', { from: 0, to: 30 }]]);
    expect(longest).toEqual(['d']);
  });

  test('takes one pass through a plan of fifty thousand lines, each after the one before', () => {
    const links = Array.from({ length: 50_000 }, (_, i) => ({
      name: `l${i}`,
      minutes: 1,
      after: i === 0 ? [] : [`l${i - 1}`],
    }));
    expect(longestWay(links).longest).toHaveLength(50_000);
  });
});
