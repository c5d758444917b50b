// What may be changed in a file of the record, and what its values are afterwards: the plain half of an edit, against
// which the written half is proved.
import type { Path } from '../front-matter.ts';

/** A value as it is written: text, a list, a set of keys. `null` shows a key that is still to be filled in. */
export type Value = string | null | readonly Value[] | Keys;
export type Keys = { readonly [key: string]: Value | undefined };

/** One change. What is left empty by a removal goes with it: a list without lines loses its key. */
export type Edit =
  | { add: Path; item: Value }
  | { set: Path; value: Value }
  | { remove: Path }
  /** Words behind the words that are there. */
  | { append: string }
  /** Words in place of those that are there. */
  | { words: string };

/** Front matter after an edit; nothing when there is no such place in it. */
export function editedValues(values: Keys, edit: Edit): Keys | undefined {
  if ('append' in edit || 'words' in edit) return values;
  if ('add' in edit) {
    const there = valueAt(values, edit.add);
    const list = there === undefined || there === null ? [] : Array.isArray(there) ? there : [there];
    return changed(values, edit.add, [...list, edit.item]) as Keys | undefined;
  }
  if ('set' in edit) return changed(values, edit.set, edit.value) as Keys | undefined;
  if (valueAt(values, edit.remove) === undefined) return undefined;
  return (changed(values, edit.remove, undefined) ?? {}) as Keys;
}

/** The value at a path, if there is one. */
export function valueAt(values: Value | undefined, path: Path): Value | undefined {
  let at: Value | undefined = values;
  for (const step of path) {
    at = isList(at) ? at[Number(step)] : isKeys(at) ? at[step] : undefined;
  }
  return at;
}

export const isList = (value: Value | undefined): value is readonly Value[] => Array.isArray(value);
export const isKeys = (value: Value | undefined): value is Keys =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value with another at a path; with `undefined` there it is taken out, and what held nothing else with it. */
function changed(within: Value | undefined, path: Path, value: Value | undefined): Value | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (typeof step === 'number') {
    if (!isList(within) || step >= within.length) return undefined;
    const inner = changed(within[step], rest, value);
    const list = within.flatMap((item, i) => (i !== step ? [item] : inner === undefined ? [] : [inner]));
    return list.length > 0 ? list : undefined;
  }
  if (!isKeys(within)) return undefined;
  const inner = changed(within[step], rest, value);
  const { [step]: _, ...others } = within;
  if (inner !== undefined) return { ...within, [step]: inner };
  return Object.keys(others).length > 0 ? others : undefined;
}
