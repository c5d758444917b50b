// What can hurt in the work of a day or of a part: what its planned lines name, its kinds of work, its words.

import { minutesText } from '../figures/hours.ts';
import { leadLimit } from '../measure/lead-limit.ts';
import { personsDays } from '../record/checks/hours-of-a-day.ts';
import { plannedLines } from '../record/checks/planned-lines.ts';
import { hazardsInWords } from '../record/hazard-words.ts';
import { hazardsOfLine } from '../record/hazards.ts';
import { once, onceEach } from '../record/once.ts';
import { type CarRecord, type Entry, lineName, type Part } from '../record/record.ts';
import { namesOf } from './names.ts';

/** Hazards of the work planned on a part, done or not. */
export function hazardsOfPart({ planned = [] }: Part): string[] {
  return planned.flatMap(hazardsOfLine);
}

/** Hazards of a day's hours and finishes. Where no plan names a hazard, the words of the note are asked. */
export const hazardsOfDay = onceEach((entry: Entry, record: CarRecord): readonly string[] => {
  const planned = plannedOf(record);
  const hours = (entry.hours ?? []).flatMap(({ line, part, work, note = '' }) => {
    const plan = line === undefined ? undefined : planned.get(lineName(line, part))?.line;
    const named = plan?.hazards ?? hazardsInWords(note);
    return [...hazardsOfLine({ work, hazards: named }), ...(plan ? hazardsOfLine(plan) : [])];
  });
  const finishes = (entry.finishes ?? []).flatMap(({ what }) =>
    FINISH.flatMap(([word, hazard]) => (word.test(what) ? [hazard] : [])),
  );
  return [...hours, ...finishes];
});

/** What the law's limit for lead comes to for whoever worked more than eight hours on a day with lead. */
export function leadOnLongDays(entry: Entry, record: CarRecord): string[] {
  if (!hazardsOfDay(entry, record).includes('lead')) return [];
  const names = namesOf(record);
  return daysOf(record)
    .filter(({ day, minutes }) => day === entry.day && minutes > 480)
    .map(
      ({ person, minutes }) =>
        `${names.person(person)} worked ${minutesText(minutes)} this day: for so long a day the limit for lead is ${Math.floor(leadLimit(minutes))} µg/m³.`,
    );
}

const FINISH: readonly [RegExp, string][] = [
  [/\blead\b/i, 'lead'],
  [/\b(?:paint|primer|lacquer|clear ?coat)\b/i, 'spray'],
];

const plannedOf = once(plannedLines);
const daysOf = once(personsDays);
