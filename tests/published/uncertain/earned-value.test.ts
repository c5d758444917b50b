// Earned value against worked answers.
import { describe, expect, it } from 'vitest';
import { earnedBy, earnedValue } from '../../../src/estimate/uncertain/earned-value.ts';

// studylib.net/doc/9750501: exercise of a textbook's chapter 7 (from memory Schwalbe, IT Project Management).
const found = earnedValue({ planned: 23_000, earned: 20_000, actual: 25_000, budget: 120_000, span: 12 });

describe('earned value', () => {
  it('B1: PV 23,000, EV 20,000, AC 25,000, BAC 120,000 over 12 months', () => {
    expect([found.costVariance, found.scheduleVariance, found.costIndex]).toEqual([-5_000, -3_000, 0.8]);
    expect(found.scheduleIndex).toBeCloseTo(0.869565, 6);
    expect(found.finish.atCostIndex).toBeCloseTo(150_000, 6);
    expect(found.span).toBeCloseTo(13.8, 6);
  });

  // Formulas: freezingblue.com set 92907; a range of finishes: GAO, gaoinnovations.gov/cost-guide/analyze-performance.html.
  it('B2: the other finishes', () => {
    // AC + (BAC - EV) / CPI is the same as BAC / CPI.
    expect(found.finish.atCostIndex).toBeCloseTo(25_000 + (120_000 - 20_000) / 0.8, 6);
    expect(found.finish.atBudget).toBe(125_000);
    expect(found.finish.atBothIndices).toBeCloseTo(168_750, 6);
    expect(found.toGo).toBeCloseTo(125_000, 6);
    expect(found.varianceAtFinish).toBeCloseTo(-30_000, 6);
    expect(found.neededForBudget).toBeCloseTo(1.052632, 6);
    expect(found.neededForFinish).toBeCloseTo(0.8, 6);
  });

  // A worked example in an article on earned value management, part IV.
  it('B3: 100 h at 100 budgeted and due, 110 h spent, 10 h to go', () => {
    const earned = earnedBy(110, 10, 10_000);
    expect(earned).toBeCloseTo(9_166.67, 2);
    const { finish, varianceAtFinish } = earnedValue({
      planned: 10_000,
      earned,
      actual: 11_000,
      budget: 10_000,
    });
    expect(finish.atCostIndex).toBeCloseTo(12_000, 2);
    expect(varianceAtFinish).toBeCloseTo(-2_000, 2);
  });
});
