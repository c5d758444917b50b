// What it could be worth at most to know the outcome before choosing: whether a trial is worth its time.

/**
 * Expected value of perfect information on costs: least expected cost less expected least cost, never negative
 * (Raiffa and Schlaifer 1961). `costs` holds one list for each option, of equally likely draws or, with `weights`, of
 * states with those chances (summing to 1). `error` is one standard error over draws, 0 for states.
 * @throws RangeError without options or when the lists differ in length.
 */
export function valueOfKnowing(
  costs: readonly ArrayLike<number>[],
  weights?: ArrayLike<number>,
): { worth: number; error: number } {
  const first = costs[0];
  if (!first || costs.some(({ length }) => length !== first.length) || first.length === 0) {
    throw new RangeError('options are compared over the same draws, one or more');
  }
  const least = leastOf(costs, first.length);
  // The option of least expected cost is the one least regretted; taken so, the order of options can't matter.
  return costs.map((cost) => regretOf(cost, least, weights)).reduce((a, b) => (lessRegretted(b, a) ? b : a));
}

type Regret = { worth: number; error: number };

/** The least cost of each draw, written out for whole arrays, as are the loops below: a reader waits for them. */
function leastOf(costs: readonly ArrayLike<number>[], draws: number): Float64Array {
  const least = new Float64Array(draws).fill(Infinity);
  for (const cost of costs) {
    for (let d = 0; d < draws; d++) least[d] = Math.min(least[d] as number, cost[d] as number);
  }
  return least;
}

function regretOf(cost: ArrayLike<number>, least: Float64Array, weights?: ArrayLike<number>): Regret {
  const regrets = new Float64Array(least.length);
  for (let d = 0; d < least.length; d++) regrets[d] = (cost[d] as number) - (least[d] as number);
  const worth = expectedOf(regrets, weights);
  if (weights) return { worth, error: 0 };
  let squares = 0;
  for (let d = 0; d < regrets.length; d++) squares += ((regrets[d] as number) - worth) ** 2;
  return { worth, error: Math.sqrt(squares) / regrets.length };
}

const lessRegretted = (a: Regret, b: Regret) =>
  a.worth < b.worth || (a.worth === b.worth && a.error < b.error);

/** Mean of equally likely draws, or of states weighted by their chances. */
export function expectedOf(values: ArrayLike<number>, weights?: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++)
    sum += (values[i] as number) * (weights ? (weights[i] as number) : 1);
  return weights ? sum : sum / values.length;
}

/** Share of the draws in which each option costs least; options that tie share the draw. */
export function chancesOfCheapest(costs: readonly ArrayLike<number>[]): number[] {
  const wins = costs.map(() => 0);
  const draws = costs[0]?.length ?? 0;
  for (let d = 0; d < draws; d++) {
    let least = Infinity;
    let ties = 0;
    for (let i = 0; i < costs.length; i++) {
      const here = costs[i]?.[d] as number;
      if (here === least) ties++;
      if (here < least) [least, ties] = [here, 1];
    }
    for (let i = 0; i < costs.length; i++) {
      if (costs[i]?.[d] === least) wins[i] = (wins[i] as number) + 1 / ties;
    }
  }
  return wins.map((won) => won / draws);
}
