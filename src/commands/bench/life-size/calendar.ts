// When things happen in a made-up record: the day of each entry, and the entries between which each line is worked on.
import { addDays, type Day } from '../../../figures/days.ts';
import type { Draw } from './draw.ts';

/** The Monday of the last week with an entry. */
const LAST_MONDAY = '2025-11-17';
/** Four entries a week, Monday to Thursday: 600 take three years less six weeks. */
const A_WEEK = 4;

/** A planned line is begun with one entry and finished with another, both counted from 0; those to come have higher numbers. */
export type Line = { part: string; line: string; work: string; after: string[]; from: number; to: number };

/** The day of an entry out of so many. */
export function dayOf(entry: number, entries: number): Day {
  const weeks = Math.ceil(entries / A_WEEK) - 1 - Math.floor(entry / A_WEEK);
  return addDays(LAST_MONDAY, (entry % A_WEEK) - 7 * weeks);
}

/** Where a part's work begins: parts come up one after another, and about the last eighth of them is still to come. */
export function beginningOf(part: number, parts: number, entries: number): number {
  return Math.floor((BEYOND * entries * part) / parts);
}
const BEYOND = 1.15;

/** Entries that the lines of one part take, one line after another; some finish on the day that they begin. */
export function windows(
  begin: number,
  lines: number,
  entries: number,
  draw: Draw,
): { from: number; to: number }[] {
  const each = (entries * draw(5, 15)) / 100 / lines;
  let free = begin;
  return Array.from({ length: lines }, (_, i) => {
    const from = free;
    const to = Math.max(from, Math.round(begin + each * (i + 1)) - 1);
    free = to + 1;
    return { from, to };
  });
}

/** So many things over so many entries: uneven from day to day, and exact in sum. */
export function countsOver(things: number, entries: number): number[] {
  const upTo = (share: number) => Math.round(share * things);
  // In each four entries a tenth, none, three and six tenths of what falls to them.
  const within = [0.1, 0.1, 0.4, 1];
  const share = (entry: number) => {
    const four = Math.floor(entry / 4);
    const last = Math.min(4, entries - 4 * four);
    const done = last === 4 ? (within[entry % 4] ?? 1) : ((entry % 4) + 1) / last;
    return Math.min(1, (4 * four + last * done) / entries);
  };
  return Array.from(
    { length: entries },
    (_, entry) => upTo(share(entry)) - (entry === 0 ? 0 : upTo(share(entry - 1))),
  );
}
