// Keys that stand twice, and sets of more keys than any person writes. The parser compares each key with each other one,
// which takes minutes where a sheet was pasted in.
import { isMap, isScalar, isSeq, type Node } from 'yaml';

const MOST_KEYS = 1000;

type Mistake = { code: string; message: string; pos: [number, number] };

/** Mistakes in the keys of a tree, as the parser would give them. Sets within too large a set aren't looked into. */
export function keyMistakes(top: unknown): Mistake[] {
  const found: Mistake[] = [];
  const left: unknown[] = [top];
  for (let node = left.pop(); node !== undefined; node = left.pop()) {
    if (isSeq(node)) for (const item of node.items) left.push(item);
    if (!isMap(node)) continue;
    if (node.items.length > MOST_KEYS) {
      found.push(mistake('TOO_MANY_KEYS', node));
      continue;
    }
    const seen = new Set<unknown>();
    for (const { key, value } of node.items) {
      if (isScalar(key)) {
        if (seen.has(key.value)) found.push(mistake('DUPLICATE_KEY', key));
        seen.add(key.value);
      }
      for (const within of [key, value]) if (isMap(within) || isSeq(within)) left.push(within);
    }
  }
  return found;
}

function mistake(code: string, { range }: Node): Mistake {
  return { code, message: '', pos: [range?.[0] ?? 0, range?.[1] ?? 0] };
}
