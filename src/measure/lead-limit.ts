// How much lead the air of a day may hold under the law, for days longer than eight hours too.

/** Micrograms in a cubic meter of air, averaged over the time worked: 50, or 400 over the hours of a longer day.
 * 29 CFR 1910.1025(c). */
export function leadLimit(minutes: number): number {
  return minutes <= 480 ? 50 : 400 / (minutes / 60);
}
