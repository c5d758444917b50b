// What the page of a month shows: its days in a list, and what they come to.
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../../rollup/cost-lines.ts';
import { type DayItem, dayItems, monthsOfDays } from '../days.ts';
import type { Linked } from '../fabric.ts';
import { page } from '../links.ts';
import type { Photos } from '../photos.ts';

export type MonthShown = {
  path: string;
  title: string;
  time: string;
  charged: string;
  days: DayItem[];
  before: Linked | undefined;
  after: Linked | undefined;
};

/** Nothing for a month without a day. */
export function monthShown(
  month: string,
  { record, rollup, photos }: { record: CarRecord; rollup: Rollup; photos: Photos },
): MonthShown | undefined {
  const months = monthsOfDays(record, rollup);
  const at = months.findIndex((one) => one.month === month);
  const here = months[at];
  if (!here) return undefined;
  const within = new Set(here.entries.map(({ id }) => id));
  const turn = (to: (typeof months)[number] | undefined): Linked | undefined =>
    to && { text: to.title, to: page.month(to.month) };
  return {
    path: page.month(month),
    title: here.title,
    time: here.time,
    charged: here.charged,
    days: dayItems(record, rollup, photos).filter(({ entry }) => within.has(entry)),
    before: turn(months[at - 1]),
    after: turn(months[at + 1]),
  };
}
