// Names that must stand once in a list.

import type { Place } from '../place.ts';
import type { Found } from './check.ts';

/** A problem for each name that stands in the list before. */
export function twice(
  names: readonly (string | undefined)[],
  place: (index: number) => Place,
  reason: (name: string) => string,
  mend: string,
): Found[] {
  const first = new Map<string, number>();
  return names.flatMap((name, index) => {
    if (name === undefined) return [];
    const before = first.get(name);
    if (before === undefined) {
      first.set(name, index);
      return [];
    }
    return [{ place: place(index), reason: reason(name), mend, related: [place(before)] }];
  });
}
