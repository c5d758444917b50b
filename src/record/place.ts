// Where a thing was written, and what is wrong with it.
import { shortened } from './short.ts';

/** A place in a file of the record. `file` is relative to the record's folder; line and column count from 1. */
export type Place = { file: string; line: number; column: number };

/**
 * One problem: the place, the rule that found it, what was written and what was expected in one sentence,
 * how to mend it in another, and the places it clashes with.
 */
export type Problem = {
  rule: string;
  severity: 'error' | 'warning';
  place: Place;
  reason: string;
  mend?: string;
  related?: Place[];
};

/** All problems by file, line and column, the same at every run. What they quote is cut to what can be read. */
export function sorted(problems: readonly Problem[]): Problem[] {
  return problems
    .map(shortened)
    .sort(
      (a, b) =>
        compare(a.place.file, b.place.file) ||
        a.place.line - b.place.line ||
        a.place.column - b.place.column ||
        compare(a.rule, b.rule) ||
        compare(a.reason, b.reason),
    );
}

/** `log/2025-04-16.md:7:11`. */
export function placeText(place: Place): string {
  return `${place.file}:${place.line}:${place.column}`;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
