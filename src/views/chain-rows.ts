// The rows of the chain: each line below those that it waits for, and near them.

import type { Way } from '../rollup/longest-way.ts';
import type { LineInOrder } from '../rollup/order-of-work.ts';

/** A line that can be drawn: one that isn't on a circle. */
type Drawn = LineInOrder & { way: Way };

/**
 * The lines that wait or are waited for. What ends last is led up to first; of the lines that one waits for, the
 * one that ends last stands right above it.
 */
export function inChains(lines: readonly LineInOrder[]): Drawn[] {
  const drawn = new Map(lines.flatMap((line) => (line.way ? [[line.name, { ...line, way: line.way }]] : [])));
  const before = new Map([...drawn.values()].map((line) => [line.name, firstOf(line, drawn)]));
  const waited = new Set([...before.values()].flat().map(({ name }) => name));
  const ends = [...drawn.values()].filter(
    ({ name }) => !waited.has(name) && (before.get(name) ?? []).length > 0,
  );
  const rows: Drawn[] = [];
  const seen = new Set<string>();
  for (const end of ends.toSorted((a, b) => byEnd(b, a))) {
    // A stack of its own instead of recursion: a plan may be thousands of lines deep.
    const open = [{ line: end, step: 0 }];
    seen.add(end.name);
    for (let top = open.at(-1); top; top = open.at(-1)) {
      const next = before.get(top.line.name)?.[top.step++];
      if (next === undefined) {
        rows.push(top.line);
        open.pop();
      } else if (!seen.has(next.name)) {
        seen.add(next.name);
        open.push({ line: next, step: 0 });
      }
    }
  }
  return rows;
}

function firstOf({ waits }: Drawn, drawn: ReadonlyMap<string, Drawn>): Drawn[] {
  return waits.flatMap((each) => (each.for === 'work' ? (drawn.get(each.line) ?? []) : [])).toSorted(byEnd);
}

function byEnd(a: Drawn, b: Drawn): number {
  return a.way.to - b.way.to || (a.name < b.name ? 1 : a.name > b.name ? -1 : 0);
}
