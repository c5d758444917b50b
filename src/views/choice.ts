// The options of a choice side by side, each line as it was written.
import type { Currency } from '../figures/currency.ts';
import { moneyText } from '../figures/money-text.ts';
import type { Range } from '../figures/ranges.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord, Choice, Option } from '../record/record.ts';
import { optionName } from './choices.ts';
import { type Names, namesOf } from './names.ts';
import { words } from './parts.ts';
import { daysRangeText, hoursRangeText, moneyRangeText } from './range-text.ts';

/** A figure as written; a range is an estimate, one figure alone is what was named. */
export type Figure = { before: string; text: string; estimate: boolean };

/** One thing that an option says: words, its figures, and what to beware of. */
export type Saying = { text: string; figures: Figure[]; care: string };

/** A row of the table: a saying or several for each option; an option that says nothing has an empty cell. */
export type OptionRow = { head: string; cells: Saying[][] };

export function optionRows(choice: Choice, record: CarRecord): OptionRow[] {
  const { options } = choice;
  const names = namesOf(record);
  const rows: [string, (option: Option) => Saying[]][] = [
    ['Way', ({ way }) => [said(words(way))]],
    ['Work', ({ lines }) => lines.flatMap((line) => workOf(line, record.currency))],
    ['To buy', ({ lines }) => lines.flatMap((line) => buyOf(line, record.currency, names))],
    [
      'Fixed price',
      ({ 'fixed-price': price }) => (price === undefined ? [] : [said(moneyText(price, record.currency))]),
    ],
    ['Wait', ({ wait }) => [wait ? said('', figure('', wait, daysRangeText)) : said('none')]],
    ['Original kept', ({ keeps }) => (keeps === undefined ? [] : [said(shareText(keeps))])],
    ['Can fail', (option) => failOf(option, options)],
    ['Mark', ({ mark }) => (mark ? [said(mark)] : [])],
    ['For', ({ for: reasons = [] }) => reasons.map((text) => said(text))],
    ['Against', ({ against = [] }) => against.map((text) => said(text))],
  ];
  return rows
    .map(([head, of]) => ({ head, cells: options.map(of) }))
    .filter(({ cells }) => cells.some((cell) => cell.length > 0));
}

type Line = Option['lines'][number];

function workOf({ do: what, work, hours, spend, outside, hazards = [] }: Line, currency: Currency): Saying[] {
  if (what === undefined) return [];
  const figures = [
    ...figure('', hours, hoursRangeText),
    ...figure('to buy ', spend, (range) => moneyRangeText(range, currency)),
    ...figure('outside ', outside, (range) => moneyRangeText(range, currency)),
  ];
  return [
    {
      text: work ? `${what} (${words(work)})` : what,
      figures,
      care: hazards.length > 0 ? `care: ${hazards.map(words).join(', ')}` : '',
    },
  ];
}

function buyOf({ buy, price, freight, tax, from }: Line, currency: Currency, names: Names): Saying[] {
  if (buy === undefined) return [];
  const money = (range: Range) => moneyRangeText(range, currency);
  return [
    said(boughtFrom(buy, from, names), [
      ...figure('', price, money),
      ...figure('freight ', freight, money),
      ...(tax === undefined ? [] : [{ before: 'tax ', text: shareText(tax), estimate: false }]),
    ]),
  ];
}

/** `Soft iron wire, from Millrace Metals`. */
export function boughtFrom(what: string, from: string | undefined, names: Names): string {
  return from ? `${what}, from ${names.vendor(from)}` : what;
}

function failOf({ 'can-fail': fail }: Option, options: readonly Option[]): Saying[] {
  if (!fail) return [said('no failure foreseen')];
  const next = options.find(({ option }) => option === fail.then);
  return [
    said(
      `A chance of ${shareText(fail.chance)}. By then ${shareText(fail.after)} of its cost is spent, and this follows: ${next ? optionName(next) : words(fail.then)}.`,
    ),
  ];
}

const said = (text: string, figures: Figure[] = []): Saying => ({ text, figures, care: '' });

function figure(before: string, range: Range | undefined, text: (range: Range) => string): Figure[] {
  return range ? [{ before, text: text(range), estimate: range.low !== range.high }] : [];
}
