// Expected amounts are worked by hand beside each check; check values carry their row and source.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineTaxes } from '../../src/estimate/charged-tax.ts';
import type { TaxRule } from '../../src/estimate/rules.ts';
import { type AccountLine, type Amounts, chained, statementSums } from '../../src/estimate/statement.ts';
import { addDays } from '../../src/figures/days.ts';
import { Exact, type Rounding } from '../../src/figures/rounding.ts';

const from = '2025-01-01';
const rule = (more: Partial<TaxRule> = {}): TaxRule => ({
  name: 'Sales tax',
  rate: '0.07',
  side: 'charged',
  on: ['bought'],
  from,
  by: 'line',
  ...more,
});

/** Goods on days, each taxed under the rules. */
function goods(rules: readonly TaxRule[], bought: readonly (readonly [day: string, amount: number])[]) {
  const taxes = lineTaxes(
    bought.map(([day, amount]) => ({ day, charged: { bought: amount } })),
    rules,
  );
  return bought.map(([day, amount], i): AccountLine<TaxRule> => {
    return { day, amounts: { goods: amount }, taxes: taxes[i] ?? [] };
  });
}
const plain = (day: string, amounts: Amounts): AccountLine<TaxRule> => ({ day, amounts, taxes: [] });

describe('a statement', () => {
  it('is what was brought forward, and what is charged, less what was paid', () => {
    const lines = [
      plain('2025-03-03', { labour: 26250, materials: 1225 }),
      plain('2025-03-04', { goods: 1470, freight: 185, 'paid-tax': 103, handling: 176, deposit: 6000 }),
      plain('2025-03-10', { deposit: -6000 }),
      plain('2025-03-14', { paid: 100000 }),
    ];
    // 14.70 + 1.85 + 1.03 + 1.76 = 19.34; 500.00 + 262.50 + 19.34 + 12.25 + 0.00 - 1,000.00
    expect(statementSums(50000, lines)).toMatchObject({
      broughtForward: 50000,
      labour: 26250,
      bills: 1934,
      materials: 1225,
      deposits: 0,
      corrections: 0,
      tax: 0,
      paid: 100000,
      balance: -20591,
    });
  });

  it('takes what has changed since it was stated as the difference, its tax with the tax', () => {
    const [was, now] = goods(
      [rule()],
      [
        ['2025-02-03', 1000],
        ['2025-02-03', 1240],
      ],
    );
    const gone = plain('2025-02-04', { labour: 7500 });
    const paid = { was: plain('2025-02-05', { paid: 4000 }), now: plain('2025-02-05', { paid: 5000 }) };
    // 12.40 - 10.00 - 75.00 - (50.00 - 40.00); 7%: 0.868 - 0.70
    expect(statementSums(0, [], [{ was, now }, { was: gone }, paid])).toMatchObject({
      corrections: -8260,
      taxes: [{ basis: 240, amount: 17 }],
      tax: 17,
      balance: -8243,
    });
  });

  it('shows a tax that the prices hold and adds nothing for it', () => {
    const held = goods([rule({ name: 'VAT', rate: '0.2', included: true })], [[from, 10000]]);
    // C11, gross / 6
    expect(statementSums(0, held)).toMatchObject({
      taxes: [{ within: '0.2', basis: 10000, amount: 1667 }],
      tax: 0,
      balance: 10000,
    });
  });

  it('shares a price among two taxes that it holds', () => {
    const two = [rule({ rate: '0.1', included: true }), rule({ name: 'Levy', rate: '0.15', included: true })];
    // 125.00 / 1.25 = 100.00 before tax, of which 10% and 15%
    expect(statementSums(0, goods(two, [[from, 12500]])).taxes.map(({ amount }) => amount)).toEqual([
      1000, 1500,
    ]);
  });

  it('charges no tax on a line that is exempt', () => {
    const [taxes] = lineTaxes([{ day: from, charged: { bought: 1000 }, exempt: true }], [rule()]);
    expect(taxes).toEqual([]);
  });
});

/** What is due of goods bought in one period under one rule, less the goods: the tax. */
const taxOf = (amounts: readonly number[], more: Partial<TaxRule>): number => {
  const lines = goods(
    [rule(more)],
    amounts.map((amount) => [from, amount]),
  );
  return statementSums(0, lines).balance - amounts.reduce((sum, amount) => sum + amount, 0);
};

describe('check values through a statement', () => {
  // C5: both bases are lawful under SSUTA sec. 324; 0.47 x 7% is 0.0329 and 1.41 x 7% is 0.0987
  it.each<[Rounding, number, number]>([
    ['half-up', 9, 10],
    ['half-even', 9, 10],
    ['down', 9, 9],
  ])('C5: three of 0.47 at 7%%, rounded %s, are %i by line and %i by statement', (rounding, line, whole) => {
    expect(taxOf([47, 47, 47], { by: 'line', rounding })).toBe(line);
    expect(taxOf([47, 47, 47], { by: 'statement', rounding })).toBe(whole);
  });

  // C6: exact 0.145 and 0.225, ties; half even takes the even cent, down drops the half
  it.each<[number, string, Rounding, number]>([
    [200, '0.0725', 'half-up', 15],
    [200, '0.0725', 'half-even', 14],
    [200, '0.0725', 'down', 14],
    [300, '0.075', 'half-up', 23],
    [300, '0.075', 'half-even', 22],
    [300, '0.075', 'down', 22],
  ])('C6: %i at %s, rounded %s, is taxed %i', (amount, rate, rounding, expected) => {
    for (const by of ['line', 'statement'] as const) {
      expect(taxOf([amount], { rate, rounding, by })).toBe(expected);
      expect(taxOf([-amount], { rate, rounding, by })).toBe(-expected);
    }
  });

  // C3: worked from the rule's words in R.I. Gen. Laws 44-18.1-25; C4: 0.0049 is nothing
  it.each([
    [199, '0.0625', 12],
    [1000, '0.0725', 73],
    [1450, '0.07', 102],
    [3550, '0.07', 249],
    [7, '0.07', 0],
    [100, '0.005', 1],
    [12995, '0.0825', 1072],
  ])('C3 C4: %i at %s is taxed %i', (amount, rate, expected) => {
    expect(taxOf([amount], { rate, by: 'line' })).toBe(expected);
    expect(taxOf([amount], { rate, by: 'statement' })).toBe(expected);
  });

  // C12: gov.uk VATREC12010; 704.88 x 20% is 140.976
  it('C12: 704.88 at 20% is taxed 140.97 down and 140.98 to the nearest', () => {
    expect(taxOf([70488], { rate: '0.2', by: 'statement', rounding: 'down' })).toBe(14097);
    expect(taxOf([70488], { rate: '0.2', by: 'statement', rounding: 'half-up' })).toBe(14098);
  });

  // C13: no method is given for the whole of the EU (CJEU C-484/06, C-302/07); 0.48 x 20% is 0.096
  it('C13: each method can be had by the rule’s words alone', () => {
    const three = (by: TaxRule['by'], rounding: Rounding) =>
      taxOf([48, 48, 48], { rate: '0.2', by, rounding });
    expect([three('line', 'down'), three('line', 'half-up')]).toEqual([27, 30]);
    expect([three('statement', 'down'), three('statement', 'half-up')]).toEqual([28, 29]);
  });

  // C11: gross / 6; 1.665 and 8.325 are ties
  it.each([
    [10000, 1667, 1667],
    [999, 167, 166],
    [4995, 833, 832],
  ])('C11: %i holds %i at 20%%, half up, and %i half even', (gross, up, even) => {
    const held = (by: TaxRule['by'], rounding: Rounding) => {
      const vat = rule({ rate: '0.2', included: true, by, rounding });
      return statementSums(0, goods([vat], [[from, gross]])).taxes[0]?.amount;
    };
    for (const by of ['line', 'statement'] as const) {
      expect([held(by, 'half-up'), held(by, 'half-even')]).toEqual([up, even]);
    }
  });
});

const amount = fc.integer({ min: -20_000, max: 100_000 });
const bought = fc.array(fc.tuple(fc.nat(364), amount), { maxLength: 40 });
const rounding = fc.constantFrom<Rounding>('half-up', 'half-even', 'down');
const rate = fc.constantFrom('0.07', '0.0725', '0.0025', '0.2');
/** Days of the year after which a statement ends; the last ends with the year. */
const ends = fc
  .uniqueArray(fc.nat(363), { maxLength: 24 })
  .map((days) => [...days.sort((a, b) => a - b), 364]);

function periodsOf(days: readonly number[]) {
  return days.map((last, i) => ({
    from: addDays(from, (days[i - 1] ?? -1) + 1),
    to: addDays(from, last),
  }));
}
const onDays = (days: readonly (readonly [number, number])[]) =>
  days.map(([day, sum]) => [addDays(from, day), sum] as const);
const RUNS = { numRuns: 300, seed: 1934 };

describe('for any split of the year into touching periods', () => {
  it('each balance is the next one’s brought forward', () => {
    fc.assert(
      fc.property(bought, ends, rate, (days, split, share) => {
        const lines = goods([rule({ rate: share, by: 'statement' })], onDays(days));
        const statements = chained(lines, periodsOf(split), 1234);
        expect(statements[0]?.broughtForward).toBe(1234);
        for (const [i, { broughtForward }] of statements.entries()) {
          if (i > 0) expect(broughtForward).toBe(statements[i - 1]?.balance);
        }
      }),
      RUNS,
    );
  });

  it('the last balance is the same where tax is by line', () => {
    fc.assert(
      fc.property(bought, ends, rate, rounding, (days, split, share, way) => {
        const rules = [
          rule({ rate: share, rounding: way }),
          rule({ name: 'Levy', rate: '0.0025', rounding: way }),
        ];
        const lines = goods(rules, onDays(days));
        const last = (of: readonly number[]) => chained(lines, periodsOf(of)).at(-1)?.balance;
        expect(last(split)).toBe(last([364]));
      }),
      RUNS,
    );
  });

  // The bound: a statement's tax is within half a minor unit of the exact one, half up and half to even, and within
  // one, downward. So a chain is within half a unit for each statement and tax, and two chains within the sum of both.
  it('the last balance is within half a minor unit for each statement and tax where tax is by statement', () => {
    fc.assert(
      fc.property(bought, ends, rate, rounding, (days, split, share, way) => {
        const rules = [
          rule({ rate: share, by: 'statement', rounding: way }),
          rule({ name: 'Levy', rate: '0.0035', by: 'statement', rounding: way }),
        ];
        const lines = goods(rules, onDays(days));
        const total = days.reduce((sum, [, each]) => sum + each, 0);
        const exact = new Exact(total).times(new Exact(share).plus('0.0035')).plus(total);
        const unit = way === 'down' ? 1 : 0.5;
        const last = (of: readonly number[]) => chained(lines, periodsOf(of)).at(-1)?.balance ?? Number.NaN;
        const bound = unit * rules.length * split.length;
        expect(exact.minus(last(split)).abs().toNumber()).toBeLessThanOrEqual(bound);
        expect(Math.abs(last(split) - last([364]))).toBeLessThanOrEqual(bound + unit * rules.length);
      }),
      RUNS,
    );
  });

  it('the bound is reached: two statements of one cent’s half each', () => {
    const lines = goods(
      [rule({ rate: '0.5', by: 'statement' })],
      [
        [from, 1],
        ['2025-06-01', 1],
      ],
    );
    // 0.5 rounds up to 1 on each of two statements; on one, the tax is 1 exactly
    const last = (of: readonly number[]) => chained(lines, periodsOf(of)).at(-1)?.balance;
    expect([last([100, 364]), last([364])]).toEqual([4, 3]);
  });
});
