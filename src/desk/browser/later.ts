// Carries new lines and words over to the file as it is now, when somebody else changed it.
import { linesOf, type State } from './state.ts';
import type { DeskLine } from './told.ts';

type Kept = { entry: string; by: string; lists: { [list: string]: DeskLine[] }; words: string };
const KEY = 'desk-kept';

export function keepForLater({ form, told }: State): void {
  const lists = Object.fromEntries(
    Object.entries(form.lists).map(([list, lines]) => [list, lines.filter(({ at }) => at === undefined)]),
  );
  const before = told.words.trim();
  const words = form.words.trim();
  const own = words === before ? '' : words.startsWith(before) ? words.slice(before.length).trim() : words;
  const kept: Kept = { entry: form.entry, by: form.by, lists, words: own };
  sessionStorage.setItem(KEY, JSON.stringify(kept));
}

/** True when something of this entry is carried over from the page that was there a moment ago. */
export function isCarried(entry: string): boolean {
  const text = sessionStorage.getItem(KEY);
  return text !== null && (JSON.parse(text) as Kept).entry === entry;
}

/** Puts what was kept of this entry behind what stands in it now. True when there was anything. */
export function takeUp(state: State): boolean {
  const text = sessionStorage.getItem(KEY);
  if (text === null) return false;
  sessionStorage.removeItem(KEY);
  const kept = JSON.parse(text) as Kept;
  const { form } = state;
  if (kept.entry !== form.entry) return false;
  for (const [list, lines] of Object.entries(kept.lists)) linesOf(state, list).push(...lines);
  if (form.by === '') form.by = kept.by;
  if (kept.words !== '') form.words = form.words === '' ? kept.words : `${form.words}\n\n${kept.words}`;
  return true;
}
