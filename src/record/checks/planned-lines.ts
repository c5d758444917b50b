// The planned lines of a record by their full name, `part/line`.
import type { CarRecord, Part, PlannedLine } from '../record.ts';

/** A planned line, the part it stands in, and its position in that part's list. */
export type Planned = { part: Part; line: PlannedLine; index: number };

/** Every planned line. Of two with one name, the first. */
export function plannedLines(record: CarRecord): Map<string, Planned> {
  const all = new Map<string, Planned>();
  for (const part of record.parts) {
    part.planned?.forEach((line, index) => {
      const name = `${part.id}/${line.line}`;
      if (!all.has(name)) all.set(name, { part, line, index });
    });
  }
  return all;
}
