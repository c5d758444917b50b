// Brings a sheet in twice without doubling: a row is known by all its values, however its entry writes them.
import { type CarRecord, type Entry, lineName, personOf } from '../../record.ts';
import { readLine } from '../line-problems.ts';
import type { SheetLine } from './rows.ts';

/** Divides lines into those that stand in their day’s entries already and those that are new; of n alike, n count. */
export function withoutThere(
  lines: readonly SheetLine[],
  record: CarRecord,
): { fresh: SheetLine[]; there: SheetLine[] } {
  const counts = new Map<string, number>();
  for (const entry of record.entries) {
    for (const list of ['hours', 'bought', 'outside'] as const) {
      for (const line of entry[list] ?? []) {
        const key = keyOf(entry.day, list, withPerson(line, entry, record));
        counts.set(key, (counts.get(key) ?? 0) + 1);
      }
    }
  }
  const [fresh, there]: [SheetLine[], SheetLine[]] = [[], []];
  for (const line of lines) {
    const read = readLine(line.list, line.line, record);
    const [first] = record.shop.people;
    const alone = record.shop.people.length === 1 && first ? { by: first.id } : {};
    const key = keyOf(line.day, line.list, line.list === 'hours' ? { ...alone, ...read } : { ...read });
    const left = counts.get(key) ?? 0;
    counts.set(key, left - 1);
    (left > 0 ? there : fresh).push(line);
  }
  return { fresh, there };
}

type Read = Readonly<Record<string, unknown>>;

function withPerson(line: Read, entry: Entry, record: CarRecord): Read {
  if (!('time' in line)) return line;
  const by = personOf(line as { by?: string }, entry, record.shop);
  return by === undefined ? line : { ...line, by };
}

/** All values as they are read, so that `2.5` and `2h 30m` are the same; what goes without saying is said. */
function keyOf(day: string, list: string, line: Read): string {
  const { place: _, line: planned, count = '1', ...others } = line as Read & { line?: string; part?: string };
  const whole = {
    ...others,
    ...(planned === undefined ? {} : { line: lineName(planned, line.part as string | undefined) }),
    ...(list === 'bought' ? { count } : {}),
    ...(list === 'hours' ? {} : { 'paid-by': line['paid-by'] ?? 'shop' }),
  };
  const sorted = Object.entries(whole)
    .filter(([, value]) => value !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([day, list, sorted]);
}
