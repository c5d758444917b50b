// The order of work in words: what can be done now, and what waits for a delivery, for work elsewhere, for the
// owner's word, for other lines.
import { type Day, daysBetween } from '../figures/days.ts';
import { certain } from '../figures/ranges.ts';
import type { CarRecord } from '../record/record.ts';
import type { LineInOrder, OpenOrder, OrderOfWork, WaitsFor } from '../rollup/order-of-work.ts';
import { hazardsOfLine } from './cautions.ts';
import { datedText } from './dated.ts';
import { page } from './links.ts';
import { type Names, namesOf } from './names.ts';
import { hoursRangeText } from './range-text.ts';

export { orderOfWork } from '../rollup/order-of-work.ts';

/** Words, with the page that tells more where there is one. */
export type Said = { text: string; to?: string; note?: string };

/** A line of a table of the page. `left` are the likely hours, an estimate, empty where none were planned. */
export type OrderRow = {
  part: Said;
  text: string;
  left: string;
  longest: boolean;
  waits: Said[];
  also: string;
};

/** One reason to wait, or none, with its lines. */
export type OrderGroup = {
  key: WaitsFor['for'] | 'now';
  title: string;
  head: string;
  none: string;
  rows: OrderRow[];
};

/** Everything the page of the order of work says, as of a day. */
export type OrderPage = {
  opening: string;
  groups: OrderGroup[];
  otherOrders: Said[];
  /** The longest way: its hours in a sentence, its lines in another; empty where nothing is left. */
  longest: { hours: string; steps: string };
  circle: string;
  hazards: string[];
};

export function orderPage(order: OrderOfWork, record: CarRecord, today: Day): OrderPage {
  const told = { names: namesOf(record), record, today };
  const { lines, longest, otherOrders } = order;
  const onLongest = new Set(longest.lines);
  const now = lines.filter(({ state }) => state === 'now');
  const row = (line: LineInOrder, reason?: WaitsFor['for']): OrderRow => ({
    part: { text: told.names.part(line.part), to: page.part(line.part) },
    text: line.line.do,
    left: leftText(line),
    longest: onLongest.has(line.name),
    waits: line.waits.filter((waits) => waits.for === reason).map((waits) => saidOf(waits, told)),
    also: alsoOf(line, reason),
  });
  const looped = lines.filter(({ way }) => way === undefined).length;
  return {
    opening: openingText(now.length, lines.length - now.length),
    groups: GROUPS.map((group) => ({
      ...group,
      rows: (group.key === 'now'
        ? now
        : lines.filter(({ waits }) => waits.some((each) => each.for === group.key))
      ).map((line) => row(line, group.key === 'now' ? undefined : group.key)),
    })),
    otherOrders: otherOrders.map((each) => ({
      ...orderSaid(each, told),
      text: `${told.names.part(each.part)}: ${each.what}, from ${told.names.vendor(each.vendor)}`,
      ...(each.part !== undefined && { to: page.part(each.part) }),
    })),
    longest: longestText(order, told.names),
    circle:
      looped === 0
        ? ''
        : `${many(looped, 'line')} on a circle, or behind one, can never be begun: the page of problems says which.`,
    hazards: lines.flatMap(({ line }) => hazardsOfLine(line)),
  };
}

/** `34 h` left, likely; nothing where no hours were planned. */
export function leftText({ minutes, line }: LineInOrder): string {
  return line.hours || minutes > 0 ? hoursRangeText(certain(minutes)) : '';
}

type Told = { names: Names; record: CarRecord; today: Day };

const GROUPS: Omit<OrderGroup, 'rows'>[] = [
  { key: 'now', title: 'Can be done now', head: '', none: 'Nothing can be done now.' },
  { key: 'delivery', title: 'Waits for a delivery', head: 'Delivery', none: 'Nothing waits for a delivery.' },
  {
    key: 'outside',
    title: 'Waits for outside work',
    head: 'Outside work',
    none: 'Nothing waits for outside work.',
  },
  {
    key: 'word',
    title: 'Waits for the owner’s word',
    head: 'Question',
    none: 'Nothing waits for the owner’s word.',
  },
  { key: 'work', title: 'Waits for other work', head: 'After', none: 'Nothing waits for other work.' },
];

function openingText(now: number, waits: number): string {
  if (now + waits === 0) return 'Every planned line is finished.';
  const can = now === 0 ? 'No line can be done now' : `${many(now, 'line')} can be done now`;
  return `${can}, and ${waits === 0 ? 'none waits' : waits === 1 ? '1 waits' : `${waits} wait`}.`;
}

function saidOf(waits: WaitsFor, told: Told): Said {
  const { names, record, today } = told;
  if (waits.for === 'work') {
    const part = waits.line.slice(0, waits.line.indexOf('/'));
    return { text: `${names.part(part)}: ${names.line(waits.line)}`, to: page.part(part) };
  }
  if (waits.for !== 'word') return orderSaid(waits.order, told);
  const choice = record.choices.find(({ id }) => id === waits.choice);
  const needed = choice?.['needed-by'];
  return {
    text: choice?.question ?? waits.choice,
    to: page.choice(waits.choice),
    note: [
      ...(choice ? [`asked ${datedText(choice.asked)}`] : []),
      ...(needed === undefined ? [] : [`needed by ${datedText(needed)}${agoText(needed, today)}`]),
    ].join('; '),
  };
}

function orderSaid({ what, vendor, ordered, expected }: OpenOrder, { names, today }: Told): Said {
  const due =
    expected === undefined
      ? 'no day named'
      : `expected ${datedText(expected)}${daysBetween(expected, today) > 0 ? `, ${many(daysBetween(expected, today), 'day')} overdue` : ''}`;
  return { text: `${what}, from ${names.vendor(vendor)}`, note: `ordered ${datedText(ordered)}; ${due}` };
}

function agoText(day: Day, today: Day): string {
  const late = daysBetween(day, today);
  return late > 0 ? `, ${many(late, 'day')} ago` : '';
}

/** What else holds the line up, in few words. */
function alsoOf({ waits, begun }: LineInOrder, reason: WaitsFor['for'] | undefined): string {
  const others = new Set(waits.map((each) => each.for).filter((each) => each !== reason));
  const also = [...others].map((each) => ALSO[each]);
  return [
    ...(begun ? ['in hand'] : []),
    ...(also.length > 0 ? [`waits for ${also.join(' and ')} too`] : []),
  ].join('; ');
}

const ALSO: { [each in WaitsFor['for']]: string } = {
  delivery: 'a delivery',
  outside: 'outside work',
  word: 'the owner’s word',
  work: 'other work',
};

/** `The longest way through is 35 h.` and `Top irons: Fit the prop nuts (1 h), then Top: Pads and webbing (34 h).` */
function longestText({ lines, longest }: OrderOfWork, names: Names): OrderPage['longest'] {
  if (longest.lines.length === 0) return { hours: '', steps: '' };
  const of = new Map(lines.map((line) => [line.name, line]));
  const steps = longest.lines.flatMap((name) => {
    const line = of.get(name);
    return line ? [`${names.part(line.part)}: ${line.line.do} (${leftText(line) || 'no hours'})`] : [];
  });
  return {
    hours: `The longest way through is ${hoursRangeText(certain(longest.minutes))}.`,
    steps: `${steps.join(', then ')}.`,
  };
}

const many = (count: number, one: string) => `${count} ${count === 1 ? one : `${one}s`}`;
