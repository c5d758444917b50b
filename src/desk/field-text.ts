// A field of an entry as one line of text, and such a text as a field: what a person types is what is written.
import { isKeys, isList, type Keys, type Value } from '../record/writing/edit.ts';
import { flowText } from '../record/writing/value-text.ts';
import type { DeskLine } from './browser/told.ts';

/** Names and figures in a row are divided by commas; a list that holds more is shown as it is written. */
export function fieldText(value: Value | undefined): string {
  if (value === undefined || value === null) return '';
  if (typeof value === 'string') return value;
  if (isList(value) && value.every((item) => typeof item === 'string' && !/[,+[{]/.test(item)))
    return value.join(', ');
  return flowText(value, undefined);
}

/** A line as it is shown. */
export function lineText(line: Value): DeskLine['line'] {
  if (!isKeys(line)) return fieldText(line);
  return Object.fromEntries(Object.entries(line).map(([key, value]) => [key, fieldText(value)]));
}

/** The lines of a list, however it is written: one thing may stand without a list. */
export function linesOf(values: Keys, list: string): readonly Value[] {
  const value = values[list];
  return value === undefined || value === null ? [] : isList(value) ? value : [value];
}
