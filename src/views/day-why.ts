// Why a day’s work was done: what was decided by then on each part, or how the part was found.
import type { CarRecord, Entry } from '../record/record.ts';
import { type Linked, type Reason, reasonsOf } from './fabric.ts';
import { page } from './links.ts';

/** A part that was worked on, with why. */
export type WhyPart = { part: Linked; reasons: Reason[] };

/** The parts that hours, outside work or finished lines of an entry name, those of which no reason is known left out. */
export function whyOfDay(entry: Entry, record: CarRecord): WhyPart[] {
  const named = new Set([
    ...[...(entry.hours ?? []), ...(entry.outside ?? [])].map(({ part, line }) => part ?? ofLine(line)),
    ...(entry.finished ?? []).map(ofLine),
  ]);
  return record.parts
    .filter(({ id }) => named.has(id))
    .map((part) => ({
      part: { text: part.name, to: page.part(part.id) },
      reasons: reasonsOf(part, record, entry.day),
    }))
    .filter(({ reasons }) => reasons.length > 0);
}

/** The part of a planned line’s full name. */
const ofLine = (line: string | undefined) => (line?.includes('/') ? line.split('/')[0] : undefined);
