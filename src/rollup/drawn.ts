// A cost line as it is drawn from the record, before charged tax, with what that tax is worked out on.
import type { ChargedLine } from '../estimate/charged-tax.ts';
import type { Minor } from '../figures/money.ts';
import type { Place } from '../record/place.ts';
import { type CarRecord, type Entry, lineName } from '../record/record.ts';
import type { CostKind, CostLine } from './cost-lines.ts';

/** `taxed` stands on one line of those that come from one written line. */
export type Drawn = { line: CostLine; taxed?: ChargedLine };

/** What all lines from one written line have in common. */
export type Source = Omit<CostLine, 'kind' | 'text' | 'cost' | 'charged'>;

/** Where a written line belongs: its part, or that of the planned line it names. */
export function sourceOf(
  written: { part?: string; line?: string; choice?: string; bill?: string; place: Place },
  entry: Entry,
  groups: ReadonlyMap<string, string>,
): Source {
  const name = written.line === undefined ? undefined : lineName(written.line, written.part);
  const part = written.part ?? (name?.includes('/') ? name.split('/')[0] : undefined);
  const group = part === undefined ? undefined : groups.get(part);
  return {
    day: entry.day,
    entry: entry.id,
    ...(part !== undefined && { part }),
    ...(group !== undefined && { group }),
    ...(written.choice !== undefined && { choice: written.choice }),
    ...(name !== undefined && { line: name }),
    ...(written.bill !== undefined && { bill: written.bill }),
    place: written.place,
  };
}

/** The group of every part. */
export function groupsOf(record: CarRecord): Map<string, string> {
  return new Map(record.parts.map(({ id, group }) => [id, group]));
}

/** A line that is passed on, or nothing when its amount is 0. */
export function passedOn(
  kind: CostKind,
  amount: Minor,
  text: string,
  source: Source,
  more: Partial<CostLine> = {},
): CostLine[] {
  return amount === 0 ? [] : [{ ...source, kind, text, cost: amount, charged: amount, ...more }];
}
