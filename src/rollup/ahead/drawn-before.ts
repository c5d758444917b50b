// Draws that come out the same at every build needn't be drawn at every build: results are known by all that they were
// drawn from.
import type { CarRecord } from '../../record/record.ts';

/** Results of earlier builds, and those that this one asked for. Both by what they were drawn from, as text. */
export type DrawnBefore = { before: Map<string, unknown>; now: Map<string, unknown> };

const known = new WeakMap<CarRecord, DrawnBefore>();

/** Has results of a record's draws taken from here, and put here. */
export function drawnBefore(record: CarRecord, results: DrawnBefore): void {
  known.set(record, results);
}

/**
 * The result of `draw`, which depends on nothing but `from`: plain values, with `what` it is. It is drawn once for a
 * record that results are kept of, and each time for any other.
 */
export function drawnOnce<Result>(
  record: CarRecord,
  what: string,
  from: unknown,
  draw: () => Result,
): Result {
  const results = known.get(record);
  if (!results) return draw();
  const name = drawnName(what, from);
  const result = results.now.get(name) ?? results.before.get(name) ?? draw();
  results.now.set(name, result);
  return result as Result;
}

/** The same for what has to be waited for when it is drawn. */
export async function awaitedOnce<Result>(
  record: CarRecord,
  what: string,
  from: unknown,
  draw: () => Promise<Result>,
): Promise<Result> {
  const results = known.get(record);
  if (!results) return draw();
  const name = drawnName(what, from);
  const result = results.now.get(name) ?? results.before.get(name) ?? (await draw());
  results.now.set(name, result);
  return result as Result;
}

/** The name of a result, by all that it is drawn from. */
export function drawnName(what: string, from: unknown): string {
  return `${what} ${JSON.stringify(from, exactly)}`;
}

/** JSON writes numbers that aren't finite all alike. */
function exactly(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? `number ${value}` : value;
}
