// Advice for whoever keeps the car: the general one, chosen by what the record holds.
import shared from '../../../shared/care.json' with { type: 'json' };
import type { CarRecord } from '../../record/record.ts';

/** A piece of advice with where it comes from. */
export type Care = { title: string; text: string; source: string };

/** What has to stand in a record for a piece of advice to be given. */
type For = { work?: string[]; pads?: boolean; hazard?: string };

export const CARE_CLOSING = shared.closing;

/** The advice for a record, in the order of shared/care.json. `hazards` are those that the book warns of. */
export function careFor(record: CarRecord, hazards: readonly string[]): Care[] {
  const work = worked(record);
  const pads = record.entries.some((entry) => (entry.pads ?? []).length > 0);
  const holds = (wanted: For) =>
    (wanted.work?.some((kind) => work.has(kind)) ?? true) &&
    (wanted.pads !== true || pads) &&
    (wanted.hazard === undefined || hazards.includes(wanted.hazard));
  return shared.care
    .filter((one) => holds(one.for))
    .map(({ title, text, source }) => ({ title, text, source }));
}

/** The kinds of work that were done on the car. */
function worked(record: CarRecord): Set<string> {
  return new Set(
    record.entries.flatMap(({ hours = [] }) => hours.flatMap((line) => ('work' in line && line.work) || [])),
  );
}
