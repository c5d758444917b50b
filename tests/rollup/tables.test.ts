import { describe, expect, it } from 'vitest';
import type { Rollup } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf } from './records.ts';

const LOG = {
  'log/2025-03-03.md': `---
hours:
  - { part: frame, work: metal, time: 1h, by: tobias }
  - { line: cowl/strip, work: timber, time: 2h }
  - { work: shop, time: 30m, no-charge: our own shelves }
bought:
  - { what: Wire, from: keld, part: cowl, line: strip, price: 4.00 }
  - { what: Rod, from: millrace, price: 40.00 }
paid:
  - { amount: 500.00, how: check }
---
`,
  'log/2025-05-05.md': `---
left:
  - { line: cowl/lead, hours: [3, 4, 5], spend: 12.00 }
---
`,
  'log/2025-05-06.md': `---
outside:
  - { what: Plating, from: millrace, part: frame, price: 7.00 }
paid:
  - { amount: 250.00, how: check }
finished: [cowl/strip]
left:
  - { line: cowl/lead, hours: [1, 2, 4] }
---
`,
};
const rollup = rollUp(recordOf(LOG));
const rows = (by: keyof Rollup['tables']) =>
  rollup.tables[by].rows.map(({ label, charged }) => [label, charged]);

describe('tables', () => {
  it('name parts and groups in the record’s order, and the car as a whole last', () => {
    expect(rows('part')).toEqual([
      ['Cowl', 17400],
      ['Frame', 9200],
      ['The car as a whole', 4000],
    ]);
    expect(rows('group')).toEqual([
      ['Body panels', 17400],
      ['Chassis', 9200],
      ['The car as a whole', 4000],
    ]);
  });

  it('order the others by amount', () => {
    expect(rows('vendor')).toEqual([
      ['Millrace Metals', 4700],
      ['Keld Fasteners', 400],
      ['No vendor', 25500],
    ]);
    expect(rows('work')).toEqual([
      ['timber', 17000],
      ['metal', 8500],
      ['shop', 0],
      ['No kind of work', 5100],
    ]);
    expect(rows('person')).toEqual([
      ['Tobias Reeve', 25500],
      ['No person', 5100],
    ]);
    expect(rows('kind')).toEqual([
      ['Labor', 25500],
      ['Bought', 4400],
      ['Outside work', 700],
    ]);
  });

  it('stand months in order of date', () => {
    expect(rows('month')).toEqual([
      ['March 2025', 29900],
      ['May 2025', 700],
    ]);
  });

  it('keep the lines behind every row and every kind of it', () => {
    const [cowl] = rollup.tables.part.rows;
    expect(cowl?.lines.map(({ text }) => text)).toEqual(['timber', 'Wire']);
    expect(cowl?.kinds.bought).toMatchObject({ charged: 400, lines: [{ text: 'Wire' }] });
    expect(rollup.tables.part.total.kinds.labour).toMatchObject({ charged: 25500, minutes: 210 });
  });
});

describe('the rest of the sums', () => {
  it('runs through months without a line, with what was agreed by the end of each', () => {
    expect(rollup.months).toEqual([
      { month: '2025-03', minutes: 210, charged: 29900, running: 29900, agreed: 500000 },
      { month: '2025-04', minutes: 0, charged: 0, running: 29900, agreed: 570000 },
      { month: '2025-05', minutes: 0, charged: 700, running: 30600, agreed: 570000 },
    ]);
  });

  it('adds up what was agreed and paid', () => {
    expect([rollup.agreed, rollup.paid]).toEqual([570000, 75000]);
  });

  it('says why an hour isn’t charged', () => {
    const free = rollup.lines.find(({ noCharge }) => noCharge);
    expect(free).toMatchObject({ charged: 0, minutes: 30, noCharge: 'our own shelves' });
  });

  it('tells of every planned line what it took and whether it is done', () => {
    const { lines, ...strip } = rollup.planned['cowl/strip'] ?? { lines: [] };
    expect(strip).toEqual({ minutes: 120, charged: 17400, begun: true, finished: '2025-05-06' });
    expect(lines).toHaveLength(2);
    expect(rollup.planned['cowl/lead']).toEqual({
      minutes: 0,
      charged: 0,
      begun: false,
      lines: [],
      // Each keeps its own last word: the second writing said nothing of what is to be bought.
      left: {
        hours: { on: '2025-05-06', range: { low: 60, likely: 120, high: 240 } },
        spend: { on: '2025-05-05', range: { low: 1200, likely: 1200, high: 1200 } },
      },
    });
  });

  it('of an empty log are 0', () => {
    const empty = rollUp(recordOf({}));
    expect([empty.lines, empty.months, empty.total.charged]).toEqual([[], [], 0]);
    expect(empty.tables.part.rows).toEqual([]);
  });
});
