// The pads at each mount through the record: as found, as changed, as they are.
import type { Day } from '../../figures/days.ts';
import { millimetres } from '../../figures/lengths.ts';
import type { Thickness } from '../../figures/thickness.ts';
import { once } from '../../record/once.ts';
import type { Place } from '../../record/place.ts';
import type { CarRecord, Entry } from '../../record/record.ts';
import { byMount } from './mounts.ts';

/** A stack as it was written down. */
export type StackLine = {
  stack: Thickness[];
  state: 'before' | 'trial' | 'after';
  part?: string;
  day: Day;
  entry: string;
  place: Place;
};

/**
 * A mount's stacks: `found` as it was before any work, if anybody wrote it down; `changed` every line that has other
 * pads than the one before it; `now` the last.
 */
export type MountStacks = {
  mount: string;
  lines: StackLine[];
  found?: StackLine;
  changed: StackLine[];
  now: StackLine;
};

/** Every mount whose pads were written down, left before right, from the front. */
export const stacksOf = once((record: CarRecord): MountStacks[] => {
  const lines = record.entries.flatMap((entry) =>
    (entry.pads ?? []).map(({ mount, stack, state, part, place }) => ({
      mount,
      line: {
        stack,
        state,
        ...(part !== undefined && { part }),
        day: entry.day,
        entry: entry.id,
        place,
      } satisfies StackLine,
    })),
  );
  return [...Map.groupBy(lines, ({ mount }) => mount)]
    .sort(([one], [other]) => byMount(one, other))
    .flatMap(([mount, own]) => {
      const stacks = own.map(({ line }) => line);
      const now = stacks.at(-1);
      const found = stacks.find(({ state }) => state === 'before');
      const changed = stacks.filter((line, i) => {
        const last = stacks[i - 1];
        return last !== undefined && !samePads(line.stack, last.stack);
      });
      return now ? [{ mount, lines: stacks, ...(found && { found }), changed, now }] : [];
    });
});

/**
 * The stacks that were in place when a reading of an entry was taken: those of earlier entries, and those of its own
 * that belong to the reading's stage of the work or an earlier one.
 */
export function stacksAt(record: CarRecord, entry: Entry, state: StackLine['state']): Map<string, StackLine> {
  const order = new Map(record.entries.map(({ id }, i) => [id, i]));
  const here = order.get(entry.id) ?? 0;
  const inPlace = (line: StackLine) => {
    const at = order.get(line.entry) ?? 0;
    return at < here || (at === here && STAGES.indexOf(line.state) <= STAGES.indexOf(state));
  };
  return new Map(
    stacksOf(record).flatMap(({ mount, lines }) => {
      const line = lines.findLast(inPlace);
      return line ? [[mount, line] as const] : [];
    }),
  );
}

const STAGES = ['before', 'trial', 'after'];

/** Whether two stacks have the same pads, in whatever order they lie. */
export function samePads(one: readonly Thickness[], other: readonly Thickness[]): boolean {
  const sizes = (stack: readonly Thickness[]) =>
    stack.map(({ length }) => Math.round(millimetres(length) * 1e6)).sort((a, b) => a - b);
  const [these, those] = [sizes(one), sizes(other)];
  return these.length === those.length && these.every((size, i) => size === those[i]);
}
