// Where the answer turns: the value of one driver at which two options are expected to cost the same.

/**
 * `at`: the value, and whether the first option is the cheaper one below it. `none`: the difference does not depend on
 * the driver. `never`: it does, but they meet at no value it can take; `beyond` is where they would, if at
 * zero or more.
 */
export type Turning =
  | { kind: 'at'; value: number; firstCheaperBelow: boolean }
  | { kind: 'none' }
  | { kind: 'never'; beyond: number | null };

/**
 * @param difference expected cost of the first option less the second, with the driver at a value.
 * @param domain values the driver can take; `high` may be Infinity when the difference is a straight line.
 * @param size scale of the costs themselves, against which rounding is judged.
 * A straight line is solved in closed form (cost-volume indifference); a bent one is searched in 64 steps and halved,
 * and the turning nearest to `from` is given.
 */
export function turningOf(
  difference: (value: number) => number,
  domain: { low: number; high: number },
  size: number,
  from: number,
): Turning {
  const far = domain.high < Infinity && domain.high > 0 ? domain.high : Math.max(1, 2 * domain.low);
  const [atZero, half, whole] = [difference(0), difference(far / 2), difference(far)];
  const scale = Math.max(size, Math.abs(atZero), Math.abs(whole));
  const bend = whole - 2 * half + atZero;
  const rise = whole - atZero;
  if (Math.abs(bend) > 1e-9 * scale) return searched(difference, domain, from);
  if (Math.abs(rise) <= 1e-12 * scale) return { kind: 'none' };
  const value = 0 - (atZero * far) / rise;
  if (value >= domain.low && value <= domain.high) return { kind: 'at', value, firstCheaperBelow: rise > 0 };
  return { kind: 'never', beyond: value >= 0 ? value : null };
}

const STEPS = 64;

function searched(
  difference: (v: number) => number,
  domain: { low: number; high: number },
  from: number,
): Turning {
  const step = (domain.high - domain.low) / STEPS;
  let nearest: Turning = { kind: 'never', beyond: null };
  for (let k = 0; k < STEPS; k++) {
    let low = domain.low + k * step;
    let high = low + step;
    const below = difference(low);
    if (below === 0 ? k > 0 : below * difference(high) > 0) continue;
    for (let halving = 0; halving < 60; halving++) {
      const middle = (low + high) / 2;
      if (below * difference(middle) > 0) low = middle;
      else high = middle;
    }
    const value = (low + high) / 2;
    if (nearest.kind !== 'at' || Math.abs(value - from) < Math.abs(nearest.value - from)) {
      nearest = { kind: 'at', value, firstCheaperBelow: below < 0 };
    }
  }
  return nearest;
}
