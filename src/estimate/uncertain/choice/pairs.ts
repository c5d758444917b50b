// Two options side by side: where the answer turns, and which driver swings their difference most.
import { chainOf, type Driver, driversOf, type Group, type Plan } from './choice.ts';
import { costAt, differenceWhen, type Values } from './expected.ts';
import { type Turning, turningOf } from './turning.ts';

/**
 * First less second in expected cost with the driver at its low and its high end, the rest at likely; certain
 * drivers have none.
 */
export type Swing = { driver: string; atLow: number; atHigh: number };

/**
 * `first` comes before `second` by name, however the options were given. Swings: the widest first. `together` turns on
 * the sum of a group's drivers, moved in proportion.
 */
export type Pair = {
  first: string;
  second: string;
  turns: { driver: string; turning: Turning }[];
  together: { group: string; turning: Turning }[];
  swings: Swing[];
};

/** Every two options of a plan, with all the rest of the drivers at `means` for the turning points. */
export function pairsOf(plan: Plan, means: Values): Pair[] {
  const names = [...plan.options.keys()].sort();
  return names.flatMap((first, i) =>
    names.slice(i + 1).map((second) => {
      const drivers = driversBetween(plan, first, second);
      return {
        first,
        second,
        turns: drivers.map((driver) => ({
          driver: driver.id,
          turning: turningBetween(plan, [first, second], means, driver),
        })),
        together: plan.groups.map((group) => ({
          group: group.id,
          turning: turningTogether(plan, [first, second], means, group),
        })),
        swings: swingsBetween(plan, [first, second], drivers),
      };
    }),
  );
}

function turningBetween(plan: Plan, pair: readonly [string, string], means: Values, driver: Driver): Turning {
  const size = Math.abs(costAt(plan, pair[0], means)) + Math.abs(costAt(plan, pair[1], means));
  return turningOf(differenceWhen(plan, pair, means, driver.id), domainOf(driver), size, means(driver.id));
}

/** Turns on the sum of the group, every driver of it keeping its share of the sum. */
function turningTogether(
  plan: Plan,
  pair: readonly [string, string],
  means: Values,
  { drivers }: Group,
): Turning {
  const members = drivers.map((id) => plan.drivers.get(id) as Driver);
  const now = members.reduce((sum, { id }) => sum + means(id), 0);
  if (now === 0) return { kind: 'none' };
  const inGroup = new Set(drivers);
  const difference = (sum: number) => {
    const values: Values = (id) => (inGroup.has(id) ? (means(id) * sum) / now : means(id));
    return costAt(plan, pair[0], values) - costAt(plan, pair[1], values);
  };
  const ends = members.map(domainOf);
  const domain = {
    low: ends.reduce((sum, { low }) => sum + low, 0),
    high: ends.reduce((sum, { high }) => sum + high, 0),
  };
  const size = Math.abs(costAt(plan, pair[0], means)) + Math.abs(costAt(plan, pair[1], means));
  return turningOf(difference, domain, size, now);
}

function swingsBetween(plan: Plan, pair: readonly [string, string], drivers: Driver[]): Swing[] {
  const likely: Values = (id) => (plan.drivers.get(id) as Driver).range.likely;
  const width = ({ atLow, atHigh }: Swing) => Math.abs(atHigh - atLow);
  return drivers
    .filter(({ range }) => range.low < range.high)
    .map(({ id, range }) => {
      const difference = differenceWhen(plan, pair, likely, id);
      return { driver: id, atLow: difference(range.low), atHigh: difference(range.high) };
    })
    .sort((a, b) => width(b) - width(a) || (a.driver < b.driver ? -1 : 1));
}

/** A range bounds its driver; a certain value may be anything of its kind, since the question is 'what if'. */
function domainOf({ kind, range }: Driver): { low: number; high: number } {
  if (range.low < range.high) return range;
  return { low: 0, high: kind === 'share' || kind === 'chance' ? 1 : Infinity };
}

/** Drivers of both options and of what may follow them, in the order of the plan. */
function driversBetween(plan: Plan, first: string, second: string): Driver[] {
  const used = new Set<string>();
  for (const option of [...chainOf(plan, first), ...chainOf(plan, second)]) {
    for (const id of driversOf(option)) used.add(id);
    if (option.canFail) used.add(option.canFail.chance);
  }
  return [...plan.drivers.values()].filter(({ id }) => used.has(id));
}
