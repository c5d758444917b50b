// Names that an audience may not see, taken out of every other text too: a day, a reason or the car’s story says “the
// owner” where the writer put a name.
import type { z } from 'zod';
import { bare, said } from './schema-at.ts';

/** A name, and the words that stand for it. */
export type Unnamed = { name: string; as: string };

/**
 * The names in a file’s fields that say what stands for them (`instead` of a field’s schema) and that `hidden` keeps from
 * an audience.
 */
export function namesHidden(
  sheet: z.ZodType,
  values: unknown,
  hidden: (field: z.ZodType) => boolean,
  within = false,
): Unnamed[] {
  const { shape = {} } = bare(sheet);
  if (typeof values !== 'object' || values === null) return [];
  return Object.entries(shape).flatMap(([key, field]) => {
    const held = (values as Record<string, unknown>)[key];
    const { instead } = said(field);
    const kept = within || hidden(field);
    if (instead !== undefined && typeof held === 'string' && kept) return [{ name: held, as: instead }];
    return namesHidden(field, held, hidden, kept);
  });
}

/**
 * A value in which every text says the words instead of the names. `others` are names that stay: a surname that is a
 * vendor’s too is taken out only as part of the whole name.
 */
export function unnamed<T>(value: T, names: readonly Unnamed[], others: readonly string[]): T {
  if (names.length === 0) return value;
  const patterns = names.map(({ name, as }) => ({ as, pattern: patternOf(name, as, others) }));
  const inText = (text: string, phrase: boolean) =>
    patterns.reduce((said, { pattern, as }) => replaced(said, pattern, as, phrase), text);
  const inside = (held: unknown, key: string, first: boolean): unknown => {
    if (typeof held === 'string') return FILES.has(key) ? held : inText(held, key === 'by' || !first);
    if (Array.isArray(held))
      return held.map((one, i) => inside(one, key, key === 'children' ? first && i === 0 : first));
    if (!isPlain(held) || OURS.has(key)) return held;
    // A paragraph begins anew; what is emphasized or linked in it goes on.
    const begins = first || !GOES_ON.has(String(held.type));
    return Object.fromEntries(
      Object.entries(held).map(([name, one]) => [
        name,
        inside(one, name, name === 'children' ? begins : first),
      ]),
    );
  };
  return inside(value, '', true) as T;
}

/** Names of files, which are no words, and places in files. */
const FILES = new Set(['file', 'id']);
const OURS = new Set(['place', 'position']);
const GOES_ON = new Set(['emphasis', 'strong', 'delete', 'link']);

/** Sets of keys, and not a figure’s own kind of object. */
const isPlain = (held: unknown): held is Record<string, unknown> =>
  typeof held === 'object' && held !== null && Object.getPrototypeOf(held) === Object.prototype;

/**
 * The whole name however its words are spaced, or the surname alone, with its title or initials. A name with `of`, `and` or
 * the like is a company’s and has no surname. “The owner, A. Name,” is said once.
 */
function patternOf(name: string, as: string, others: readonly string[]): RegExp {
  const words = name.trim().split(/\s+/);
  const surname = words.at(-1) ?? '';
  const alone =
    words.every((word) => /^\p{Lu}/u.test(word) && word !== 'The') &&
    surname.length > 2 &&
    !others.some((other) => bounded(exactly(surname)).test(other));
  const forms = [
    words.map(exactly).join('\\s+'),
    ...(alone
      ? [`(?:(?:Mr|Mrs|Ms|Miss|Dr|Sir|Lady|Lord)\\.?\\s+)?(?:\\p{Lu}\\.\\s*)*${exactly(surname)}`]
      : []),
  ];
  const before = `(?:[${as[0]?.toUpperCase()}${as[0]}]${exactly(as.slice(1))}(?<comma>,?)\\s+)?`;
  return bounded(`${before}(?:${forms.join('|')})`, '(?:\\k<comma>)?');
}

const bounded = (pattern: string, after = '') =>
  new RegExp(`(?<![\\p{L}\\p{N}])${pattern}(?![\\p{L}\\p{N}])${after}`, 'gu');

const exactly = (text: string) => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

/** A capital begins a sentence; a phrase, such as who decided, begins none. */
function replaced(text: string, pattern: RegExp, as: string, phrase: boolean): string {
  return text.replace(pattern, (...found) => {
    const at = found.find((one): one is number => typeof one === 'number') ?? 0;
    const before = text.slice(0, at);
    const begins = before.trim() === '' ? !phrase : /[.!?…]["”’)]*\s+$|\n\s*\n\s*$/.test(before);
    return begins ? as.replace(/^./u, (first) => first.toUpperCase()) : as;
  });
}
