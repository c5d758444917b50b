// How long each of several stages takes, when all are run in turn.

const ROUNDS = 11;
const WARM = 3;

/** The median of each stage, in milliseconds; every round runs all stages, turned about, so that a slow moment hits all. */
export function medians(
  stages: ReadonlyMap<string, () => unknown>,
  { warm = WARM, rounds = ROUNDS }: { warm?: number; rounds?: number } = {},
): Map<string, number> {
  const times = new Map<string, number[]>([...stages.keys()].map((stage) => [stage, []]));
  for (let round = -warm; round < rounds; round++) {
    const order = round % 2 ? [...stages].reverse() : [...stages];
    for (const [stage, run] of order) {
      globalThis.gc?.();
      const start = performance.now();
      run();
      if (round >= 0) times.get(stage)?.push(performance.now() - start);
    }
  }
  return new Map(
    [...times].map(([stage, all]) => [stage, all.sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? 0]),
  );
}
