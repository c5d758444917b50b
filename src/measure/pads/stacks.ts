// The stacks that can be made at a mount out of the pads there are.

/** Pads of one thickness, in millimeters. Without a count there are as many as wanted. */
export type Pads = { thickness: number; count?: number };

/**
 * What there is to build with: every thickness, thinnest first, and how many lie in stock (Infinity: as many as
 * wanted).
 */
export type Rack = { thicknesses: readonly number[]; inStock: readonly number[] };

/** Pads of each thickness of the rack. */
export type Stack = readonly number[];

/**
 * A way to change a mount's stack. `rise` is how much higher it is than the stack there now, in millimeters; `moved`
 * counts pads taken out and pads put in; `taken` is what it takes from the stock, below zero what it gives back.
 */
export type Way = { stack: Stack; rise: number; moved: number; taken: readonly number[] };

/** Ways of one rise, those that move fewest pads first. */
export type Rise = { rise: number; moved: number; ways: readonly Way[] };

/** Millionths of a millimeter are whole numbers, so that equal stacks are equal: 1/64 in is 396,875 of them. */
const FINE = 1e6;
export const fine = (millimeters: number): number => Math.round(millimeters * FINE);

/** The rack from the stock and the pads that are in the stacks already. */
export function rackOf(stock: readonly Pads[], stacks: readonly (readonly number[])[]): Rack {
  const counts = new Map<number, number>();
  for (const thickness of stacks.flat()) counts.set(fine(thickness), 0);
  for (const { thickness, count = Infinity } of stock) {
    counts.set(fine(thickness), (counts.get(fine(thickness)) ?? 0) + count);
  }
  const order = [...counts].sort(([one], [other]) => one - other);
  return { thicknesses: order.map(([size]) => size / FINE), inStock: order.map(([, count]) => count) };
}

/** A stack as written, counted by the thicknesses of the rack. */
export function countedStack({ thicknesses }: Rack, stack: readonly number[]): Stack {
  return thicknesses.map((size) => stack.filter((pad) => fine(pad) === fine(size)).length);
}

/** Every stack of up to `most` pads that the rack and all stacks together could give. */
export function possibleStacks(rack: Rack, stacks: readonly Stack[], most: number): Stack[] {
  const all = rack.thicknesses.map((_, t) =>
    stacks.reduce((sum, stack) => sum + (stack[t] ?? 0), rack.inStock[t] ?? 0),
  );
  return all.reduce<Stack[]>(
    (begun, limit) =>
      begun.flatMap((stack) => {
        const left = most - stack.reduce((sum, count) => sum + count, 0);
        return Array.from({ length: Math.min(left, limit) + 1 }, (_, count) => [...stack, count]);
      }),
    [[]],
  );
}

/**
 * The ways to change a stack, by rise from the lowest. Left out is what another way of the same rise betters in pads
 * moved and in pads taken of every thickness that can run out, and what changes a stack without giving anything back
 * for it.
 */
export function waysFrom(rack: Rack, now: Stack, possible: readonly Stack[]): Rise[] {
  const sizes = rack.thicknesses.map(fine);
  const scarce = rack.inStock.flatMap((count, t) => (count === Infinity ? [] : [t]));
  const rises = new Map<number, Way[]>();
  for (const stack of possible) {
    const taken = stack.map((count, t) => count - (now[t] ?? 0));
    const moved = taken.reduce((sum, each) => sum + Math.abs(each), 0);
    if (moved === 0) continue;
    const rise = taken.reduce((sum, each, t) => sum + each * (sizes[t] ?? 0), 0);
    if (rise === 0 && scarce.every((t) => (taken[t] ?? 0) >= 0)) continue;
    const ways = rises.get(rise) ?? [];
    rises.set(rise, ways);
    ways.push({ stack, rise: rise / FINE, moved, taken });
  }
  return [...rises]
    .sort(([one], [other]) => one - other)
    .map(([rise, ways]) => {
      const best = unbettered(ways, scarce);
      return { rise: rise / FINE, moved: best[0]?.moved ?? 0, ways: best };
    });
}

function unbettered(ways: Way[], scarce: readonly number[]): Way[] {
  const kept: Way[] = [];
  for (const way of ways.sort((one, other) => one.moved - other.moved)) {
    if (!kept.some((better) => scarce.every((t) => (better.taken[t] ?? 0) <= (way.taken[t] ?? 0))))
      kept.push(way);
  }
  return kept;
}
