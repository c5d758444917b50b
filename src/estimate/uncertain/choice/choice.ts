// A choice between ways to go about a part, as the sums see it: what drives the cost, and what may go wrong.
import type { Range } from '../../../figures/ranges.ts';

/**
 * `hours` and `price` are amounts and share the common cause; a `rate` (money for each of the hours), a `share` (tax,
 * handling) and a `chance` are drawn on their own. One id is one thing: options that name it see the same draws.
 */
export type Driver = { id: string; kind: 'hours' | 'price' | 'rate' | 'share' | 'chance'; range: Range };

/** amount x every driver in `by` x `times` (1 unless given): hours by rate, price by 1, price by tax. */
export type Term = { amount: string; by?: readonly string[]; times?: number };

/** With this chance the option fails after `after` (0…1) of its own cost is spent; then `next` is done and paid. */
export type Failure = { chance: string; after: number; next: string };

/** `wait` in days; it is waited out in full before an option can fail. */
export type Option = { id: string; terms: readonly Term[]; canFail?: Failure; wait?: Range };

/** Drivers of one kind that are asked about as one, such as all hours of an option: they move in proportion. */
export type Group = { id: string; drivers: readonly string[] };

/** `hourly`: money for an hour, to say what knowing is worth in hours. */
export type Choice = {
  drivers: readonly Driver[];
  options: readonly Option[];
  groups?: readonly Group[];
  hourly?: number;
};

/** A choice found sound, its parts by name. */
export type Plan = {
  drivers: ReadonlyMap<string, Driver>;
  options: ReadonlyMap<string, Option>;
  groups: readonly Group[];
};

export function planOf(choice: Choice): Plan {
  return {
    drivers: new Map(choice.drivers.map((driver) => [driver.id, driver])),
    options: new Map(choice.options.map((option) => [option.id, option])),
    groups: choice.groups ?? [],
  };
}

/** The option and those that may follow it. */
export function chainOf(plan: Plan, id: string): Option[] {
  const option = plan.options.get(id) as Option;
  return option.canFail ? [option, ...chainOf(plan, option.canFail.next)] : [option];
}

/** Ids of the drivers of one option: amounts and what multiplies them. */
export function driversOf(option: Option): string[] {
  return [...new Set(option.terms.flatMap(({ amount, by }) => [amount, ...(by ?? [])]))];
}
