// The files that a form would write: the entry, and the choice that was decided with it.
import { LARGEST_TEXT } from '../record/record.ts';
import { sheets } from '../record/schema/sheets.ts';
import { changedText } from '../record/writing/change.ts';
import type { DayPlan, Lying } from '../record/writing/day-plan.ts';
import { lineDifference } from '../views/line-difference.ts';
import type { Conflict, Form } from './browser/told.ts';
import { entryAfter } from './entry-after.ts';
import { fileOf } from './entry-of.ts';
import type { RecordAt } from './lying.ts';

/** What would be written; a file that isn’t what was read; or a sentence that says why nothing can be. */
export type Planned = { plans: DayPlan[] } | { conflict: Conflict } | { refused: string };

/** `given` are the texts that were read by whoever filled the form in. */
export function plansFor(
  { files }: Lying,
  form: Form,
  given: RecordAt['given'],
  sign: (text: string | undefined) => string,
): Planned {
  const textOf = (file: string) => files.find((written) => written.file === file)?.text;
  const entry = fileOf(
    form.entry,
    files.map(({ file }) => file),
  );
  if (entry === undefined)
    return { refused: `\`${form.entry}\` is no entry and no day such as \`2025-04-16\`.` };
  const wanted = [
    { file: entry, read: form.read, after: (before: string) => entryAfter(before, form) },
    ...decisions(form),
  ];
  const plans: DayPlan[] = [];
  for (const { file, read, after } of wanted) {
    const before = textOf(file);
    if (sign(before) !== read) {
      const old = given(read) ?? '';
      return {
        conflict: {
          file,
          theirs: lineDifference(old, before ?? ''),
          mine: lineDifference(old, after(old) ?? old),
        },
      };
    }
    const text = after(before ?? '');
    if (text === undefined) {
      return {
        refused: `${file} is written in a way that can’t be changed safely here. See what npm run check says of it, or write in it by hand.`,
      };
    }
    if (Buffer.byteLength(text) > LARGEST_TEXT)
      return { refused: `${file} would become too large to be read again: 1 MB at most.` };
    if (text !== (before ?? '')) plans.push({ file, text, ...(before === undefined ? {} : { before }) });
  }
  return { plans };
}

function decisions({ decided, entry }: Form) {
  if (!decided || !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(decided.choice)) return [];
  const { choice, read, option, by, reason } = decided;
  const value = { option, on: entry.slice(0, 10), by: by.trim(), reason: reason.trim() };
  return [
    {
      file: `choices/${choice}.md`,
      read,
      after: (before: string) =>
        before === '' ? undefined : changedText(before, [{ set: ['decided'], value }], sheets.choice),
    },
  ];
}
