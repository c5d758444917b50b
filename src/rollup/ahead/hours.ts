// What an hour that is still to be worked will be charged at: nobody has said yet who will work it.
import { hourlyRate } from '../../estimate/rules.ts';
import type { Day } from '../../figures/days.ts';
import type { Minor } from '../../figures/money.ts';
import type { Range } from '../../figures/ranges.ts';
import type { CarRecord } from '../../record/record.ts';
import type { CostLine } from '../cost-lines.ts';

/**
 * The rate in force for a kind of work whoever does it, in minor units an hour; where only people have rates, the
 * dearest of them. Nothing where no rate holds.
 */
export function rateOf({ shop }: CarRecord, work: string, day: Day): Minor | undefined {
  const of = (who: string | undefined) => hourlyRate(shop.rates ?? [], { day, who, work });
  const people = shop.people.map(({ id }) => of(id)).filter((rate) => rate !== undefined);
  if (shop.people.length === 1 && people[0] !== undefined) return people[0];
  return of(undefined) ?? (people.length > 0 ? Math.max(...people) : undefined);
}

/** Who has worked at a kind of work so far, in minutes. */
export type Worked = Map<string, Map<string, number>>;

export function workedSoFar(lines: readonly CostLine[]): Worked {
  const worked: Worked = new Map();
  for (const { kind, work, person, minutes } of lines) {
    if (kind !== 'labour' || work === undefined || person === undefined) continue;
    const people = worked.get(work) ?? new Map<string, number>();
    worked.set(work, people.set(person, (people.get(person) ?? 0) + (minutes ?? 0)));
  }
  return worked;
}

/**
 * The rates of a day, weighed by who has done this kind of work so far, in minor units an hour; the general rate
 * where nobody has. A shop of two that charges two rates would else be foretold at one of them.
 */
export function usualRate(record: CarRecord, worked: Worked, work: string, day: Day): number | undefined {
  const people = [...(worked.get(work) ?? [])].flatMap(([who, minutes]) => {
    const rate = hourlyRate(record.shop.rates ?? [], { day, who, work });
    return rate === undefined || minutes === 0 ? [] : [{ rate, minutes }];
  });
  const minutes = people.reduce((sum, each) => sum + each.minutes, 0);
  if (minutes === 0) return rateOf(record, work, day);
  return people.reduce((sum, each) => sum + each.rate * each.minutes, 0) / minutes;
}

/** A range of minutes in hours. */
export const inHours = ({ low, likely, high }: Range): Range => ({
  low: low / 60,
  likely: likely / 60,
  high: high / 60,
});
