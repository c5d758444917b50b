// Writes what a day brought, when nothing is wrong with it, and says what it came to.
import { join } from 'node:path';
import { openFolder } from '../../disk/open-folder.ts';
import { replaceText } from '../../disk/replace-text.ts';
import type { Day } from '../../figures/days.ts';
import type { Opened } from '../../record/open.ts';
import type { Added } from '../../record/writing/add-to-entry.ts';
import { type DayPlan, dayPlan, type Lying, newProblems, openedWith } from '../../record/writing/day-plan.ts';
import { dayAddedText } from '../../views/day-added.ts';
import { countText, problemText } from '../../views/problem-text.ts';

/** A plan that nothing is wrong with, or why there is none, a sentence each. */
export function plannedDay(lying: Lying, opened: Opened, day: Day, added: Added): DayPlan | string[] {
  const plan = dayPlan(lying, day, added);
  if (typeof plan === 'string') return [plan];
  const would = openedWith(lying, [plan]);
  const errors = newProblems(opened.problems, would.problems).filter(({ severity }) => severity === 'error');
  return errors.length === 0 ? plan : errors.map(({ reason, mend }) => (mend ? `${reason} ${mend}` : reason));
}

/** Writes the plan. What was written and what it did, or a sentence when somebody else wrote in the meantime. */
export async function writeDay(
  root: string,
  plan: DayPlan,
  opened: Opened,
): Promise<{ said: string } | { refused: string }> {
  const { file, before, text } = plan;
  if ((await replaceText(join(root, file), before, text)) === 'changed') {
    return {
      refused: `${file} was changed by somebody else in the meantime, so nothing was written. Run it again.`,
    };
  }
  const after = await openFolder(root);
  const own = after.problems.filter(({ place }) => place.file === file);
  return {
    said: [
      before === undefined ? `Written: ${file}, which is new.` : `Added to ${file}.`,
      ...(opened.record && after.record ? [dayAddedText(opened.record, after.record)] : []),
      ...own.map(problemText),
      countText(after.problems, after.read),
    ].join('\n'),
  };
}
