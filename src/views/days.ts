// Lists of days: by month, and the newest on the front page.
import { monthOf, monthText } from '../figures/days.ts';
import { moneyText } from '../figures/money-text.ts';
import { once } from '../record/once.ts';
import type { CarRecord, Entry } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type DayTotal, dayTotals } from '../rollup/day-totals.ts';
import { entryTitle, timeText, workersOf } from './day.ts';
import { type Photos, type Shot, shotsOf } from './photos.ts';
import { firstWords } from './prose.ts';

/** One day in a list. */
export type DayItem = {
  entry: string;
  title: string;
  words: string;
  shot: Shot | undefined;
  who: string;
  time: string;
  charged: string;
};

/** Every entry as an item of a list, in order of day. */
export function dayItems(record: CarRecord, rollup: Rollup, photos: Photos): readonly DayItem[] {
  return itemsOnce(record)(rollup)(photos);
}

/** Worked out once: the page of each month asks for its own. */
const itemsOnce = once((record: CarRecord) =>
  once((rollup: Rollup) =>
    once((photos: Photos) => {
      const totals = dayTotals(rollup);
      return record.entries.map((entry) => item(entry, record, totals.get(entry.id), photos));
    }),
  ),
);

/** The months that have a day, oldest first, with their days and their sums. */
export function monthsOfDays(record: CarRecord, rollup: Rollup) {
  return monthsOnce(record)(rollup);
}

const monthsOnce = once((record: CarRecord) => once((rollup: Rollup) => months(record, rollup)));

function months(record: CarRecord, rollup: Rollup) {
  const table = new Map(rollup.tables.month.rows.map((row) => [row.key, row]));
  return [...Map.groupBy(record.entries, ({ day }) => monthOf(day))].map(([month, entries]) => ({
    month,
    title: monthText(month),
    entries,
    time: timeText(table.get(month)?.minutes ?? 0),
    charged: moneyText(table.get(month)?.charged ?? 0, record.currency),
  }));
}

function item(entry: Entry, record: CarRecord, total: DayTotal | undefined, photos: Photos): DayItem {
  return {
    entry: entry.id,
    title: entryTitle(entry),
    words: firstWords(entry.body.tree),
    shot: shotsOf(entry, photos)[0],
    who: workersOf(entry, record).join(', '),
    time: timeText(total?.all.minutes ?? 0),
    charged: total && total.all.charged !== 0 ? moneyText(total.all.charged, record.currency) : '',
  };
}
