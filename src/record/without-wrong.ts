// What is right in a file that has wrong fields: the wrong values are taken out, and with them any line that
// can't stand without them. Places stay true.
import type { z } from 'zod';
import type { Path, Split } from './front-matter.ts';
import type { Place } from './place.ts';

/** The values without what was wrong, and the place of what is left. */
export function withoutWrong(split: Split, issues: readonly z.core.$ZodIssue[]) {
  const values = structuredClone(split.values);
  const gone = new Map<string, Set<number>>();
  for (const issue of issues) {
    const path = issue.path as Path;
    const [key, index] = path;
    if (issue.code === 'unrecognized_keys') for (const name of issue.keys) drop(values, [...path, name]);
    else if (typeof index === 'number' && typeof key === 'string')
      gone.set(key, (gone.get(key) ?? new Set()).add(index));
    else drop(values, path);
  }
  const left = new Map<string, number[]>();
  for (const [key, wrong] of gone) {
    const list = values[key];
    // A list that is wrong as a whole, such as one with too few lines, is gone already.
    if (!Array.isArray(list)) continue;
    left.set(
      key,
      [...list.keys()].filter((index) => !wrong.has(index)),
    );
    values[key] = list.filter((_, index) => !wrong.has(index));
  }
  const at = (path: Path): Place => {
    const [key, index, ...rest] = path;
    const written = typeof index === 'number' ? left.get(String(key))?.[index] : undefined;
    return key === undefined || written === undefined ? split.at(path) : split.at([key, written, ...rest]);
  };
  return { values, at };
}

function drop(values: Record<string, unknown>, path: Path): void {
  let holder: unknown = values;
  for (const step of path.slice(0, -1))
    holder = (holder as Record<string | number, unknown> | undefined)?.[step];
  const last = path.at(-1);
  if (last !== undefined && typeof holder === 'object' && holder !== null) {
    delete (holder as Record<string | number, unknown>)[last];
  }
}
