import { describe, expect, it } from 'vitest';
import { hourlyRate, inForce, type TaxRule, taxesInForce } from '../../src/estimate/rules.ts';

describe('the rule in force', () => {
  const rules = [
    { from: '2025-01-01', name: 'old' },
    { from: '2025-07-01', name: 'new' },
    { from: '2025-07-01', name: 'new, written after' },
    { from: '2026-01-01', name: 'not yet' },
  ];

  it('is none before the first has begun', () => {
    expect(inForce(rules, '2024-12-31')).toBeUndefined();
  });

  it('begins on its own day', () => {
    expect(inForce(rules, '2025-01-01')?.name).toBe('old');
    expect(inForce(rules, '2025-06-30')?.name).toBe('old');
  });

  it('is the newest, and of the newest the last written', () => {
    expect(inForce(rules, '2025-12-31')?.name).toBe('new, written after');
    expect(inForce(rules.toReversed(), '2025-12-31')?.name).toBe('new');
  });

  it('is the most particular before the newest', () => {
    const particular = (rule: { name: string }) => Number(rule.name === 'old');
    expect(inForce(rules, '2026-06-01', particular)?.name).toBe('old');
  });
});

describe('the rate of an hour', () => {
  const rates = [
    { from: '2025-01-01', rate: 7500 },
    { from: '2025-01-01', rate: 5500, who: 'ines' },
    { from: '2025-01-01', rate: 5000, work: 'research' },
    { from: '2025-01-01', rate: 4000, who: 'ines', work: 'research' },
    { from: '2025-07-01', rate: 7800 },
    { from: '2025-07-01', rate: 5100, work: 'research' },
  ];
  const at = (day: string, who: string | undefined, work: string) => hourlyRate(rates, { day, who, work });

  it.each([
    ['2025-03-01', 'tobias', 'metal', 7500],
    ['2025-08-01', 'tobias', 'metal', 7800],
    ['2025-08-01', 'ines', 'metal', 5500],
    ['2025-03-01', 'tobias', 'research', 5000],
    ['2025-08-01', 'tobias', 'research', 5100],
    ['2025-08-01', 'ines', 'research', 4000],
    ['2025-08-01', undefined, 'metal', 7800],
  ])('on %s of %s at %s is %i', (day, who, work, rate) => {
    expect(at(day, who, work)).toBe(rate);
  });

  it('is none before the first begins', () => {
    expect(at('2024-12-31', 'tobias', 'metal')).toBeUndefined();
  });
});

describe('taxes in force', () => {
  const tax = (name: string, from: string, side: TaxRule['side'] = 'charged'): TaxRule => ({
    name,
    from,
    side,
    rate: '0.07',
    on: ['bought'],
    by: 'line',
  });
  const rules = [
    tax('State', '2025-01-01'),
    tax('County', '2025-07-01'),
    tax('State', '2025-09-01'),
    tax('State', '2025-01-01', 'paid'),
  ];
  const on = (day: string) => taxesInForce(rules, 'charged', day).map(({ name, from }) => `${name} ${from}`);

  it('stand beside one another under different names, and replace one another under the same', () => {
    expect(on('2025-02-01')).toEqual(['State 2025-01-01']);
    expect(on('2025-08-01')).toEqual(['State 2025-01-01', 'County 2025-07-01']);
    expect(on('2025-10-01')).toEqual(['State 2025-09-01', 'County 2025-07-01']);
  });

  it('of the other side are apart', () => {
    expect(taxesInForce(rules, 'paid', '2025-10-01')).toEqual([rules[3]]);
  });
});
