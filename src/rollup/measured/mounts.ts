// Where the body mounts lie in plan, gathered from the heights that were read at them.
import { millimetres } from '../../figures/lengths.ts';
import { once } from '../../record/once.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Mounts } from './results.ts';

/** The newest place of each mount that heights were read at, in the order of their names. */
export const mountsOf = once((record: CarRecord): Mounts => {
  const found = new Map<string, { x: number; y: number }>();
  for (const { measured = [] } of record.entries) {
    for (const reading of measured) {
      if (reading.kind !== 'heights') continue;
      for (const { mount, x, y } of reading.points ?? []) {
        if (mount !== undefined && x && y) found.set(mount, { x: millimetres(x), y: millimetres(y) });
      }
    }
  }
  return new Map([...found].sort(([one], [other]) => byMount(one, other)));
});

/** Left before right, from the front: L1, L2 … L10, R1. */
export function byMount(one: string, other: string): number {
  const side = (mount: string) => mount.slice(0, 1);
  const number = (mount: string) => Number(mount.slice(1));
  if (side(one) !== side(other)) return side(one) < side(other) ? -1 : 1;
  return number(one) - number(other);
}
