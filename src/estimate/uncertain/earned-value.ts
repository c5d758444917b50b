// Earned value: where the work stands against what was planned by now, and the finishes that follow from it.

/**
 * In one unit of money or hours: worth of the work planned by now, of the work done, what it really cost, and the
 * whole budget. `span` is the planned length, in any unit of time.
 */
export type Standing = { planned: number; earned: number; actual: number; budget: number; span?: number };

/** Figures that would divide by zero are null: show a dash, not a number. */
export type EarnedValue = {
  costVariance: number;
  scheduleVariance: number;
  costIndex: number | null;
  scheduleIndex: number | null;
  /** The whole at the pace so far; with the rest at budget; with the rest at both indices. */
  finish: { atCostIndex: number | null; atBudget: number; atBothIndices: number | null };
  /** Still to spend, and budget less finish, both at the pace so far. */
  toGo: number | null;
  varianceAtFinish: number | null;
  /** Pace that the rest would need to end on budget, or on the finish at the pace so far. */
  neededForBudget: number | null;
  neededForFinish: number | null;
  span: number | null;
};

/** CV, SV, CPI, SPI, three EAC, ETC, VAC and TCPI as earned value management defines them (PMI, GAO). */
export function earnedValue({ planned, earned, actual, budget, span }: Standing): EarnedValue {
  const costIndex = over(earned, actual);
  const scheduleIndex = over(earned, planned);
  const toEarn = budget - earned;
  const atCostIndex = costIndex === null ? null : over(budget, costIndex);
  const both = costIndex === null || scheduleIndex === null ? null : over(toEarn, costIndex * scheduleIndex);
  return {
    costVariance: earned - actual,
    scheduleVariance: earned - planned,
    costIndex,
    scheduleIndex,
    finish: {
      atCostIndex,
      atBudget: actual + toEarn,
      atBothIndices: both === null ? null : actual + both,
    },
    toGo: atCostIndex === null ? null : atCostIndex - actual,
    varianceAtFinish: atCostIndex === null ? null : budget - atCostIndex,
    neededForBudget: over(toEarn, budget - actual),
    neededForFinish: atCostIndex === null ? null : over(toEarn, atCostIndex - actual),
    span: span === undefined || scheduleIndex === null ? null : over(span, scheduleIndex),
  };
}

/** Worth of the work done when `spent` is used and `left` remains: budget x spent / (spent + left). */
export function earnedBy(spent: number, left: number, budget: number): number {
  return spent + left > 0 ? (budget * spent) / (spent + left) : 0;
}

function over(part: number, whole: number): number | null {
  return whole === 0 ? null : part / whole;
}
