// Money against published rules and worked figures. Each check names its source; "worked exactly" is decimal
// arithmetic by hand or by bc, where the source gives the rule and not the figure.
import { describe, expect, it } from 'vitest';
import { chargedTaxes } from '../../src/estimate/charged-tax.ts';
import { paidTaxes } from '../../src/estimate/paid-tax.ts';
import type { TaxRule } from '../../src/estimate/rules.ts';
import { currencyOf } from '../../src/figures/currency.ts';
import { contained, overMinutes, readMoney, shareOf, split, times } from '../../src/figures/money.ts';
import { Exact, type Rounding, roundWhole } from '../../src/figures/rounding.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf } from '../rollup/records.ts';

describe('minor units', () => {
  // ISO 4217 list one, dated 2024-06-25, as shipped in the npm package currency-codes 2.2.0
  it.each([
    ['USD', 2],
    ['EUR', 2],
    ['GBP', 2],
    ['JPY', 0],
    ['KWD', 3],
    ['BHD', 3],
    ['CLF', 4],
    ['UYW', 4],
    ['ISK', 0],
    ['HUF', 2],
    ['MGA', 2],
    ['MRU', 2],
  ])('C1: %s has %i digits', (code, digits) => {
    expect(currencyOf(code)?.digits).toBe(digits);
  });

  it('C2: are not taken from Intl, which follows CLDR and gives the forint none', () => {
    const intl = new Intl.NumberFormat('en', { style: 'currency', currency: 'HUF' }).resolvedOptions();
    expect([intl.maximumFractionDigits, currencyOf('HUF')?.digits]).toEqual([0, 2]);
  });
});

describe('tax on one amount', () => {
  // Rule: Streamlined Sales and Use Tax Agreement, sec. 324; R.I. Gen. Laws 44-18.1-25; Kan. Stat. 79-3676:
  // to the third decimal, up to the next cent when that digit exceeds four. Figures worked exactly.
  it.each([
    ['C3', 199, '0.0625', 12],
    ['C3', 1000, '0.0725', 73],
    ['C3', 1450, '0.07', 102],
    ['C3', 3550, '0.07', 249],
    ['C3 C4', 7, '0.07', 0],
    ['C3', 100, '0.005', 1],
    ['C3', 12995, '0.0825', 1072],
    // binary float gives a cent less: Math.round(3 * 0.075 * 100) is 22
    ['C6', 300, '0.075', 23],
    ['C6', 40, '0.0875', 4],
    ['C6', 200, '0.0725', 15],
    ['C6', 600, '0.0725', 44],
    ['C6', 232, '0.0625', 15],
    ['C6', 375, '0.06', 23],
  ])('%s: %i cents at %s is %i', (_id, amount, rate, expected) => {
    expect(shareOf(amount, rate)).toBe(expected);
    expect(shareOf(-amount, rate)).toBe(-expected + 0);
  });

  it('C4: 0.49 of a cent is nothing: rounding to 0.5 first and then to 1 is a second rounding', () => {
    expect(new Exact(7).times('0.07').round(1, 1).round(0, 1).toNumber()).toBe(1);
    expect(shareOf(7, '0.07')).toBe(0);
  });

  it('C6: what binary fractions would have given', () => {
    expect(Math.round(3 * 0.075 * 100)).toBe(22);
  });

  // Worked exactly: gross / 6 at 20%
  it.each([
    [10000, 1667, 1667],
    [999, 167, 166],
    [4995, 833, 832],
  ])('C11: the tax contained in %i at 20%% is %i half up, %i half even', (gross, up, even) => {
    expect(contained(gross, '0.2')).toBe(up);
    expect(contained(gross, '0.2', 'half-even')).toBe(even);
  });
});

describe('rounding', () => {
  // Decimal figures as in everyday texts on binary fractions; the exact column worked by hand
  it.each([
    ['1.005', 101],
    ['1.255', 126],
    ['2.675', 268],
    ['10.235', 1024],
  ])('C7: %s is %i cents', (amount, cents) => {
    expect(roundWhole(new Exact(amount).times(100))).toBe(cents);
  });

  it('C7: toFixed and multiplied fractions lose the tie', () => {
    expect([1.005 * 100, (1.005).toFixed(2), (2.675).toFixed(2)]).toEqual([
      100.49999999999999,
      '1.00',
      '2.67',
    ]);
  });

  it('C8: ten times 0.1 and a million times 0.01 stay whole in minor units', () => {
    const usd = currencyOf('USD') as NonNullable<ReturnType<typeof currencyOf>>;
    const cents = (text: string) => {
      const reading = readMoney(text, usd);
      return reading.ok ? reading.value : Number.NaN;
    };
    expect(Array.from({ length: 10 }, () => cents('0.10')).reduce((a, b) => a + b)).toBe(100);
    expect(times(cents('0.01'), '1000000')).toBe(1_000_000);
    expect([cents('4.35'), cents('19.99')]).toEqual([435, 1999]);
    expect([4.35 * 100, 19.99 * 100]).toEqual([434.99999999999994, 1998.9999999999998]);
  });

  // IEEE 754-2019, 4.3.1 roundTiesToEven; half up on the size, so that a refund rounds as the sale did
  it.each([
    ['0.5', 0, 1],
    ['1.5', 2, 2],
    ['2.5', 2, 3],
    ['3.5', 4, 4],
    ['-2.5', -2, -3],
    ['12.5', 12, 13],
    ['13.5', 14, 14],
    ['266.5', 266, 267],
    ['834.5', 834, 835],
  ])('C9: %s is %i half even and %i half up', (exact, even, up) => {
    expect(roundWhole(new Exact(exact), 'half-even')).toBe(even);
    expect(roundWhole(new Exact(exact), 'half-up')).toBe(up);
  });

  // Figures as in the allocation examples of dinero.js 2
  it.each([
    [10000, [1, 1, 1], [3334, 3333, 3333]],
    [5, [70, 30], [4, 1]],
    [1003, [1, 1], [502, 501]],
  ])('C10: %i by %j is %j', (amount, weights, parts) => {
    expect(split(amount, weights)).toEqual(parts);
  });
});

const tax = (rate: string, by: TaxRule['by'], rounding?: Rounding): TaxRule => ({
  name: 'Sales tax',
  rate,
  side: 'charged',
  on: ['bought'],
  from: '2025-01-01',
  by,
  rounding,
});
const charged = (amounts: number[], rule: TaxRule) => {
  const lines = amounts.map((bought) => ({ day: '2025-03-03', charged: { bought } }));
  const { byLine, byStatement } = chargedTaxes(lines, [rule]);
  return [...byLine.flat(), ...byStatement].map(({ amount }) => amount);
};

describe('tax by line and by statement', () => {
  // Both bases are the seller's choice under SSUTA sec. 324. 1.41 x 7% is 0.0987; 0.47 x 7% is 0.0329
  it('C5: three of 0.47 at 7% are 0.09 by line and 0.10 by statement', () => {
    expect(charged([47, 47, 47], tax('0.07', 'line'))).toEqual([3, 3, 3]);
    expect(charged([47, 47, 47], tax('0.07', 'statement'))).toEqual([10]);
  });

  it('C5: the same holds for tax worked out on a bill, and the bill’s cents are split over its lines', () => {
    const lines = [47, 47, 47].map((bought) => ({
      rulesOf: '2025-03-03',
      bill: 'a',
      amounts: { bought },
    }));
    const paid = (by: TaxRule['by']) =>
      paidTaxes(lines, [{ ...tax('0.07', by), side: 'paid' }])
        .flat()
        .map(({ amount }) => amount);
    expect(paid('line')).toEqual([3, 3, 3]);
    expect(paid('statement')).toEqual([4, 3, 3]);
  });

  // gov.uk VATREC12010 and Notice 700, 17.5: invoice traders may round the total payable down to a whole penny.
  // 704.88 x 20% is 140.976
  it('C12: 704.88 at 20% is 140.97 rounded down and 140.98 to the nearest', () => {
    for (const by of ['line', 'statement'] as const) {
      expect(charged([70488], tax('0.2', by, 'down'))).toEqual([14097]);
      expect(charged([70488], tax('0.2', by))).toEqual([14098]);
    }
  });

  // CJEU C-484/06 Ahold, C-302/07 Wetherspoon: no method is given for the whole of the EU, so it must be the
  // shop's rule. 0.47 x 20% is 0.094, 1.41 x 20% is 0.282; 0.48 x 20% is 0.096
  it('C13: each method can be had by the rule’s words alone', () => {
    expect(charged([48, 48, 48], tax('0.2', 'line', 'down'))).toEqual([9, 9, 9]);
    expect(charged([48, 48, 48], tax('0.2', 'line', 'half-up'))).toEqual([10, 10, 10]);
    expect(charged([48, 48, 48], tax('0.2', 'statement', 'down'))).toEqual([28]);
    expect(charged([48, 48, 48], tax('0.2', 'statement', 'half-up'))).toEqual([29]);
  });
});

// The same entries gave these figures in hledger 1.25 and ledger 3.3.0
describe('C14: a ledger of five postings', () => {
  it('6.25 h at 85.00 are 531.25, and all is 771.92', () => {
    expect(overMinutes(8500, 375)).toBe(53125);
    const { total, tables } = rollUp(
      recordOf({
        'log/2025-03-03.md': `---
hours:
  - { part: cowl, work: metal, time: 6.25 }
bought:
  - { what: Timber, from: millrace, part: cowl, price: 129.95, tax: 10.72 }
  - { what: A third, from: millrace, part: cowl, price: 33.34 }
  - { what: A third, from: millrace, part: cowl, price: 33.33 }
  - { what: A third, from: millrace, part: cowl, price: 33.33 }
---
`,
      }),
    );
    expect(total.charged).toBe(77192);
    expect(tables.work.rows.find(({ key }) => key === 'metal')?.charged).toBe(53125);
  });
});
