// Problems as a person reads them: a line each, all at once, with a count.
import type { Counts } from '../record/open.ts';
import { type Problem, placeText } from '../record/place.ts';
import { visible, visibleMessage } from './visible.ts';

export { placeText };

/** `log/2025-04-16.md:7:11  error  Unexpected … Did you mean …? [rule]`, and the places it clashes with below. */
export function problemText({ place, severity, reason, mend, rule, related }: Problem): string {
  const at = (one: Problem['place']) => visible(placeText(one)).replaceAll('\n', '\\n');
  const also = (related ?? []).map((other) => `\n    see ${at(other)}`).join('');
  const said = visibleMessage(`${reason}${mend ? ` ${mend}` : ''}`.replaceAll('\n', '\\n'));
  return `${at(place)}  ${severity}  ${said} [${rule}]${also}`;
}

/** All problems, a blank line, and what was read. */
export function problemsText(problems: readonly Problem[], read: Counts): string {
  return [...problems.map(problemText), ...(problems.length > 0 ? [''] : []), countText(problems, read)].join(
    '\n',
  );
}

/** `2 errors and 3 warnings in 146 entries, …`. */
export function countText(problems: readonly Problem[], read: Counts): string {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  const found = `${many(errors, 'error')} and ${many(problems.length - errors, 'warning')}`;
  return `${found}. Read: ${many(read.entries, 'entry', 'entries')}, ${many(read.parts, 'part')}, ${many(read.choices, 'choice')}, ${many(read.vendors, 'vendor')}, ${many(read.bills, 'bill line')}, ${many(read.photos, 'photo')}.`;
}

function many(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}
