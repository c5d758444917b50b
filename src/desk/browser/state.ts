// What the page holds: the entry as it was told, and the form as it is filled in.
import type { DeskLine, Form, Told } from './told.ts';

export type State = {
  told: Told;
  form: Form;
  /** Says that something was filled in. */
  changed: () => void;
  /** Where a line’s mistakes are shown, by the line itself. */
  wrong: Map<DeskLine, (says: readonly string[]) => void>;
};

/** A form that says what the file says. */
export function formOf(told: Told): Form {
  const { entry, read, by, lists, words } = told;
  return { entry, read, by, words, lists: structuredClone(lists) };
}

export function linesOf({ form }: State, list: string): DeskLine[] {
  form.lists[list] ??= [];
  return form.lists[list];
}

/** The value of a line’s key; nothing said is an empty text. */
export function filledIn({ line }: DeskLine, key: string): string {
  return typeof line === 'string' ? line : (line[key] ?? '');
}

/** Puts a value in; a key of nothing is taken out again. */
export function setValue(one: DeskLine, key: string, value: string): void {
  if (typeof one.line === 'string') one.line = value;
  else if (value === '') delete one.line[key];
  else one.line[key] = value;
}
