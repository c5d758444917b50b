// Expected cost in closed form. A cost is a sum of products, and no product holds two drivers that move together,
// so the mean of the cost is the cost at the means.
import type { Driver, Option, Plan } from './choice.ts';

/** What a driver is taken to be: its mean, its likely value, or one held fixed. */
export type Values = (driver: string) => number;

/** Cost of an option at given values, failure and what follows included: own (1 - p (1 - after)) + p x next's. */
export function costAt(plan: Plan, id: string, values: Values): number {
  return throughFailure(plan, id, values, (option) => ownCost(option, values), true);
}

/** Hours likewise, each hours driver of an option counted once. */
export function hoursAt(plan: Plan, id: string, values: Values): number {
  return throughFailure(plan, id, values, (option) => sumOf(hoursDrivers(plan, option), values), true);
}

/** Days of waiting; an option that fails has been waited for in full. */
export function waitAt(plan: Plan, id: string, values: Values, wait: (option: Option) => number): number {
  return throughFailure(plan, id, values, wait, false);
}

export function hoursDrivers(plan: Plan, option: Option): string[] {
  const amounts = new Set(option.terms.map(({ amount }) => amount));
  return [...amounts].filter((id) => (plan.drivers.get(id) as Driver).kind === 'hours');
}

/** Difference in expected cost, first less second, when one driver is held at a value and the rest as given. */
export function differenceWhen(plan: Plan, pair: readonly [string, string], rest: Values, driver: string) {
  return (value: number): number => {
    const values: Values = (id) => (id === driver ? value : rest(id));
    return costAt(plan, pair[0], values) - costAt(plan, pair[1], values);
  };
}

function throughFailure(plan: Plan, id: string, values: Values, own: (o: Option) => number, cut: boolean) {
  let total = 0;
  let reached = 1;
  let option = plan.options.get(id) as Option;
  for (;;) {
    if (!option.canFail) return total + reached * own(option);
    const chance = values(option.canFail.chance);
    total += reached * own(option) * (cut ? 1 - chance * (1 - option.canFail.after) : 1);
    reached *= chance;
    option = plan.options.get(option.canFail.next) as Option;
  }
}

function ownCost(option: Option, values: Values): number {
  let cost = 0;
  for (const { amount, by = [], times = 1 } of option.terms) {
    let product = times * values(amount);
    for (const driver of by) product *= values(driver);
    cost += product;
  }
  return cost;
}

function sumOf(ids: string[], values: Values): number {
  return ids.reduce((sum, id) => sum + values(id), 0);
}
