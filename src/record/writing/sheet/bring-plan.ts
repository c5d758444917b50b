// What bringing lines in would do to the entries of their days, before anything is written. A day that would be wrong
// then is left out with its rows, and the others go on.
import type { Day } from '../../../figures/days.ts';
import { kindOf, type Opened } from '../../open.ts';
import type { Problem } from '../../place.ts';
import type { Added } from '../add-to-entry.ts';
import { type DayPlan, dayPlan, type Lying, newProblems, openedWith } from '../day-plan.ts';
import type { Refused, SheetLine } from './rows.ts';

/** Entries to be written with the rows that they get, and the rows of days that can’t be. */
export type BringPlan = { days: { day: Day; plan: DayPlan; lines: SheetLine[] }[]; refused: Refused[] };

export function bringPlan(lying: Lying, opened: Opened, lines: readonly SheetLine[]): BringPlan {
  const refused: Refused[] = [];
  const byDay = [...Map.groupBy(lines, ({ day }) => day)].sort(([a], [b]) => (a < b ? -1 : 1));
  let days: BringPlan['days'] = [];
  const files = [...lying.files];
  for (const [day, own] of byDay) {
    const plan = dayPlan({ files }, day, addedOf(own));
    if (typeof plan === 'string') refused.push(...own.map(({ row }) => ({ row, why: plan })));
    else {
      days.push({ day, plan, lines: own });
      // The next new entry lies where this one will.
      if (plan.before === undefined) files.push({ file: plan.file, text: plan.text });
    }
  }
  // Without one day another may be wrong, such as a return without its bill: once more until none is.
  for (;;) {
    const wrong = wrongFiles(
      lying,
      opened,
      days.map(({ plan }) => plan),
    );
    if (wrong.size === 0) return { days, refused: refused.sort((a, b) => a.row - b.row) };
    for (const { plan, lines: own } of days) {
      const why = wrong.get(plan.file);
      if (why !== undefined) refused.push(...own.map(({ row }) => ({ row, why })));
    }
    days = days.filter(({ plan }) => !wrong.has(plan.file));
  }
}

/** Who worked stands above the hours of a day where they are all one person’s. */
function addedOf(lines: readonly SheetLine[]): Added {
  const people = new Set(lines.flatMap(({ list, line }) => (list === 'hours' ? [line.by] : [])));
  const [only] = people;
  const by = people.size === 1 && typeof only === 'string' ? only : undefined;
  const ofList = (list: SheetLine['list']) =>
    lines
      .filter((one) => one.list === list)
      .map(({ line }) => (by === undefined || list !== 'hours' ? line : { ...line, by: undefined }));
  const lists = (['hours', 'bought', 'outside'] as const)
    .map((list) => [list, ofList(list)] as const)
    .filter(([, own]) => own.length > 0);
  return { lists: Object.fromEntries(lists), ...(by === undefined ? {} : { by }) };
}

/** Of each planned file, what would be wrong that isn’t now. What can’t be laid to one of them stops them all. */
function wrongFiles(lying: Lying, opened: Opened, plans: readonly DayPlan[]): Map<string, string> {
  if (plans.length === 0) return new Map();
  const errors = newProblems(opened.problems, openedWith(lying, plans).problems).filter(
    ({ severity }) => severity === 'error',
  );
  const own = new Set(plans.map(({ file }) => file));
  const wrong = new Map<string, string>();
  for (const problem of errors) {
    const place = [problem.place, ...(problem.related ?? [])].find(({ file }) => own.has(file));
    for (const file of place ? [place.file] : own) if (!wrong.has(file)) wrong.set(file, sentence(problem));
  }
  return wrong;
}

const sentence = ({ reason, mend, place }: Problem) =>
  `${kindOf(place.file) === 'entry' ? `In ${place.file} it would be wrong: ` : ''}${mend ? `${reason} ${mend}` : reason}`;
