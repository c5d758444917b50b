// Writes values as a person would: a line in braces where it is short, else key by key.
import { isKeys, isList, type Keys, type Value } from './edit.ts';
import { holdsWords, inOrder, type Shape, within } from './key-order.ts';
import { scalarText } from './scalar-text.ts';

/** The widest line that is still written in braces. */
export const WIDTH = 120;

/** A value in one line, for between braces or behind a key. Empty keys aren’t shown in braces. */
export function flowText(value: Value, shape: Shape): string {
  if (value === null) return '""';
  if (isList(value)) return `[${value.map((item) => flowText(item, within(shape, 0))).join(', ')}]`;
  if (!isKeys(value)) return scalarText(value, { flow: true, words: holdsWords(shape) });
  const keys = inOrder(shape, value).filter((key) => value[key] !== null);
  const pairs = keys.map(
    (key) => `${keyText(key)}: ${flowText(value[key] ?? null, within(shape, key, value))}`,
  );
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

/** `key: value` in as many lines as it takes, the first set in by `column`, the last without its end. */
export function pairText(key: string, value: Value, shape: Shape, column: number, step = 2): string {
  const own = `${' '.repeat(column)}${keyText(key)}:`;
  return own + behindKey(value, shape, column, own.length, step);
}

/** What stands behind a key and its colon: a space and a value, or lines set in by more than `column`. */
export function behindKey(value: Value, shape: Shape, column: number, used: number, step = 2): string {
  if (value === null) return '';
  if (!isList(value) && !isKeys(value))
    return ` ${scalarText(value, { flow: false, words: holdsWords(shape) })}`;
  const flow = ` ${flowText(value, shape)}`;
  if (!isListOfLines(value, shape) && used + flow.length <= WIDTH && !hasEmpty(value)) return flow;
  if (isKeys(value)) return `\n${keysText(value, shape, column + 2)}`;
  return `\n${itemsText(value, shape, column + step)}`;
}

/** The lines of a list: all of them in braces where all are short. */
export function itemsText(items: readonly Value[], shape: Shape, column: number): string {
  const flow = items.every((item) => fits(item, within(shape, 0), column));
  return items.map((item) => itemText(item, within(shape, 0), column, flow)).join('\n');
}

/** `- value`, in braces or key by key. */
export function itemText(item: Value, shape: Shape, column: number, flow: boolean): string {
  const dash = `${' '.repeat(column)}- `;
  if (isKeys(item) && !(flow && !hasEmpty(item)) && Object.keys(item).length > 0) {
    return dash + keysText(item, shape, column + 2).slice(column + 2);
  }
  if (isList(item) || isKeys(item)) return dash + flowText(item, shape);
  return dash + scalarText(item ?? '', { flow: false, words: holdsWords(shape) });
}

/** The keys of a set, a line each. */
export function keysText(keys: Keys, shape: Shape, column: number): string {
  return inOrder(shape, keys)
    .map((key) => pairText(key, keys[key] ?? null, within(shape, key, keys), column))
    .join('\n');
}

export const keyText = (key: string) => scalarText(key, { flow: true, words: true });

/** A list whose lines are sets of keys or whole sentences stands a line each; names and figures stand in a row. */
function isListOfLines(value: Value, shape: Shape): boolean {
  const words = holdsWords(within(shape, 0));
  const isLine = (item: Value) => isKeys(item) || (words && typeof item === 'string' && / .* /.test(item));
  return isList(value) && value.some(isLine);
}

function fits(item: Value, shape: Shape, column: number): boolean {
  if (!isKeys(item)) return true;
  return !hasEmpty(item) && column + 2 + flowText(item, shape).length <= WIDTH;
}

function hasEmpty(value: Value): boolean {
  if (value === null) return true;
  if (isList(value)) return value.some(hasEmpty);
  return isKeys(value) && Object.values(value).some((inner) => inner !== undefined && hasEmpty(inner));
}
