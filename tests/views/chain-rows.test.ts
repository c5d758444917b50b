// The rows of the chain: nothing stands above what it waits for, and nothing is drawn twice.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { inChains } from '../../src/views/chain-rows.ts';
import { orderOfWork } from '../../src/views/order.ts';
import { recordOf } from '../rollup/records.ts';

/** A part whose lines have these hours and wait for these lines, by number. */
function linesOf(planned: readonly { hours: number; after: readonly number[] }[]) {
  const text = planned.map(
    ({ hours, after }, i) =>
      `  - { line: l${i}, do: Do it, work: metal, hours: ${hours}, after: [${after.map((n) => `l${n}`).join(', ')}] }\n`,
  );
  const record = recordOf({
    'parts/cowl.md': `---\nname: Cowl\ngroup: Body panels\nplanned:\n${text.join('')}---\n`,
  });
  return orderOfWork(record, rollUp(record)).lines;
}

describe('the rows of the chain', () => {
  test('each line that waits or is waited for stands once, below all that it waits for', () => {
    const plans = fc
      .array(
        fc.record({ hours: fc.integer({ min: 0, max: 9 }), after: fc.array(fc.nat(7), { maxLength: 3 }) }),
        {
          minLength: 1,
          maxLength: 8,
        },
      )
      .map((lines) =>
        lines.map(({ hours, after }, i) => ({ hours, after: [...new Set(after)].filter((n) => n < i) })),
      );
    fc.assert(
      fc.property(plans, (plan) => {
        const rows = inChains(linesOf(plan)).map(({ name }) => name);
        const linked = plan.flatMap(({ after }, i) => after.flatMap((n) => [`cowl/l${i}`, `cowl/l${n}`]));
        expect(rows.toSorted()).toEqual([...new Set(linked)].toSorted());
        for (const [i, { after }] of plan.entries()) {
          for (const n of after) {
            expect(rows.indexOf(`cowl/l${n}`)).toBeLessThan(rows.indexOf(`cowl/l${i}`));
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('what ends last of all that a line waits for stands right above it', () => {
    const rows = inChains(
      linesOf([
        { hours: 9, after: [] },
        { hours: 1, after: [] },
        { hours: 2, after: [0, 1] },
      ]),
    );
    expect(rows.map(({ name }) => name)).toEqual(['cowl/l1', 'cowl/l0', 'cowl/l2']);
  });

  test('lines on a circle are left out', () => {
    const lines = linesOf([
      { hours: 1, after: [1] },
      { hours: 1, after: [0] },
      { hours: 1, after: [] },
    ]);
    expect(inChains(lines)).toEqual([]);
  });
});
