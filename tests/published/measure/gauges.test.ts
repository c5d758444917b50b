// Sheet gauges against their definitions. The same number means three different sheets.
import { describe, expect, it } from 'vitest';
import gauges from '../../../shared/gauges.json' with { type: 'json' };
import { millimetres } from '../../../src/figures/lengths.ts';
import { readThickness } from '../../../src/figures/thickness.ts';
import { gaugesNear } from '../../../src/measure/gauges.ts';

const inches = (text: string): { inches: number; system?: string } => {
  const read = readThickness(text);
  if (!read.ok) throw new Error(read.expected);
  return { inches: millimetres(read.value.length) / 25.4, system: read.value.gauge?.system };
};

describe('gauges', () => {
  // 41.82 lb per square foot and inch; ounces per square foot of each number from the table of 1893.
  it.each([
    [16, 40, 0.0598],
    [18, 32, 0.0478],
    [19, 28, 0.0418],
    [20, 24, 0.0359],
    [22, 20, 0.0299],
  ])('E8: %i gauge steel is %i oz to the square foot: %f in', (number, ounces, expected) => {
    const sheet = inches(`${number} ga steel`);
    expect(sheet.system).toBe('manufacturers’ standard');
    expect(sheet.inches).toBeCloseTo(expected, 9);
    expect(Math.abs(ounces / 16 / 41.82 - sheet.inches)).toBeLessThan(1e-4);
  });

  // 15 U.S.C. §206.
  it.each([
    [16, 1 / 16],
    [18, 1 / 20],
    [19, 7 / 160],
    [20, 3 / 80],
    [22, 1 / 32],
  ])('E9: %i gauge by the law of 1893 is %f in', (number, expected) => {
    const sheet = inches(`${number} ga statutory`);
    expect(sheet.system).toBe('US statutory gauge of 1893');
    expect(sheet.inches).toBeCloseTo(expected, 12);
  });

  it('E10: 10 gauge weighs 5.625 lb to the square foot', () => {
    expect(Math.abs(41.82 * inches('10 ga steel').inches - 5.625)).toBeLessThan(5e-4);
  });

  // t = 0.005 x 92^((36 - n)/39), from memory; 16, 18, 20 and 22 seen in a table.
  it('E11: every aluminum gauge follows Brown & Sharpe’s rule', () => {
    const sheets = gauges.systems.find(({ metals }) => metals.includes('aluminum'))?.inches ?? {};
    for (const [number, sheet] of Object.entries(sheets)) {
      expect(Math.abs(0.005 * 92 ** ((36 - Number(number)) / 39) - Number(sheet)), number).toBeLessThan(6e-5);
    }
    expect(Object.keys(sheets)).toEqual(expect.arrayContaining(['14', '16', '18', '20', '22']));
  });

  it('one thickness is read back in every system, the nearest first', () => {
    const found = gaugesNear(0.0478 * 25.4).map(({ system, number }) => `${number} ${system}`);
    expect(found).toEqual([
      '18 manufacturers’ standard',
      '18 US statutory gauge of 1893',
      '16 Brown & Sharpe',
    ]);
    expect(gaugesNear(0.0478 * 25.4)[0]?.off).toBeCloseTo(0, 9);
  });
});
