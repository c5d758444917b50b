// The list of parts by group, and what a part's page shows.
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Choice, Part } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type PartState, partState, type placesOnDrawing } from './car.ts';
import { timeText } from './day.ts';
import { hoursRangeText, moneyRangeText } from './range-text.ts';
import { readingText } from './readings.ts';

/** Marks for the drawing: finished parts tinted, parts in hand hatched. */
export function marksOf(places: ReturnType<typeof placesOnDrawing>): Record<string, 'done' | 'hand'> {
  const marks: Record<string, 'done' | 'hand'> = {};
  for (const { at, state } of places) {
    if (state === 'done') marks[at] = 'done';
    if (state === 'in hand') marks[at] = 'hand';
  }
  return marks;
}

/** One part in the list. */
export type PartItem = { part: Part; found: string; state: PartState; time: string; charged: string };

/** Groups in the order in which the record first names them, with their sums. */
export function partGroups(record: CarRecord, rollup: Rollup) {
  const sums = new Map(rollup.tables.part.rows.map((row) => [row.key, row]));
  const groups = new Map(rollup.tables.group.rows.map((row) => [row.key, row]));
  return [...new Set(record.parts.map(({ group }) => group))].map((group) => ({
    group,
    time: timeText(groups.get(group)?.minutes ?? 0),
    charged: moneyText(groups.get(group)?.charged ?? 0, record.currency),
    items: record.parts
      .filter((part) => part.group === group)
      .map(
        (part): PartItem => ({
          part,
          found: part.found?.condition ?? 'not said',
          state: partState(part, rollup),
          time: timeText(sums.get(part.id)?.minutes ?? 0),
          charged: moneyText(sums.get(part.id)?.charged ?? 0, record.currency),
        }),
      ),
  }));
}

/** A planned line as its table shows it. */
export type PlannedRow = {
  line: string;
  text: string;
  work: string;
  planned: string;
  spend: string;
  soFar: string;
  state: string;
  after: string[];
  hazards: readonly string[];
};

export function plannedRows(part: Part, record: CarRecord, rollup: Rollup): PlannedRow[] {
  return (part.planned ?? []).map((line) => {
    const so = rollup.planned[`${part.id}/${line.line}`];
    const left = so?.left?.hours ? `${hoursRangeText(so.left.hours)} left` : undefined;
    const spend = [line.spend, line.outside].flatMap((range) =>
      range ? [moneyRangeText(range, record.currency)] : [],
    );
    return {
      line: line.line,
      text: line.do,
      work: line.work,
      planned: line.hours ? hoursRangeText(line.hours) : 'no hours',
      spend: spend.join('; outside '),
      soFar: timeText(so?.minutes ?? 0) || (so?.begun ? 'bills only' : 'not begun'),
      state: so?.finished ? 'finished' : (left ?? (so?.begun ? 'in hand' : 'waiting')),
      after: [...(line.after ?? [])],
      hazards: line.hazards ?? [],
    };
  });
}

/** What the part is made of now: the newest word of log or choice, else what its own page says. */
export function fabricNow(part: Part, record: CarRecord): string | undefined {
  const logged = record.entries.flatMap(({ fabric = [] }) => fabric).filter((line) => line.part === part.id);
  const last = logged.at(-1);
  if (last) return words(last.now) + (last.note ? ` (${last.note})` : '');
  const chosen = choicesOf(part, record).flatMap(({ decided, options }) => {
    const way = options.find(({ option }) => option === decided?.option)?.way;
    return way && MADE[way] ? [MADE[way]] : [];
  });
  return chosen.at(-1) ?? (part['fabric-now'] ? words(part['fabric-now']) : undefined);
}

const MADE: Partial<Record<string, string>> = {
  repair: 'original, repaired',
  reproduction: 'reproduction',
  'used-original': 'period part',
  'new-made': 'new made',
};

export const words = (id: string) => id.replaceAll('-', ' ');

/** The choices that a part is in. */
export function choicesOf(part: Part, record: CarRecord): Choice[] {
  return record.choices.filter((choice) => choice.part.includes(part.id));
}

/** A part's days: time and money of each entry that has a line for it. */
export function daysOfPart(part: Part, record: CarRecord, rollup: Rollup) {
  const row = rollup.tables.part.rows.find(({ key }) => key === part.id);
  const entries = new Set((row?.lines ?? []).map(({ entry }) => entry));
  return record.entries.filter(({ id }) => entries.has(id));
}

/** Readings taken on a part, oldest first. */
export function readingsOfPart(part: Part, record: CarRecord) {
  return record.entries.flatMap((entry) =>
    (entry.measured ?? [])
      .filter((reading) => reading.part === part.id)
      .map((reading) => ({
        entry,
        kind: reading.kind,
        state: reading.state,
        text: readingText(reading, record.units),
        note: reading.note ?? '',
      })),
  );
}

/** Tags of what came off a part. */
export function marksOfPart(part: Part, record: CarRecord) {
  return record.entries.flatMap((entry) =>
    (entry.marks ?? []).filter((mark) => mark.part === part.id).map((mark) => ({ entry, mark })),
  );
}
