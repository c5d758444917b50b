// The hours that a person has on a day, over all that day's entries.
import type { Day } from '../../figures/days.ts';
import { type CarRecord, type HoursLine, personOf } from '../record.ts';

/** One person's day: its lines and their sum in minutes. */
export type PersonsDay = { person: string; day: Day; minutes: number; lines: HoursLine[] };

/** Every person's every day. Lines that don't say who worked are left out; another check tells them. */
export function personsDays(record: CarRecord): PersonsDay[] {
  const days = new Map<string, PersonsDay>();
  for (const entry of record.entries) {
    for (const line of entry.hours ?? []) {
      const person = personOf(line, entry, record.shop);
      if (person === undefined) continue;
      const key = `${entry.day} ${person}`;
      const known = days.get(key) ?? { person, day: entry.day, minutes: 0, lines: [] };
      days.set(key, known);
      known.minutes += line.time;
      known.lines.push(line);
    }
  }
  return [...days.values()];
}

/** The line at which a day's sum passes a limit in minutes, and the lines before it. */
export function passing(
  day: PersonsDay,
  limit: number,
): { line: HoursLine; before: HoursLine[] } | undefined {
  let sum = 0;
  for (const [index, line] of day.lines.entries()) {
    sum += line.time;
    if (sum > limit) return { line, before: day.lines.slice(0, index) };
  }
  return undefined;
}
