// Orders by vendor; days are counted by hand beside each check.
import { describe, expect, it } from 'vitest';
import { openOrders } from '../../src/rollup/orders.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { ordersPage } from '../../src/views/orders.ts';
import { recordOf } from '../rollup/records.ts';

const LOG = {
  'log/2025-03-03.md': `---
ordered:
  - { what: Top cloth, from: keld, part: cowl, price: 410.00, expected: 2025-04-01 }
  - { what: Wire, from: keld }
  - { what: Core, from: millrace, price: 1280, expected: 2025-03-20 }
bought:
  - { what: Pump in exchange, from: millrace, price: 90, deposit: 60.00, bill: "7" }
  - { what: Bottle, from: keld, price: 9, deposit: 25.00, bill: "8" }
---
`,
  'log/2025-03-24.md': `---
received:
  - { what: core, from: millrace }
returned:
  - { what: Pump in exchange, from: millrace, deposit: 40.00, bill: "7" }
  - { what: Bottle, from: keld, price: 9.00, tax: 0.63, bill: "8" }
---
`,
};
const page = (texts: Record<string, string>, today: string) => {
  const record = recordOf(texts);
  return ordersPage(record, rollUp(record), today);
};
const rows = (told: ReturnType<typeof page>, caption: string) =>
  told.tables
    .find((table) => table.caption.startsWith(caption))
    ?.rows.map(({ head, notes = [], cells }) => [head, notes.join('; '), ...cells.map(({ text }) => text)]);

describe('the page of orders', () => {
  // April 1 to April 12 are 11 days; the core came on March 24, 4 days after the 20th.
  const told = page(LOG, '2025-04-12');

  it('says what is open, and by how long it is overdue on the day given', () => {
    expect(told.asOf).toBe('April 12, 2025');
    expect(told.lead).toBe('2 orders are open, 1 of them overdue. $45.00 of deposits is to come back.');
    expect(rows(told, 'Orders')).toEqual([
      ['Keld Fasteners', '', '', '', '', ''],
      ['Top cloth', 'Cowl; open, overdue by 11 days', 'March 3, 2025', 'April 1, 2025', '', '410.00'],
      ['Wire', 'open', 'March 3, 2025', 'not said', '', 'not said'],
      ['Millrace Metals', '', '', '', '', ''],
      ['Core', 'came 4 days late', 'March 3, 2025', 'March 20, 2025', 'March 24, 2025', '1,280.00'],
    ]);
    const before = rows(page(LOG, '2025-04-01'), 'Orders')?.[1];
    expect(before?.[1]).toBe('Cowl; open');
  });

  it('lists deposits to come back with the days they are out, each vendor with its sum', () => {
    // March 3 to April 12: 28 + 12 days
    expect(rows(told, 'Deposits')).toEqual([
      ['Keld Fasteners', '', '', '', '25.00'],
      ['Bottle', '', 'March 3, 2025', '40', '25.00'],
      ['Millrace Metals', '', '', '', '20.00'],
      ['Pump in exchange', '', 'March 3, 2025', '40', '20.00'],
    ]);
    expect(told.tables[1]?.foot?.cells.at(-1)?.text).toBe('45.00');
  });

  it('lists what was sent back, with what the vendor gives for it', () => {
    expect(rows(told, 'Sent back')).toEqual([
      ['Keld Fasteners', '', '', '', ''],
      ['Bottle', '', 'March 24, 2025', '9.63', ''],
      ['Millrace Metals', '', '', '', ''],
      ['Pump in exchange', '', 'March 24, 2025', '', '40.00'],
    ]);
  });

  it('says of one order by how long it is overdue, and of none that there is none', () => {
    const one = {
      'log/2025-03-03.md': '---\nordered:\n  - { what: Wire, from: keld, expected: 2025-04-11 }\n---\n',
    };
    expect(page(one, '2025-04-12').lead).toBe(
      '1 order is open, overdue by 1 day. No vendor holds a deposit.',
    );
    expect(page({}, '2025-04-12')).toMatchObject({
      lead: 'No order is open. No vendor holds a deposit.',
      tables: [],
    });
  });

  it('counts as open what the roll-up counts as open', () => {
    const record = recordOf(LOG);
    expect(openOrders(record)).toEqual(rollUp(record).openOrders);
    expect(openOrders(record).map(({ what }) => what)).toEqual(['Top cloth', 'Wire']);
  });
});
