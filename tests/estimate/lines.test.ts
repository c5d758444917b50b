// Expected amounts are worked by hand beside each check.
import { describe, expect, it } from 'vitest';
import { billSums } from '../../src/estimate/bill.ts';
import { chargedTaxes } from '../../src/estimate/charged-tax.ts';
import { labourSums, steppedUp } from '../../src/estimate/labour.ts';
import { materialsOf } from '../../src/estimate/materials.ts';
import { paidTaxes } from '../../src/estimate/paid-tax.ts';
import type { TaxRule } from '../../src/estimate/rules.ts';

const day = '2025-03-03';
const from = '2025-01-01';

describe('labor', () => {
  const rules = { rates: [{ from, rate: 7500 }], pay: [{ from, rate: 3501 }], step: 15 };
  const worked = { day, who: 'tobias', work: 'metal', minutes: 61, free: false };

  it('is charged by the step begun, and paid by the minute', () => {
    // 61 min become 75: 75 / 60 x 75.00 = 93.75; pay 61 / 60 x 35.01 = 35.5935
    expect(labourSums(worked, rules)).toEqual({
      cost: 3559,
      charged: 9375,
      chargedMinutes: 75,
      rate: 7500,
    });
  });

  it('free of charge still costs its pay', () => {
    expect(labourSums({ ...worked, free: true }, rules)).toEqual({
      cost: 3559,
      charged: 0,
      chargedMinutes: 0,
      rate: 7500,
    });
  });

  it('without a rate in force is 0', () => {
    expect(labourSums(worked, { rates: [], pay: [], step: undefined })).toEqual({
      cost: 0,
      charged: 0,
      chargedMinutes: 61,
      rate: 0,
    });
  });

  it.each([
    [0, 15, 0],
    [1, 15, 15],
    [15, 15, 15],
    [16, 15, 30],
    [16, undefined, 16],
    [16, 0, 16],
  ])('%i minutes at a step of %s are %i', (minutes, step, expected) => {
    expect(steppedUp(minutes, step)).toBe(expected);
  });
});

describe('materials', () => {
  const hour = { day, charged: 7500, chargedMinutes: 60 };
  const half = { day, charged: 3750, chargedMinutes: 30 };

  it('go by the charged hour', () => {
    // 30 / 60 x 3.55 = 1.775
    expect(materialsOf([hour, half], [{ from, 'per-hour': 355 }])).toEqual([355, 178]);
  });

  it('or are a share of the labor', () => {
    expect(materialsOf([hour, half], [{ from, 'of-labour': '0.04' }])).toEqual([300, 150]);
  });

  it('stop at the cap, which is used up in order of day, and begin again under a newer rule', () => {
    const rules = [
      { from, 'per-hour': 350, cap: 800 },
      { from: '2025-07-01', 'per-hour': 350, cap: 100 },
    ];
    const later = { ...hour, day: '2025-07-01' };
    expect(materialsOf([hour, hour, hour, hour, later], rules)).toEqual([350, 350, 100, 0, 100]);
  });

  it('are none without a rule', () => {
    expect(materialsOf([hour], [{ from: '2026-01-01', 'per-hour': 350 }])).toEqual([0]);
  });
});

const paid = (more: Partial<TaxRule> = {}): TaxRule => ({
  name: 'Use tax',
  rate: '0.07',
  side: 'paid',
  on: ['bought'],
  from,
  by: 'line',
  ...more,
});
const bought = (amount: number, more: { tax?: number; bill?: string } = {}) => ({
  rulesOf: day,
  amounts: { bought: amount, freight: 100 },
  ...more,
});
const amounts = (taxes: ReturnType<typeof paidTaxes>) => taxes.map((of) => of.map(({ amount }) => amount));

describe('tax paid', () => {
  it('is what the bill says, also when it says nothing was due', () => {
    const taxes = paidTaxes([bought(1000, { tax: 65 }), bought(1000, { tax: 0 })], [paid()]);
    expect(taxes).toEqual([[{ amount: 65, workedOut: false }], []]);
  });

  it('is worked out where the bill is silent, on the kinds that the rule names, and marked so', () => {
    // 7% of 10.00; with freight 7% of 11.00
    expect(paidTaxes([bought(1000)], [paid()])).toEqual([[{ name: 'Use tax', amount: 70, workedOut: true }]]);
    expect(amounts(paidTaxes([bought(1000)], [paid({ on: ['bought', 'freight'] })]))).toEqual([[77]]);
    expect(amounts(paidTaxes([bought(1000)], [paid({ on: ['outside'] })]))).toEqual([[]]);
  });

  it('names a kind once even where the rule names it twice', () => {
    expect(amounts(paidTaxes([bought(1000)], [paid({ on: ['bought', 'bought'] })]))).toEqual([[70]]);
  });

  it('on a whole bill is rounded once; lines without a number are each a bill', () => {
    const rule = paid({ by: 'statement' });
    const lines = [
      bought(47, { bill: 'a' }),
      bought(47, { bill: 'a' }),
      bought(47, { bill: 'b' }),
      bought(47),
    ];
    // 0.94 x 7% = 0.0658, 0.47 x 7% = 0.0329
    expect(amounts(paidTaxes(lines, [rule]))).toEqual([[4], [3], [3], [3]]);
  });

  it('that comes back on a bill splits as it was split when it was paid', () => {
    const rule = paid({ by: 'statement' });
    const lines = [bought(47, { bill: 'a' }), bought(47, { bill: 'a' })];
    const back = lines.map((line) => ({ ...line, amounts: { bought: -47 } }));
    expect(amounts(paidTaxes([...lines, ...back], [rule]))).toEqual([[4], [3], [-4], [-3]]);
  });

  it('of two names is two taxes', () => {
    const rules = [paid(), paid({ name: 'County', rate: '0.01' })];
    expect(amounts(paidTaxes([bought(1000)], rules))).toEqual([[70, 10]]);
  });
});

describe('a line of a bill', () => {
  const rules = { handling: [{ from, kind: 'bought' as const, share: '0.1' }], tax: [] };
  const line = {
    kind: 'bought' as const,
    rulesOf: day,
    price: 490,
    count: '12.5',
    discount: 25,
    freight: 185,
  };

  it('rounds price by count once, takes off the discount, and adds handling to all that it cost', () => {
    // 12.5 x 4.90 = 61.25, less 0.25 = 61.00; with freight 1.85 and tax 4.26: 67.11; x 1.1 = 73.821
    const [sums] = billSums([{ ...line, tax: 426, deposit: 6000 }], rules);
    expect(sums).toEqual({
      net: 6100,
      freight: 185,
      paid: [{ amount: 426, workedOut: false }],
      handling: 671,
      deposit: 6000,
      // freight 1.85 x 1.1 = 2.035; the goods have the rest
      charged: { goods: 7382 - 204, freight: 204 },
    });
  });

  it('of the other kind has its own handling', () => {
    const [sums] = billSums([{ ...line, kind: 'outside' }], rules);
    expect(sums?.handling).toBe(0);
  });

  it('that comes back takes its handling back to the cent', () => {
    const [out, back] = billSums(
      [
        { ...line, tax: 426 },
        { ...line, price: -490, discount: -25, freight: -185, tax: -426 },
      ],
      rules,
    );
    expect([back?.net, back?.handling]).toEqual([-(out?.net ?? 0), -(out?.handling ?? 0)]);
  });
});

describe('tax charged', () => {
  const rule = (more: Partial<TaxRule>): TaxRule => paid({ side: 'charged', name: 'Sales tax', ...more });
  const line = (at: string, charged: object) => ({ day: at, charged });

  it('is on the kinds that the rule names', () => {
    const lines = [line(day, { labour: 1000 }), line(day, { bought: 1000, freight: 100 })];
    expect(chargedTaxes(lines, [rule({})]).byLine.map((of) => of.map(({ amount }) => amount))).toEqual([
      [],
      [70],
    ]);
  });

  it('rounded on the statement is one sum for each rule, each with its own rounding', () => {
    const rules = [
      rule({ by: 'statement', rounding: 'half-even', rate: '0.05' }),
      rule({ name: 'County', by: 'statement', rate: '0.05' }),
      rule({ by: 'statement', from: '2025-07-01', rate: '0.06', rounding: 'down' }),
    ];
    const lines = [line(day, { bought: 20 }), line(day, { bought: 30 }), line('2025-08-01', { bought: 65 })];
    // 0.50 x 5% = 0.025, a tie; 1.15 x 5% = 0.0575; 0.65 x 6% = 0.039
    expect(
      chargedTaxes(lines, rules).byStatement.map(({ rule: { name, from }, amount }) => [name, from, amount]),
    ).toEqual([
      ['Sales tax', from, 2],
      ['County', from, 6],
      ['Sales tax', '2025-07-01', 3],
    ]);
  });
});
