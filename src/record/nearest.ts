// The known name nearest to a mistyped one.
import { distance } from 'fastest-levenshtein';

/** The nearest known name, when it is near enough to be what was meant. */
export function nearest(written: string, known: Iterable<string>): string | undefined {
  const wanted = written.toLowerCase();
  let best: string | undefined;
  let least = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const name of known) {
    const apart = distance(wanted, name.toLowerCase());
    if (apart < least) {
      least = apart;
      best = name;
    }
  }
  return best;
}

/** `Did you mean `x`?` or, where nothing is near, nothing. */
export function didYouMean(written: string, known: Iterable<string>): string | undefined {
  const name = nearest(written, known);
  return name === undefined ? undefined : `Did you mean \`${name}\`?`;
}
