import { describe, expect, it } from 'vitest';
import { earnedBy, earnedValue } from '../../../src/estimate/uncertain/earned-value.ts';

describe('earned value', () => {
  it('has no cost index before anything is spent, and no schedule index before anything was due', () => {
    const { costIndex, scheduleIndex, finish, toGo, varianceAtFinish, span } = earnedValue({
      planned: 0,
      earned: 0,
      actual: 0,
      budget: 500,
      span: 3,
    });
    expect([costIndex, scheduleIndex, toGo, varianceAtFinish, span]).toEqual([null, null, null, null, null]);
    expect(finish).toEqual({ atCostIndex: null, atBudget: 500, atBothIndices: null });
  });

  it('with money spent and nothing done foretells no finish', () => {
    const { costIndex, finish } = earnedValue({ planned: 100, earned: 0, actual: 80, budget: 500 });
    expect(costIndex).toBe(0);
    expect(finish).toEqual({ atCostIndex: null, atBudget: 580, atBothIndices: null });
  });

  it('can’t reach the budget that is spent', () => {
    const { neededForBudget } = earnedValue({ planned: 500, earned: 400, actual: 500, budget: 500 });
    expect(neededForBudget).toBeNull();
  });

  it('earns by the share of the hours that is done', () => {
    expect(earnedBy(30, 10, 2_000)).toBe(1_500);
    expect(earnedBy(0, 0, 2_000)).toBe(0);
  });
});
