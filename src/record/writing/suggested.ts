// What a writer is likely to mean at the end of a day, read off the record: nothing is guessed that isn’t in it.
import type { Day } from '../../figures/days.ts';
import { firstFinished } from '../checks/finished-lines.ts';
import { matchedOrders } from '../checks/orders.ts';
import { plannedLines } from '../checks/planned-lines.ts';
import { mentions } from '../mentions.ts';
import { type CarRecord, type Entry, photoPath } from '../record.ts';

/** Names to offer first, each list complete. */
export type Suggested = {
  /** Every part, the one worked on last first. */
  parts: string[];
  /** Every vendor, the one bought from last first. */
  vendors: string[];
  /** Planned lines that aren’t finished, in the order of the parts, with what is to be done and the kind of work. */
  lines: { name: string; part: string; do: string; work: string }[];
  /** Orders that haven’t come. */
  orders: { what: string; from: string; part?: string; ordered: Day }[];
  /** Pictures of the day that lack a caption or `alt`, as an entry of the day names them. */
  photos: { file: string; caption?: string; alt?: string }[];
  /** The kind of work last done on each part. */
  workOn: ReadonlyMap<string, string>;
};

/** What to offer for an entry of a day: what later entries say is left aside. */
export function suggestedFor(day: Day, record: CarRecord): Suggested {
  const before = record.entries.filter((entry) => entry.day <= day).reverse();
  const hours = before.flatMap(({ hours = [] }) => hours.toReversed());
  const parts = lately(
    hours.map(({ part }) => part),
    record.parts.map(({ id }) => id),
  );
  const bills = before.flatMap(({ bought = [], outside = [], ordered = [] }) =>
    [...ordered, ...bought, ...outside].reverse(),
  );
  const vendors = lately(
    bills.map(({ from }) => from),
    (record.shop.vendors ?? []).map(({ id }) => id),
  );
  const workOn = new Map<string, string>();
  for (const { part, work } of hours) if (part && !workOn.has(part)) workOn.set(part, work);
  return {
    parts,
    vendors,
    workOn,
    lines: openLines(record, parts),
    orders: openOrders(record),
    photos: wordless(day, record),
  };
}

/** Names in the order in which they came up last, then those that never did. */
function lately(used: readonly (string | undefined)[], all: readonly string[]): string[] {
  const known = new Set(all);
  return [...new Set([...used.filter((name) => name !== undefined && known.has(name)), ...all])] as string[];
}

function openLines(record: CarRecord, parts: readonly string[]): Suggested['lines'] {
  const finished = firstFinished(record);
  const open = [...plannedLines(record)].filter(([name]) => !finished.has(name));
  const rank = new Map(parts.map((part, at) => [part, at]));
  return open
    .map(([name, { part, line }]) => ({ name, part: part.id, do: line.do, work: line.work }))
    .sort((a, b) => (rank.get(a.part) ?? 0) - (rank.get(b.part) ?? 0));
}

function openOrders(record: CarRecord): Suggested['orders'] {
  const open = matchedOrders(record).open.flatMap(({ entry, index }) => {
    const order = entry.ordered?.[index];
    return order ? [{ ...order, ordered: entry.day }] : [];
  });
  return open
    .sort((a, b) => (a.ordered < b.ordered ? -1 : 1))
    .map(({ what, from, part, ordered }) => ({ what, from, ordered, ...(part ? { part } : {}) }));
}

function wordless(day: Day, record: CarRecord): Suggested['photos'] {
  const listed = record.entries
    .filter((entry) => entry.day === day)
    .flatMap(({ photos = [] }: Entry) => photos)
    .filter(({ caption, alt }) => !caption || !alt)
    .map(({ file, caption, alt }) => ({ file, ...(caption ? { caption } : {}), ...(alt ? { alt } : {}) }));
  const named = new Set(
    mentions(record)
      .filter(({ refers }) => refers === 'photo')
      .map(({ name }) => name),
  );
  const own = `photos/${day}/`;
  const fresh = record.photos
    .filter((path) => path.startsWith(own) && !named.has(path))
    .map((path) => {
      const file = path.slice(own.length);
      // A name in a folder of its own below the day’s stands with its whole path.
      return { file: photoPath(file, day) === path ? file : path };
    });
  return [...listed, ...fresh];
}
