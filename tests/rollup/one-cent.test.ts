// One price a cent higher must move every figure that contains it by one cent, and no other.
import { describe, expect, it } from 'vitest';
import type { Rollup } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf } from './records.ts';

const log = (price: string) => ({
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 3h 20m }
bought:
  - { what: Wire, from: keld, part: cowl, line: strip, price: ${price}, tax: 0.30, freight: 2.00 }
  - { what: Rod, from: keld, part: frame, price: 40.00 }
---
`,
  'log/2025-04-07.md': `---
outside:
  - { what: Plating, from: millrace, part: frame, price: 70.00 }
---
`,
});

describe('a price one cent higher', () => {
  it('changes the figures that contain it by one cent, and no other figure', () => {
    const before = figures(rollUp(recordOf(log('4.90'))));
    const after = figures(rollUp(recordOf(log('4.91'))));
    expect([...after.keys()]).toEqual([...before.keys()]);
    const moved = [...after].flatMap(([name, amount]) => {
      const by = amount - (before.get(name) ?? 0);
      return by === 0 ? [] : [`${name} ${by}`];
    });
    const both = (name: string) => [`${name} cost 1`, `${name} charged 1`];
    expect(moved.sort()).toEqual(
      [
        ...both('total'),
        ...both('line 1 bought Wire'),
        ...['part cowl', 'group Body panels', 'work none', 'person none', 'vendor keld'].flatMap((row) => [
          ...both(row),
          ...both(`${row} bought`),
        ]),
        ...['month 2025-03', 'choice none', 'kind bought'].flatMap((row) => [
          ...both(row),
          ...both(`${row} bought`),
        ]),
        ...['part', 'group', 'work', 'person', 'vendor', 'month', 'choice', 'kind'].flatMap((by) => [
          ...both(`${by} total`),
          ...both(`${by} total bought`),
        ]),
        'in 2025-03 1',
        'by 2025-03 1',
        'by 2025-04 1',
        'planned cowl/strip 1',
      ].sort(),
    );
  });
});

/** Every amount of money that a rollup holds, by a name of its own. */
function figures(rollup: Rollup): Map<string, number> {
  const found = new Map<string, number>();
  const both = (name: string, of: { cost: number; charged: number }) => {
    found.set(`${name} cost`, of.cost);
    found.set(`${name} charged`, of.charged);
  };
  both('total', rollup.total);
  for (const [i, line] of rollup.lines.entries()) both(`line ${i} ${line.kind} ${line.text}`, line);
  for (const { by, rows, total } of Object.values(rollup.tables)) {
    for (const row of [...rows, { key: 'total', ...total }]) {
      const name = `${by} ${row.key ?? 'none'}`;
      both(name, row);
      for (const [kind, of] of Object.entries(row.kinds)) both(`${name} ${kind}`, of);
    }
  }
  for (const { month, charged, running, agreed } of rollup.months) {
    found.set(`in ${month}`, charged);
    found.set(`by ${month}`, running);
    found.set(`agreed ${month}`, agreed);
  }
  for (const [name, { charged }] of Object.entries(rollup.planned)) found.set(`planned ${name}`, charged);
  found.set('agreed', rollup.agreed);
  found.set('paid', rollup.paid);
  return found;
}
