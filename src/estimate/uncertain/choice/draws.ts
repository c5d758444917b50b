// The options of a choice drawn together: what they share is drawn once, so that their difference is no noise.
import type { Range } from '../../../figures/ranges.ts';
import { type Curve, constantCurve } from '../curve.ts';
import { pertMean } from '../pert.ts';
import { pertCurve } from '../pert-curve.ts';
import { type Drawer, drawerFor, type Sampling } from '../sample.ts';
import { triangularCurve, triangularMean } from '../triangular.ts';
import type { Driver, Option, Plan } from './choice.ts';
import { hoursDrivers } from './expected.ts';

/** How ranges are read: PERT unless told otherwise. */
export type Shape = 'pert' | 'triangular';

export type OptionDraws = { cost: Float64Array; hours: Float64Array; wait: Float64Array };

export const meanOf = (range: Range, shape: Shape): number =>
  shape === 'pert' ? pertMean(range) : triangularMean(range);

/** Draws of every option, failure and what follows included, by name. */
export function drawOptions(plan: Plan, sampling: Sampling, shape: Shape): Map<string, OptionDraws> {
  const drawer = drawerFor(sampling);
  const curveOf = (range: Range): Curve => (shape === 'pert' ? pertCurve(range) : triangularCurve(range));
  const drivers = new Map<string, Float64Array>();
  for (const { id, kind, range } of plan.drivers.values()) {
    const shares = kind === 'hours' || kind === 'price';
    drivers.set(id, (shares ? drawer.draw : drawer.drawAlone)(`driver ${id}`, curveOf(range)));
  }
  const done = new Map<string, OptionDraws>();
  const drawn = (id: string): OptionDraws => {
    const known = done.get(id);
    if (known) return known;
    const option = plan.options.get(id) as Option;
    const wait = drawer.draw(`wait ${id}`, option.wait ? curveOf(option.wait) : constantCurve(0));
    const draws = { ...ownDraws(plan, option, drivers, drawer.draws), wait };
    if (option.canFail) {
      fail(
        option,
        draws,
        drivers.get(option.canFail.chance) as Float64Array,
        drawn(option.canFail.next),
        drawer,
      );
    }
    done.set(id, draws);
    return draws;
  };
  for (const id of plan.options.keys()) drawn(id);
  return done;
}

function ownDraws(plan: Plan, option: Option, drivers: Map<string, Float64Array>, draws: number) {
  const cost = new Float64Array(draws);
  for (const { amount, by = [], times = 1 } of option.terms) {
    const factors = by.map((id) => drivers.get(id) as Float64Array);
    addProducts(cost, drivers.get(amount) as Float64Array, factors, times);
  }
  const hours = new Float64Array(draws);
  for (const id of hoursDrivers(plan, option)) addProducts(hours, drivers.get(id) as Float64Array, [], 1);
  return { cost, hours };
}

/** Adds times x amount x every factor, draw by draw. */
function addProducts(sum: Float64Array, amount: Float64Array, factors: Float64Array[], times: number): void {
  for (let d = 0; d < sum.length; d++) {
    let product = times * (amount[d] as number);
    for (let f = 0; f < factors.length; f++) product *= (factors[f] as Float64Array)[d] as number;
    sum[d] = (sum[d] as number) + product;
  }
}

/** Where an option fails, the share spent by then stays, and the next option's draw is added. */
function fail(
  option: Option,
  own: OptionDraws,
  chance: Float64Array,
  next: OptionDraws,
  drawer: Drawer,
): void {
  const fate = drawer.drawChances(`fails ${option.id}`);
  const after = option.canFail?.after ?? 0;
  for (let d = 0; d < fate.length; d++) {
    if ((fate[d] as number) >= (chance[d] as number)) continue;
    own.cost[d] = after * (own.cost[d] as number) + (next.cost[d] as number);
    own.hours[d] = after * (own.hours[d] as number) + (next.hours[d] as number);
    own.wait[d] = (own.wait[d] as number) + (next.wait[d] as number);
  }
}

/** Means of all drivers, as values. */
export const meansOf = (plan: Plan, shape: Shape) => (id: string) =>
  meanOf((plan.drivers.get(id) as Driver).range, shape);
