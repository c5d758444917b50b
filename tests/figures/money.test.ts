import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Currency, currencyOf } from '../../src/figures/currency.ts';
import { contained, overMinutes, readMoney, shareOf, split, times } from '../../src/figures/money.ts';
import { amountText, moneyText, plainAmount } from '../../src/figures/money-text.ts';

const currency = (code: string) => currencyOf(code) as Currency;
const read = (text: string, code = 'USD') => {
  const reading = readMoney(text, currency(code));
  return reading.ok ? reading.value : reading.expected;
};

describe('currencies', () => {
  it('are known by their code in capitals alone', () => {
    expect(currencyOf('USD')).toEqual({ code: 'USD', digits: 2, sign: '$' });
    expect([currencyOf('usd'), currencyOf('$'), currencyOf(''), currencyOf('XYZ')]).toEqual(
      Array.from({ length: 4 }),
    );
  });

  it('without a sign of their own show their code', () => {
    expect(currency('CHF').sign).toBe('CHF ');
  });
});

describe('amounts as written', () => {
  it.each([
    ['84.50', 8450],
    ['$84.50', 8450],
    ['1,084.50', 108450],
    ['USD 1,084.5', 108450],
    ['84.50 USD', 8450],
    [' 7 ', 700],
    ['0', 0],
    ['-4.00', -400],
    ['1,000,000', 100_000_000],
  ])('`%s` is %i', (text, minor) => {
    expect(read(text)).toBe(minor);
  });

  it.each([
    '',
    'abc',
    '84,50',
    '1,08.50',
    '10,0000',
    '.50',
    '84.',
    '1e3',
    '4.5.0',
    '--4',
    '4 50',
    '9999999999999999999',
  ])('`%s` is refused', (text) => {
    expect(read(text)).toContain('an amount of USD such as `1,084.50`');
  });

  it('with more digits than the currency has is refused, not rounded', () => {
    expect(read('4.505')).toContain('USD has 2 digits after the point');
    expect(read('4.5', 'JPY')).toContain('JPY has 0 digits after the point');
    expect(read('4.505', 'KWD')).toBe(4505);
    expect(read('450', 'JPY')).toBe(450);
  });

  it('minus nothing is nothing', () => {
    expect(Object.is(read('-0'), 0)).toBe(true);
  });
});

describe('amounts as shown', () => {
  it.each([
    [120450, 'USD', '$1,204.50', '1,204.50', '1204.50'],
    [-120450, 'USD', '−$1,204.50', '−1,204.50', '-1204.50'],
    [0, 'USD', '$0.00', '0.00', '0.00'],
    [5, 'USD', '$0.05', '0.05', '0.05'],
    [-5, 'USD', '−$0.05', '−0.05', '-0.05'],
    [1204, 'JPY', '¥1,204', '1,204', '1204'],
    [1234567, 'KWD', 'KWD 1,234.567', '1,234.567', '1234.567'],
    [100000000, 'USD', '$1,000,000.00', '1,000,000.00', '1000000.00'],
  ])('%i %s is %s', (minor, code, money, amount, plain) => {
    expect(moneyText(minor, currency(code))).toBe(money);
    expect(amountText(minor, currency(code))).toBe(amount);
    expect(plainAmount(minor, currency(code))).toBe(plain);
  });

  it('are read back as they were', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e11 }),
        fc.constantFrom('USD', 'JPY', 'KWD', 'CLF', 'GBP'),
        (minor, code) => {
          expect(read(moneyText(minor, currency(code)), code)).toBe(minor);
          expect(read(plainAmount(-minor, currency(code)), code)).toBe(-minor + 0);
        },
      ),
    );
  });
});

describe('sums of money', () => {
  it('round once, at the end of the line', () => {
    // 12.5 x 4.90 = 61.25; 0.5 x 0.01 = 0.005, a tie; 7.3333 x 0.03 = 0.219999
    expect([times(490, '12.5'), times(1, '0.5'), times(1, '0.5', 'half-even'), times(3, '7.3333')]).toEqual([
      6125, 1, 0, 22,
    ]);
    // 20 / 60 x 85.00 = 28.33..; 1 / 60 x 0.30 = 0.005, a tie
    expect([overMinutes(8500, 20), overMinutes(30, 1), overMinutes(30, 1, 'down')]).toEqual([2833, 1, 0]);
    expect([shareOf(-250, '0.1'), shareOf(-5, '0.1'), shareOf(-5, '0.1', 'half-even')]).toEqual([-25, -1, 0]);
    expect(contained(0, '0.2')).toBe(0);
  });

  it('a split loses nothing, and no part is a minor unit from its share', () => {
    const weights = fc
      .array(fc.nat(10_000), { minLength: 1, maxLength: 12 })
      .filter((all) => all.some(Boolean));
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), weights, (amount, by) => {
        const parts = split(amount, by);
        const whole = by.reduce((sum, weight) => sum + weight, 0);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(amount);
        for (const [i, part] of parts.entries()) {
          const weight = by[i] ?? 0;
          expect(Math.abs(part - (amount * weight) / whole)).toBeLessThanOrEqual(1);
          if (weight === 0) expect(part).toBe(0);
        }
      }),
    );
  });

  it.each([[[]], [[0, 0]], [[1, -1]], [[2, -1]]])('a split by %j has no answer', (weights) => {
    expect(() => split(100, weights)).toThrow(RangeError);
  });
});
