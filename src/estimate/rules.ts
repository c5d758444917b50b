// Which rule holds on a day. Rates, handling, materials and tax change with time, so every rule has its first day.
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import type { Decimal, Rounding } from '../figures/rounding.ts';

/** A rule that holds from a day on, until a newer one begins. */
export type Dated = { from: Day };

/** Money for one hour, perhaps only for one person or one kind of work. */
export type HourlyRule = Dated & { rate: Minor; who?: string | undefined; work?: string | undefined };

/** A share added to bills of one kind. */
export type HandlingRule = Dated & { kind: 'bought' | 'outside'; share: Decimal };

export type Taxed = 'bought' | 'outside' | 'labour' | 'materials' | 'freight';

/** A tax, paid to vendors or charged to the owner, rounded on each line or once on the statement's sum. */
export type TaxRule = Dated & {
  name: string;
  rate: Decimal;
  side: 'paid' | 'charged';
  on: readonly Taxed[];
  by: 'line' | 'statement';
  rounding?: Rounding | undefined;
  /** The prices hold this tax already: it is shown, and nothing is added. */
  included?: boolean | undefined;
};

/**
 * Of the rules begun by a day: the most particular, then the newest, then the last written. Nothing when none
 * has begun.
 */
export function inForce<R extends Dated>(
  rules: readonly R[],
  day: Day,
  particular: (rule: R) => number = () => 0,
): R | undefined {
  let held: R | undefined;
  for (const rule of rules) {
    if (rule.from > day) continue;
    const closer = held ? particular(rule) - particular(held) : 1;
    if (!held || closer > 0 || (closer === 0 && rule.from >= held.from)) held = rule;
  }
  return held;
}

/** The rate of an hour: one for this person and work before one for either, and that before the general one. */
export function hourlyRate(
  rules: readonly HourlyRule[],
  hour: { day: Day; who: string | undefined; work: string },
): Minor | undefined {
  const fitting = rules.filter(
    ({ who, work }) => (who === undefined || who === hour.who) && (work === undefined || work === hour.work),
  );
  return inForce(fitting, hour.day, ({ who, work }) => (who ? 1 : 0) + (work ? 1 : 0))?.rate;
}

/** The taxes of one side in force on a day: taxes of different names stand together, the newest of each name. */
export function taxesInForce<R extends TaxRule>(rules: readonly R[], side: R['side'], day: Day): R[] {
  const named = Map.groupBy(
    rules.filter((rule) => rule.side === side),
    (rule) => rule.name,
  );
  return [...named.values()].flatMap((same) => inForce(same, day) ?? []);
}
