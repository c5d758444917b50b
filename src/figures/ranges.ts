// What is known only roughly: low, likely, high. One value is certain.

/** low ≤ likely ≤ high, all in the same unit (minor units, minutes, days). */
export type Range = { low: number; likely: number; high: number };

export const certain = (value: number): Range => ({ low: value, likely: value, high: value });

export function inOrder(range: Range): boolean {
  return range.low <= range.likely && range.likely <= range.high;
}
