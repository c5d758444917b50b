// What a day's page shows: the words, the hours, the bills, what was measured and kept, the pictures.
import { shortDayText, weekday } from '../../figures/days.ts';
import { minutesText } from '../../figures/hours.ts';
import { amountText, moneyText } from '../../figures/money-text.ts';
import type { Body } from '../../record/body.ts';
import { once } from '../../record/once.ts';
import type { CarRecord, Entry } from '../../record/record.ts';
import type { Rollup, Total } from '../../rollup/cost-lines.ts';
import type { DayTotal } from '../../rollup/day-totals.ts';
import type { Sees } from '../audience.ts';
import { type Caution, cautionsOf } from '../cautions.ts';
import {
  type Aside,
  asidesOf,
  dayOpening,
  dayTotals,
  entryTitle,
  goodsOf,
  hoursWords,
  partsOf,
  workersOf,
} from '../day.ts';
import { type WhyPart, whyOfDay } from '../day-why.ts';
import type { Linked } from '../fabric.ts';
import { hazardsOfDay, leadOnLongDays } from '../hazards.ts';
import { fromLines, KIND } from '../line-text.ts';
import { type BriefLine, briefLines } from '../lines.ts';
import { page } from '../links.ts';
import { type Names, namesOf } from '../names.ts';
import { type Photos, type Shot, shotsOf } from '../photos.ts';

/** Hours as a table, a row for each line; amounts are `no charge` where there is none. */
type HoursShown = {
  rows: { by: string; what: string; work: string; time: string; charged: string }[];
  time: string;
  charged: string;
  from: string;
};
/** A bill of the day; `label` names it for who can't see it. */
type BillShown = {
  title: string;
  label: string;
  rows: { what: string; kind: string; charged: string }[];
  charged: string;
  from: string;
};
/** What the day comes to; `charged` is the foot of its lines. */
type SumShown = { opening: string; sum: string; from: string; lines: BriefLine[]; charged: string };

export type DayShown = {
  path: string;
  title: string;
  workers: string[];
  /** All time of the day; empty where there is none. */
  time: string;
  parts: Linked[];
  body: Body;
  why: WhyPart[];
  hours?: HoursShown;
  bills: BillShown[];
  sum?: SumShown;
  asides: Aside[];
  cautions: Caution[];
  more: string[];
  shots: readonly Shot[];
  before: Linked | undefined;
  after: Linked | undefined;
};

export function dayShown(
  entry: Entry,
  { record, rollup, photos }: { record: CarRecord; rollup: Rollup; photos: Photos },
  sees: Sees,
): DayShown {
  const names = namesOf(record);
  const total = dayTotals(rollup).get(entry.id);
  const at = placesOf(record).get(entry) ?? 0;
  const hours = total && total.labour.lines.length > 0 ? hoursShown(total.labour, record, names) : undefined;
  const sum = sees.money && total && total.all.lines.length > 0 ? sumShown(total, record) : undefined;
  return {
    path: page.day(entry.id),
    title: entryTitle(entry),
    workers: workersOf(entry, record),
    time: total && total.all.minutes > 0 ? minutesText(total.all.minutes) : '',
    parts: partsOf(entry).map((part) => ({ text: names.part(part), to: page.part(part) })),
    body: entry.body,
    why: whyOfDay(entry, record),
    ...(hours && { hours }),
    bills: sees.money ? (total?.bills ?? []).map((bill) => billShown(bill, record, names)) : [],
    ...(sum && { sum }),
    asides: [...(sees.money ? [] : goodsOf(entry, record)), ...asidesOf(entry, record)],
    cautions: cautionsOf(hazardsOfDay(entry, record)),
    more: leadOnLongDays(entry, record),
    shots: shotsOf(entry, photos),
    before: turn(record.entries[at - 1]),
    after: turn(record.entries[at + 1]),
  };
}

const placesOf = once(({ entries }: CarRecord) => new Map(entries.map((entry, at) => [entry, at])));

function hoursShown({ lines, minutes, charged }: Total, { currency }: CarRecord, names: Names): HoursShown {
  return {
    rows: lines.map((line) => ({
      by: names.initials(line.person),
      what: hoursWords(line, names),
      work: line.work ?? '',
      time: minutesText(line.minutes ?? 0),
      charged: line.noCharge ? 'no charge' : amountText(line.charged, currency),
    })),
    time: minutesText(minutes),
    charged: amountText(charged, currency),
    from: fromLines(lines.length),
  };
}

function billShown(
  { vendor, bill, total }: DayTotal['bills'][number],
  { currency }: CarRecord,
  names: Names,
): BillShown {
  return {
    title: [names.vendor(vendor), ...(bill ? [`bill ${bill}`] : [])].join(', '),
    label: `${names.vendor(vendor)} ${bill ?? ''}`,
    rows: total.lines.map((line) => ({
      what: [
        line.text,
        ...(line.paidByOwner ? ['(paid by the owner)'] : []),
        ...(line.workedOut ? ['(worked out: the bill is silent)'] : []),
      ].join(' '),
      kind: KIND[line.kind],
      charged: amountText(line.charged, currency),
    })),
    charged: amountText(total.charged, currency),
    from: fromLines(total.lines.length),
  };
}

function sumShown(total: DayTotal, record: CarRecord): SumShown {
  const { currency } = record;
  const { lines, charged } = total.all;
  return {
    opening: dayOpening(total, currency),
    sum: moneyText(charged, currency),
    from: fromLines(lines.length),
    lines: briefLines(lines, record),
    charged: amountText(charged, currency),
  };
}

const turn = (entry: Entry | undefined): Linked | undefined =>
  entry && { text: `${weekday(entry.day)}, ${shortDayText(entry.day)}`, to: page.day(entry.id) };
