// How many bad inputs are tried: few at every test, 20,000 by `npm run test:long`.

const SIZE = Number(process.env.BAD_INPUTS ?? 1200);

/** The runs of one kind of input, a share of all. The seed is fixed, so that a failure can be looked at again. */
export function tries(share: number): { numRuns: number; seed: number } {
  return { numRuns: Math.max(1, Math.round(SIZE * share)), seed: 1934 };
}

/** What a test of so many tries may take, in ms: one that hangs is found, one that is slow isn't. */
export const PATIENCE = 60_000 + SIZE * 100;
