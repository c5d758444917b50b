// Every day that a record speaks of as past, with what it is the day of.
import type { Day } from '../../figures/days.ts';
import type { Path } from '../front-matter.ts';
import type { Place } from '../place.ts';
import type { CarRecord } from '../record.ts';

/** A day as written, what it is the day of, and where it stands. */
export type WrittenDay = { day: Day; what: string; place: () => Place };

/** Days of entries and of fields. Days that lie ahead by their nature are left out: expected, needed by, rules. */
export function* writtenDays({ car, parts, choices, entries }: CarRecord): Generator<WrittenDay> {
  const field = (holder: { placeAt: (path: Path) => Place }, path: Path, day: Day | undefined) =>
    day === undefined
      ? []
      : [{ day, what: `\`${String(path.at(-1))}\``, place: () => holder.placeAt(path) } satisfies WrittenDay];
  yield* field(car, ['opened'], car.opened);
  yield* field(car, ['closed'], car.closed);
  for (const [i, { on }] of (car.agreed ?? []).entries()) yield* field(car, ['agreed', i, 'on'], on);
  for (const part of parts) yield* field(part, ['found', 'on'], part.found?.on);
  for (const choice of choices) {
    yield* field(choice, ['asked'], choice.asked);
    yield* field(choice, ['decided', 'on'], choice.decided?.on);
    yield* field(choice, ['withdrawn', 'on'], choice.withdrawn?.on);
  }
  for (const entry of entries) {
    yield { day: entry.day, what: 'This entry', place: () => ({ file: entry.file, line: 1, column: 1 }) };
    for (const [i, { since, until }] of (entry.tested ?? []).entries()) {
      yield* field(entry, ['tested', i, 'since'], since);
      yield* field(entry, ['tested', i, 'until'], until);
    }
  }
}
