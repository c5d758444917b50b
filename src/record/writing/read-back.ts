// What was written is read back and held against what was meant.
import type { Split } from '../front-matter.ts';
import type { Edit, Keys, Value } from './edit.ts';
import { plainLines } from './line-ends.ts';

/** Read back: the fields that were meant, the words as they were or as they were meant, and nothing wrong. */
export function says(is: Split, wanted: Keys, was: Split, edit: Edit): boolean {
  if (is.broken || is.problems.length > 0) return false;
  if (sorted(withoutPlaces(is.values)) !== sorted(wanted)) return false;
  const [before, after] = [was.body.markdown, is.body.markdown];
  if ('append' in edit) {
    const said = plainLines(edit.append).trim();
    return after.startsWith(before.trimEnd()) && after.trimEnd().endsWith(said);
  }
  if ('words' in edit) return after.trim() === plainLines(edit.words).trim();
  return after.trimStart() === before.trimStart();
}

/** Values without the places they were read at. */
export function withoutPlaces(values: Record<string, unknown>): Keys {
  return JSON.parse(
    JSON.stringify(values, (key, value: unknown) => (key === 'place' ? undefined : value)),
  ) as Keys;
}

/** Values as one text, keys in order; empty keys count as left out. */
function sorted(values: Value): string {
  return JSON.stringify(values, (_, value: unknown) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value ?? undefined;
    return Object.fromEntries(
      Object.entries(value)
        .filter(([, inner]) => inner !== null && inner !== undefined)
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    );
  });
}
