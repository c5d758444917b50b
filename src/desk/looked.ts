// What a form would come to, before anything is written: the sums, the forecast, what is wrong, and the difference.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { Opened } from '../record/open.ts';
import type { CarRecord } from '../record/record.ts';
import { type DayPlan, type Lying, newProblems, openedWith } from '../record/writing/day-plan.ts';
import { lineProblems } from '../record/writing/line-problems.ts';
import { dayTotals } from '../rollup/day-totals.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { dayAddedText } from '../views/day-added.ts';
import { forecastOf, forecastSentence } from '../views/forecast.ts';
import { lineDifference } from '../views/line-difference.ts';
import { plain } from '../views/live/said.ts';
import type { Form, Looked } from './browser/told.ts';
import { asValue, isBlank } from './entry-after.ts';
import type { Now, RecordAt } from './lying.ts';
import { plansFor } from './plans.ts';
import { signOf } from './sign.ts';

const NOTHING: Looked = { lines: [], others: [], errors: 1, sums: [], files: [], sign: '' };

/** What was seen: with `plans` it may be written, where `errors` is 0; `would` is the record with what isn’t yet. */
export type Seen = { told: Looked; plans: DayPlan[]; lying: Lying; would?: Opened };

/** Looks at a form as the record lies now. Asked again of the same, it gives what it saw. */
export async function looked(at: RecordAt, form: Form): Promise<Seen> {
  const now = await at.now();
  const of = `${now.sign} ${signOf(JSON.stringify(form))}`;
  const last = lastSeen.get(at);
  if (last?.of === of) return last.seen;
  const seen = look(at, form, now);
  lastSeen.set(at, { of, seen });
  return seen;
}

const lastSeen = new WeakMap<RecordAt, { of: string; seen: Seen }>();

function look(at: RecordAt, form: Form, { lying, opened }: Now): Seen {
  const { record } = opened;
  if (!record) return { told: { ...NOTHING, others: [CLOSED] }, plans: [], lying };
  const planned = plansFor(lying, form, at.given, signOf);
  const lines = wrongLines(form, record);
  if ('refused' in planned)
    return { told: { ...NOTHING, lines, others: [planned.refused] }, plans: [], lying };
  if ('conflict' in planned)
    return { told: { ...NOTHING, lines, conflict: planned.conflict }, plans: [], lying };
  const { plans } = planned;
  const would = plans.length === 0 ? opened : openedWith(lying, plans, at.read);
  const own = new Set(plans.map(({ file }) => file));
  const fresh = newProblems(opened.problems, would.problems);
  const said = new Set(lines.flatMap(({ says }) => says));
  // A caution about another file is for check: it may only count the days that went by.
  const others = fresh
    .filter(({ place, severity }) => severity === 'error' || own.has(place.file))
    .map(({ reason, mend, place, severity }) => ({
      says: mend ? `${reason} ${mend}` : reason,
      in: own.has(place.file) ? '' : `${place.file}: `,
      severity,
    }))
    .filter(({ says }) => !said.has(says))
    .map(({ says, in: where, severity }) => `${where}${severity === 'warning' ? 'Caution: ' : ''}${says}`);
  return {
    told: {
      lines,
      others,
      errors: lines.length + fresh.filter(({ severity }) => severity === 'error').length,
      sums: would.record ? sumsOf(form, record, would.record) : [],
      files: plans.map(({ file, before, text }) => ({
        file,
        difference: lineDifference(before ?? '', text),
      })),
      sign: signOf(JSON.stringify(plans)),
    },
    plans,
    lying,
    would,
  };
}

const CLOSED = 'The record can’t be opened; npm run check says why.';

/** Lines that were filled in and aren’t right yet. What stood there already is check’s to tell. */
function wrongLines({ lists }: Form, record: CarRecord): Looked['lines'] {
  return Object.entries(lists).flatMap(([list, lines]) =>
    lines.flatMap(({ at, line }, n) => {
      if (at !== undefined || isBlank(line)) return [];
      const says = lineProblems(list, asValue(list, line), record);
      return says.length > 0 ? [{ list, n, says }] : [];
    }),
  );
}

/** The day’s own sum, what it adds to the record, and where the forecast stands then. */
function sumsOf({ entry }: Form, before: CarRecord, after: CarRecord): string[] {
  const rollup = rollUp(after);
  const day = dayTotals(rollup).get(entry)?.all;
  const own = day
    ? `The day: ${minutesText(day.minutes)}, ${moneyText(day.charged, after.currency)} charged.`
    : 'The day: no hours and no bills yet.';
  const added = before === after ? [] : [dayAddedText(before, after)];
  return [own, ...added, plain(forecastSentence(forecastOf(after, rollup), after))];
}
