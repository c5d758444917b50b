// Paint coverage against the trade's published rules.
import { expect, it } from 'vitest';
import { squareFeetFromGallon, squareMetersFromLiter } from '../../../src/measure/paint.ts';

// paintcenter.org/rj/dec09a.cfm prints 1604.
it('E12: a gallon covers 1604 square feet a mil thick', () => {
  expect(squareFeetFromGallon({ solids: 1 }, 1)).toBeCloseTo((231 * 1000) / 144, 9);
  expect(squareFeetFromGallon({ solids: 1 }, 1)).toBeCloseTo(1604.1667, 4);
});

// paintcenter.org/rj/oct03e.cfm prints 167, from 1604.
it('E13: 52% solids, 30% on the metal, a mil and a half', () => {
  expect(Math.abs(squareFeetFromGallon({ solids: 0.52, lost: 0.7 }, 1.5) - 166.816)).toBeLessThan(0.5);
});

// scribd 343849341 prints 5.2; its 208.52 takes 1604.
it('E14: 65% solids at 125 micrometers, and at 5 mils', () => {
  expect(squareMetersFromLiter({ solids: 0.65 }, 125)).toBeCloseTo(5.2, 9);
  expect(Math.abs(squareFeetFromGallon({ solids: 0.65 }, 5) - 208.52)).toBeLessThan(0.03);
});

// corrosionpedia.com/definition/2294.
it('E15: 100 square feet with a loss of 30% are 70', () => {
  const whole = squareFeetFromGallon({ solids: 0.6 }, 2);
  expect((squareFeetFromGallon({ solids: 0.6, lost: 0.3 }, 2) / whole) * 100).toBeCloseTo(70, 9);
});
