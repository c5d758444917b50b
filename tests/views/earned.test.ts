// What an hour really earned, worked by hand beside each check.
import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { shopEarned } from '../../src/rollup/shop-earned.ts';
import { earnedPage } from '../../src/views/earned.ts';
import { recordOf, shopText } from '../rollup/records.ts';

const record = recordOf({
  'shop.md': shopText(`pay:
  - { from: 2025-01-01, rate: 30.00 }
step: 30m
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-01-01, kind: outside, share: 5% }
`),
  'parts/cowl.md': `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: 3, fixed-price: 200 }
  - { line: lead, do: Fill it, work: metal, hours: 2, fixed-price: 150 }
---
`,
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 4h }
  - { part: cowl, line: lead, work: metal, time: 1h }
  - { part: frame, work: assembly, time: 1h 40m, note: bolts }
  - { part: frame, work: assembly, time: 50m, note: bolts again, no-charge: our own mistake }
  - { work: shop, time: 20m, no-charge: our own sweeping }
bought:
  - { what: Wire, from: keld, price: 20.00, tax: 1.40, freight: 3.00 }
  - { what: Pump, from: keld, price: 90.00, deposit: 60.00, paid-by: owner }
outside:
  - { what: Plating, from: millrace, price: 100.00 }
finished: [cowl/strip]
---
`,
});
const rollup = rollUp(record);
const earned = shopEarned(record, rollup);

describe('what an hour earned', () => {
  it('is what was charged for it, at a price or by the hour, over the time worked, and less pay', () => {
    expect(
      earned.works.map(({ work, minutes, charged, pay, perHour, left }) => [
        work,
        minutes,
        charged,
        pay,
        perHour,
        left,
      ]),
    ).toEqual([
      // 200.00 for 5 h; 5 x 30.00
      ['metal', 300, 20000, 15000, 4000, 1000],
      // 1 h 40 m are charged as 2 h at 85.00; 2 h 30 m were worked: 68.00; pay 75.00
      ['assembly', 150, 17000, 7500, 6800, 3800],
      ['shop', 20, 0, 1000, 0, -3000],
    ]);
    // 370.00 over 470 minutes: 47.234; less pay of 235.00: 17.234
    expect(earned.all).toMatchObject({ minutes: 470, chargedMinutes: 120, perHour: 4723, left: 1723 });
  });

  it('is none where nobody worked', () => {
    const empty = recordOf({});
    expect(shopEarned(empty, rollUp(empty)).all).toEqual({
      minutes: 0,
      chargedMinutes: 0,
      charged: 0,
      pay: 0,
    });
    expect(earnedPage(empty, rollUp(empty))).toEqual({ lead: 'No hours are written yet.', tables: [] });
  });

  it('counts work at no charge by its reason, with what it would have been charged', () => {
    // 50 min are charged as 1 h, 20 min as 30 min, at 85.00; pay 25.00 and 10.00
    expect(earned.givenAway).toMatchObject({ minutes: 70, pay: 3500, forgone: 12750 });
    expect(
      earned.givenAway.reasons.map(({ reason, minutes, forgone, days }) => [reason, minutes, forgone, days]),
    ).toEqual([
      ['our own mistake', 50, 8500, [{ entry: '2025-03-03', text: 'bolts again' }]],
      ['our own sweeping', 20, 4250, [{ entry: '2025-03-03', text: 'shop' }]],
    ]);
  });

  it('holds each price fixed beforehand against its own hours, also before it is earned', () => {
    expect(
      earned.prices.map(({ of, priced, charged, minutes, perHour }) => [
        of,
        priced,
        charged,
        minutes,
        perHour,
      ]),
    ).toEqual([
      ['cowl/strip', true, 20000, 240, 5000],
      ['cowl/lead', false, 0, 60, 0],
    ]);
  });

  it('counts handling by kind of bill, without what the owner paid', () => {
    // (20.00 + 3.00 + 1.40) x 10%; 100.00 x 5%
    expect(earned.handled).toEqual([
      { kind: 'bought', cost: 2440, handling: 244 },
      { kind: 'outside', cost: 10000, handling: 500 },
    ]);
  });

  it('is said in words and tables', () => {
    const { lead, tables } = earnedPage(record, rollup);
    expect(lead).toBe(
      'An hour worked was charged at $47.23, and $17.23 of it is left after pay. 1 h 10 m were worked at no charge. Handling of bought things earned $2.44. Handling of outside work earned $5.00.',
    );
    expect(tables.map(({ caption, rows }) => [caption, rows.map(({ head }) => head)])).toEqual([
      ['What an hour earned, by kind of work, in USD', ['Metal', 'Assembly', 'Shop']],
      ['At prices fixed beforehand, in USD', ['Strip it', 'Fill it']],
      ['At no charge, in USD', ['Our own mistake', 'Our own sweeping']],
      ['Handling, in USD', ['Bought things', 'Outside work']],
    ]);
    expect(tables[1]?.rows.map(({ notes }) => notes)).toEqual([
      [],
      ['not finished, so that nothing is charged yet'],
    ]);
    expect(rollup.total.charged - rollup.total.cost).toBe(earned.all.charged - earned.all.pay + 744);
  });
});
