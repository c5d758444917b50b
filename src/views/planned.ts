// The planned work of a part: each line's range as it was written beside what it has taken so far.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Part } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { hazardsOfLine } from './cautions.ts';
import { datedText } from './dated.ts';
import { namesOf } from './names.ts';
import { words } from './parts.ts';
import { hoursRangeText, moneyRangeText } from './range-text.ts';

/** Places along the bar of a line, in units of its drawing. */
export type PlannedBar = { low: number; likely: number; high: number; done: number; says: string };

/** A planned line as its table shows it. `left` is in italics when it is an estimate. */
export type PlannedRow = {
  line: string;
  text: string;
  notes: string[];
  hours: string;
  spend: string[];
  soFar: string;
  spent: string;
  left: { text: string; spend?: string; note?: string; estimate: boolean };
  finished: boolean;
  bar: PlannedBar | undefined;
};

/** The table, with the ticks of the one scale that all its bars share. */
export type PlannedTable = { rows: PlannedRow[]; width: number; ticks: { at: number; text: string }[] };

const WIDTH = 200;
const EDGE = 4;

export function plannedTable(part: Part, record: CarRecord, rollup: Rollup): PlannedTable {
  const planned = part.planned ?? [];
  const so = (line: string) => rollup.planned[`${part.id}/${line}`];
  const most = Math.max(
    60,
    ...planned.map(({ line, hours }) => Math.max(hours?.high ?? 0, so(line)?.minutes ?? 0)),
  );
  const step = STEPS.find((hours) => hours * 60 * 5 >= most) ?? Math.ceil(most / 300);
  const count = Math.ceil(most / 60 / step);
  const end = count * step * 60;
  const at = (minutes: number) =>
    Math.round((EDGE + (Math.max(0, minutes) / end) * (WIDTH - 2 * EDGE)) * 10) / 10;
  return {
    rows: planned.map((line) => rowOf(line, part, record, so(line.line), at)),
    width: WIDTH,
    ticks: Array.from({ length: count + 1 }, (_, i) => ({ at: at(i * step * 60), text: String(i * step) })),
  };
}

/** Hours between ticks. */
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500];

type Line = NonNullable<Part['planned']>[number];
type So = Rollup['planned'][string] | undefined;

function rowOf(
  line: Line,
  part: Part,
  record: CarRecord,
  so: So,
  at: (minutes: number) => number,
): PlannedRow {
  const { hours, spend, outside } = line;
  const minutes = so?.minutes ?? 0;
  const money = (range: typeof spend, what: string) =>
    range ? [`${what} ${moneyRangeText(range, record.currency)}`] : [];
  return {
    line: line.line,
    text: line.do,
    notes: notesOf(line, part, record),
    hours: hours ? hoursRangeText(hours) : '',
    spend: [...money(spend, 'to buy'), ...money(outside, 'outside')],
    soFar: minutes === 0 ? '' : minutesText(minutes),
    spent: so && so.lines.length > 0 ? moneyText(so.charged, record.currency) : '',
    left: leftOf(so, record),
    finished: so?.finished !== undefined,
    bar: hours && {
      low: at(hours.low),
      likely: at(hours.likely),
      high: at(hours.high),
      done: at(minutes),
      says: `planned ${hoursRangeText(hours)}; ${minutes === 0 ? 'nothing' : minutesText(minutes)} so far`,
    },
  };
}

/** Finished and when, what the writer last thought left, or that it waits. */
function leftOf(so: So, { currency }: CarRecord): PlannedRow['left'] {
  if (so?.finished) return { text: 'finished', note: datedText(so.finished), estimate: false };
  if (so?.left) {
    const { hours, spend } = so.left;
    const days = new Set([hours?.on, spend?.on].filter((day) => day !== undefined));
    return {
      text: hours ? hoursRangeText(hours.range) : '',
      ...(spend && { spend: `to buy ${moneyRangeText(spend.range, currency)}` }),
      note: `written ${[...days].sort().map(datedText).join(' and ')}`,
      estimate: true,
    };
  }
  return { text: so?.begun ? 'in hand' : 'not begun', estimate: false };
}

/** Kind of work, a price fixed beforehand, what must come first, and what can hurt. */
function notesOf(line: Line, part: Part, record: CarRecord): string[] {
  const { work, after = [], 'fixed-price': price } = line;
  const hazards = hazardsOfLine(line);
  const names = namesOf(record);
  const before = after.map((name) => {
    const [other, line] = name.includes('/') ? name.split('/') : [part.id, name];
    return other === part.id ? words(line ?? '') : `${names.part(other)}: ${words(line ?? '')}`;
  });
  return [
    words(work),
    ...(price === undefined ? [] : [`at a fixed price of ${moneyText(price, record.currency)}`]),
    ...(before.length > 0 ? [`after ${before.join(', ')}`] : []),
    ...(hazards.length > 0 ? [`care: ${hazards.map(words).join(', ')}`] : []),
  ];
}
