// A whole bill worked by hand: hours with materials, a thing bought with freight and deposit, work done outside,
// and the thing sent back.
import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf, shopText } from './records.ts';

const RULES = `pay:
  - { from: 2025-01-01, rate: 35.00 }
step: 15m
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-01-01, kind: outside, share: 8% }
materials:
  - { from: 2025-01-01, per-hour: 3.50 }
tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: line }
  - { name: Sales tax, rate: 7%, side: charged, on: [bought, materials], from: 2025-01-01, by: line }
  - { name: County levy, rate: 0.25%, side: charged, on: [bought, materials], from: 2025-01-01, by: statement }
`;
const record = recordOf({
  'shop.md': shopText(RULES, '  - { from: 2025-01-01, rate: 75.00 }'),
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 1h 05m }
bought:
  - { what: Iron wire, from: millrace, part: cowl, price: 4.90, count: 3, freight: 1.85, deposit: 6.00, bill: "20817" }
outside:
  - { what: Plate the handles, from: keld, part: cowl, price: 640.00, tax: 44.80 }
---
`,
  'log/2025-03-10.md': `---
returned:
  - { what: Iron wire, from: millrace, price: 14.70, deposit: 6.00, bill: "20817" }
---
`,
});
const rollup = rollUp(record);

describe('a bill by hand', () => {
  it('has these lines, in this order', () => {
    expect(rollup.lines.map(({ day, kind, cost, charged }) => [day, kind, cost, charged])).toEqual([
      // pay 65 / 60 x 35.00 = 37.9166; charged 75 / 60 x 75.00 = 93.75
      ['2025-03-03', 'labour', 3792, 9375],
      // 75 / 60 x 3.50 = 4.375
      ['2025-03-03', 'materials', 0, 438],
      // 7% of 4.38 = 0.3066
      ['2025-03-03', 'tax', 0, 31],
      // 3 x 4.90
      ['2025-03-03', 'bought', 1470, 1470],
      ['2025-03-03', 'freight', 185, 185],
      // the bill is silent: 7% of 14.70 = 1.029, not on freight
      ['2025-03-03', 'paid-tax', 103, 103],
      // 14.70 + 1.85 + 1.03 = 17.58; x 1.1 = 19.338; less 17.58
      ['2025-03-03', 'handling', 0, 176],
      ['2025-03-03', 'deposit', 600, 600],
      // 19.34 less freight's own 1.85 x 1.1 = 2.035 is 17.30; 7% is 1.211
      ['2025-03-03', 'tax', 0, 121],
      ['2025-03-03', 'outside', 64000, 64000],
      ['2025-03-03', 'paid-tax', 4480, 4480],
      // 684.80 x 1.08 = 739.584; less 684.80
      ['2025-03-03', 'handling', 0, 5478],
      // what came back: the goods, their tax, and the handling: 15.73 x 1.1 = 17.303; freight stays paid
      ['2025-03-10', 'bought', -1470, -1470],
      ['2025-03-10', 'paid-tax', -103, -103],
      ['2025-03-10', 'handling', 0, -157],
      ['2025-03-10', 'deposit', -600, -600],
      ['2025-03-10', 'tax', 0, -121],
      // 0.25% of 4.38 + 17.30 - 17.30, once, on the last day
      ['2025-03-10', 'tax', 0, 1],
    ]);
  });

  it('comes to these sums', () => {
    // 37.92 + 17.58 + 6.00 + 684.80 - 15.73 - 6.00
    expect(rollup.total.cost).toBe(72457);
    // 98.44 + 26.55 + 739.58 - 24.51 + 0.01
    expect(rollup.total.charged).toBe(84007);
    expect(rollup.total.minutes).toBe(65);
  });

  it('gives what came back the part that it was bought for, and marks what was worked out', () => {
    const back = rollup.lines.filter(({ day, entry }) => day === '2025-03-10' && entry);
    expect(new Set(back.map(({ part, vendor, bill }) => `${part} ${vendor} ${bill}`))).toEqual(
      new Set(['cowl millrace 20817']),
    );
    expect(rollup.lines.filter(({ workedOut }) => workedOut).map(({ cost }) => cost)).toEqual([103, -103]);
  });

  it('gives tax on the statement’s sum the place of its rule and no part', () => {
    const last = rollup.lines.at(-1);
    expect([last?.entry, last?.part, last?.place.file]).toEqual([undefined, undefined, 'shop.md']);
    const text = `- { name: County levy`;
    const written =
      shopText(RULES)
        .split('\n')
        .findIndex((line) => line.includes(text)) + 1;
    expect(last?.place.line).toBe(written);
  });

  it('leaves no deposit out', () => {
    expect(rollup.depositsOut).toEqual([]);
  });
});
