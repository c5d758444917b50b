// Draws kept while a reader moves figures: the numbers behind a name don't change when its range does.

/** Numbers by the stream they came from. Whoever asks more than once makes one and passes it each time. */
export type KeptDraws = Map<string, Float64Array>;

/** So many numbers of a stream, as kept or drawn anew. What is kept is read, never written to. */
export function keptOrDrawn(
  kept: KeptDraws | undefined,
  { seed, name, draws }: { seed: string; name: string; draws: number },
  draw: () => Float64Array,
): Float64Array {
  const key = `${draws} ${name}\u0000${seed}`;
  const known = kept?.get(key) ?? draw();
  kept?.set(key, known);
  return known;
}
