// A day's page: what was written, as tables; the sums come from the rollup.

import type { Currency } from '../figures/currency.ts';
import { dayText, shortDayText } from '../figures/days.ts';
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Entry } from '../record/record.ts';
import { lineName } from '../record/record.ts';
import type { CostLine } from '../rollup/cost-lines.ts';
import type { DayTotal } from '../rollup/day-totals.ts';
import { measuredBy } from '../rollup/measured.ts';
import { page } from './links.ts';
import { resultText } from './measured/result-text.ts';
import { drawnParts } from './measured.ts';
import { type Names, namesOf } from './names.ts';
import { hoursRangeText, moneyRangeText } from './range-text.ts';
import { readingText, thicknessText } from './readings.ts';

export { dayTotals } from '../rollup/day-totals.ts';

/**
 * A plain table of a day: a caption, heads, rows of text, and pages that tell more. `shop` marks what never leaves the
 * shop.
 */
export type Aside = {
  caption: string;
  heads: string[];
  rows: string[][];
  more?: { text: string; to: string }[];
  shop?: true;
};

/** Everything of a day that is not hours, bills, prose or pictures, in the order of the form. */
export function asidesOf(entry: Entry, record: CarRecord): Aside[] {
  const names = namesOf(record);
  const money = (amount: number | undefined) =>
    amount === undefined ? '' : moneyText(amount, record.currency);
  const { units } = record;
  return [
    table('Ordered', ['What', 'From', 'For', 'Price', 'Expected'], entry.ordered, (line) => [
      line.what,
      names.vendor(line.from),
      names.part(line.part) + (line.line ? `. ${names.line(lineName(line.line, line.part))}` : ''),
      money(line.price),
      day(line.expected),
    ]),
    table('Received', ['What', 'From', 'For', 'Price', 'Bill'], entry.received, (line) => [
      line.what,
      names.vendor(line.from),
      names.part(line.part),
      money(line.price),
      line.bill ?? '',
    ]),
    {
      ...table('Measured', ['Part', 'State', 'Reading', 'Comes to', 'Note'], entry.measured, (line) => {
        const measured = measuredBy(record, line);
        return [
          names.part(line.part),
          line.state,
          readingText(line, units),
          measured ? resultText(measured, units) : '',
          line.note ?? '',
        ];
      }),
      more: drawnOf(entry, record),
    },
    table('Pads', ['Mount', 'Stack', 'State'], entry.pads, (line) => [
      line.mount,
      line.stack.map((pad) => thicknessText(pad, units)).join(' + ') || 'none',
      line.state,
    ]),
    table('Marks', ['Tag', 'What', 'From where', 'Count', 'Kept', 'As'], entry.marks, (line) => [
      line.mark,
      line.what,
      line['from-where'] ?? names.part(line.part),
      String(line.count ?? ''),
      line.kept ?? '',
      line.as,
    ]),
    table('Sought', ['What', 'For', 'Asked', 'Outcome'], entry.sought, (line) => [
      line.what,
      names.part(line.part),
      (line.asked ?? []).join(', '),
      line.outcome ?? 'open',
    ]),
    table(
      'Finishes',
      ['Part', 'What', 'Product', 'Color', 'Mix', 'Coats', 'Where'],
      entry.finishes,
      (line) => [
        names.part(line.part),
        line.what,
        line.product ?? '',
        line.colour ?? '',
        line.mix ?? '',
        String(line.coats ?? ''),
        line.where ?? '',
      ],
    ),
    table('Tested', ['What', 'Part', 'From', 'To', 'Result', 'Note'], entry.tested, (line) => [
      line.what,
      names.part(line.part),
      day(line.since),
      day(line.until),
      line.result,
      line.note ?? '',
    ]),
    table('Finished', ['Part', 'Line'], entry.finished, (name) => [
      names.part(name.split('/')[0]),
      names.line(name),
    ]),
    table(
      'Left, as now thought',
      ['Part', 'Line', 'Hours', 'To buy'],
      // Who may not see the figures gets no empty line of them.
      entry.left?.filter(({ hours, spend }) => hours ?? spend),
      (line) => leftRow(line, names, record),
    ),
    table('Fabric', ['Part', 'Now', 'Note'], entry.fabric, (line) => [
      names.part(line.part),
      line.now.replace('-', ' '),
      line.note ?? '',
    ]),
    table('The owner’s word', ['What', 'Up to', 'How'], entry.agreed, (line) => [
      line.what,
      money(line.amount),
      line.how,
    ]),
    table('Paid by the owner', ['Amount', 'How'], entry.paid, (line) => [money(line.amount), line.how]),
    { ...table('For the shop only', ['Note'], entry['shop-only'], (text) => [text]), shop: true as const },
  ].filter(({ rows }) => rows.length > 0);
}

/** What was bought and what was done elsewhere, without what it cost. */
export function goodsOf(entry: Entry, record: CarRecord): Aside[] {
  const names = namesOf(record);
  const row = (line: {
    what: string;
    from: string;
    part?: string | undefined;
    count?: string | undefined;
  }) => [line.what, line.count ?? '', names.vendor(line.from), names.part(line.part)];
  const counted = (entry.bought ?? []).map(({ count, ...line }) => ({
    ...line,
    ...(count !== undefined && { count: String(count) }),
  }));
  return [
    table('Bought', ['What', 'Count', 'From', 'For'], counted, row),
    table('Done outside the shop', ['What', 'Count', 'From', 'For'], entry.outside, row),
  ].filter(({ rows }) => rows.length > 0);
}

/** Pages on which the day’s readings are drawn to scale. */
function drawnOf({ measured = [] }: Entry, record: CarRecord): { text: string; to: string }[] {
  const parts = new Set(measured.map(({ part }) => part));
  return drawnParts(record)
    .filter((part) => parts.has(part))
    .map((part) => ({ text: `${namesOf(record).part(part)}, drawn to scale`, to: page.measured(part) }));
}

/** The heading of an entry; a second one of a day says so. */
export function entryTitle(entry: Entry): string {
  const letter = entry.id.slice(10).replace('-', '');
  return dayText(entry.day) + (letter ? `, entry ${letter}` : '');
}

/** Names of everybody who worked in an entry. */
export function workersOf(entry: Entry, record: CarRecord): string[] {
  const names = namesOf(record);
  const ids = [...(entry.by ? [entry.by] : []), ...(entry.hours ?? []).flatMap(({ by }) => (by ? [by] : []))];
  return [...new Set(ids)].map(names.person);
}

/** The parts an entry is about, in order of mention. */
export function partsOf(entry: Entry): string[] {
  const lists = [entry.hours, entry.bought, entry.outside, entry.measured, entry.photos, entry.finishes];
  return [...new Set(lists.flatMap((list) => (list ?? []).flatMap(({ part }) => (part ? [part] : []))))];
}

/** `With $34.13 of shop materials and $1.20 of tax, the day comes to`. */
export function dayOpening({ materials, tax }: DayTotal, currency: Currency): string {
  const more = [
    materials.charged === 0 ? '' : `${moneyText(materials.charged, currency)} of shop materials`,
    tax.charged === 0 ? '' : `${moneyText(tax.charged, currency)} of tax`,
  ].filter((text) => text !== '');
  return more.length === 0 ? 'The day comes to' : `With ${more.join(' and ')}, the day comes to`;
}

/** `Left rear fender. Lower edge: weld the new strip (no charge: our own mistake)`. */
export function hoursWords(line: CostLine, names: Names): string {
  const planned = line.line ? `. ${names.line(line.line)}` : '';
  const note = line.text === line.work ? '' : `: ${line.text}`;
  const free = line.noCharge ? ` (no charge: ${line.noCharge})` : '';
  return `${names.part(line.part)}${planned}${note}${free}`;
}

/** `4 h 15 m`, or nothing for no time. */
export const timeText = (minutes: number) => (minutes === 0 ? '' : minutesText(minutes));

function leftRow(line: NonNullable<Entry['left']>[number], names: Names, record: CarRecord): string[] {
  const name = lineName(line.line, undefined);
  return [
    names.part(name.split('/')[0]),
    names.line(name),
    line.hours ? hoursRangeText(line.hours) : '',
    line.spend ? moneyRangeText(line.spend, record.currency) : '',
  ];
}

const day = (written: string | undefined) => (written === undefined ? '' : shortDayText(written));

/** A table without the columns in which nothing stands. */
function table<L>(
  caption: string,
  heads: string[],
  lines: readonly L[] | undefined,
  row: (line: L) => string[],
): Aside {
  if (!lines?.length) return { caption, heads: [], rows: [] };
  const rows = lines.map(row);
  const used = heads.map((_, i) => rows.some((cells) => cells[i] !== ''));
  const kept = (cells: string[]) => cells.filter((_, i) => used[i]);
  return { caption, heads: kept(heads), rows: rows.map(kept) };
}
