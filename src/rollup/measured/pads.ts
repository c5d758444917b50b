// What to do about the pads after each fit-up: the fewest stacks to change, from the heights read over them.
import { millimetres } from '../../figures/lengths.ts';
import { type Answer, noAnswer } from '../../measure/answer.ts';
import { type Mount, type PadsProposal, proposePads } from '../../measure/pads/pads.ts';
import { once } from '../../record/once.ts';
import type { CarRecord, Entry } from '../../record/record.ts';
import { drawnOnce } from '../ahead/drawn-before.ts';
import { type MeasuredOf, measurementsOf } from '../measured.ts';
import { byMount, mountsOf } from './mounts.ts';
import { heightsOf } from './results.ts';
import { type StackLine, stacksAt, stacksOf } from './stacks.ts';

/**
 * A reading of the heights over the stacks, with the stacks in place at the time and what is proposed. `tolerance` in
 * millimeters, from the reading.
 */
export type FitUp = {
  measured: MeasuredOf<'heights'>;
  mounts: { mount: string; height: number; stack: StackLine | undefined }[];
  tolerance?: number;
  proposal: Answer<PadsProposal>;
};

/**
 * Every fit-up, oldest first. Heights count when they were read at mounts, on the part that the pads are written down
 * for, at a time when a stack was known.
 */
export const fitUpsOf = once((record: CarRecord): FitUp[] => {
  const parts = new Set(stacksOf(record).flatMap(({ lines }) => lines.map(({ part }) => part)));
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]));
  return measurementsOf(record).readings.flatMap((measured) => {
    const entry = entries.get(measured.entry);
    if (measured.kind !== 'heights' || !entry) return [];
    if (!(parts.has(measured.part) || parts.has(undefined))) return [];
    const fitUp = fitUpOf(record, entry, measured);
    return fitUp ? [fitUp] : [];
  });
});

function fitUpOf(record: CarRecord, entry: Entry, measured: MeasuredOf<'heights'>): FitUp | undefined {
  const heights = heightsOf(measured.reading, mountsOf(record))
    .flatMap(({ mount, ...height }) => (mount === undefined ? [] : [{ mount, ...height }]))
    .sort((one, other) => byMount(one.mount, other.mount));
  const stacks = stacksAt(record, entry, measured.state);
  if (heights.length < 3 || !heights.some(({ mount }) => stacks.has(mount))) return undefined;
  const { within } = measured.reading;
  const tolerance = within && millimetres(within);
  const mounts = heights.flatMap(({ mount, ...height }): Mount[] => {
    const stack = stacks.get(mount)?.stack;
    return stack ? [{ id: mount, ...height, stack: stack.map(({ length }) => millimetres(length)) }] : [];
  });
  const unknown = heights.flatMap(({ mount }) => (stacks.has(mount) ? [] : [mount]));
  return {
    measured,
    mounts: heights.map(({ mount, z }) => ({ mount, height: z, stack: stacks.get(mount) })),
    ...(tolerance !== undefined && { tolerance }),
    proposal: proposed(record, mounts, unknown, tolerance),
  };
}

function proposed(
  record: CarRecord,
  mounts: readonly Mount[],
  unknown: readonly string[],
  tolerance: number | undefined,
): Answer<PadsProposal> {
  if (unknown.length > 0) {
    return noAnswer(`Nobody wrote down the stack at ${unknown.join(', ')}, so no change can be worked out.`);
  }
  if (tolerance === undefined) {
    return noAnswer(
      'The reading doesn’t say within what the heights should lie, so no change can be worked out.',
    );
  }
  const { pads } = record.shop;
  if (!pads) return noAnswer('shop.md names no `pads` in stock, so no change can be worked out.');
  const stock = pads.map(({ thickness, count }) => ({
    thickness: millimetres(thickness.length),
    ...(count !== undefined && { count }),
  }));
  const asked = { mounts, stock, tolerance, target: 'plane' } as const;
  return drawnOnce(record, 'pads', asked, () => proposePads(asked));
}
