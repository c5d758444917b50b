// What is left line by line, which of it makes the finish uncertain, and what holds it up.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { ChoiceAhead, Forecast, LineAhead } from '../rollup/ahead/forecast.ts';
import { type Holds, heldUp } from '../rollup/ahead/waits.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { orderOfWork } from '../rollup/order-of-work.ts';
import { optionName } from './choices.ts';
import { datedText } from './dated.ts';
import { about, type FigureTable, figure } from './figure-table.ts';
import { leftHours, percentText } from './forecast-words.ts';
import { page } from './links.ts';
import { hoursSpan, moneySpan } from './live/rounded.ts';
import { namesOf } from './names.ts';

/** A line or a choice that is left; `hours` and `money` run from P10 to P90 and are empty where nothing is. */
type Rest = {
  head: string;
  to: string;
  part: string;
  state: string;
  hours: string;
  money: string;
  share: number;
};

/** Every line in the order of the record, then choices; the foot is drawn, not added up. */
export function leftTable(forecast: Forecast, record: CarRecord): FigureTable {
  const { left } = forecast;
  const hours = hoursSpan(left.hours.p10, left.hours.p90);
  const money = moneySpan(left.money.p10, left.money.p90, record.currency);
  return {
    caption: 'Left, P10 – P90; the last row is drawn, not added up',
    head: 'Line',
    columns: [{ head: 'Hours' }, { head: `Money, ${record.currency.code}` }],
    rows: restOf(forecast, record).map((rest) => ({
      head: rest.head,
      to: rest.to,
      notes: [rest.part, rest.state],
      cells: [about(rest.hours), about(rest.money)],
    })),
    foot: { head: 'All', cells: [about(hours), about(money)] },
  };
}

/** The lines that carry most of the spread, five at the most, the widest first. */
export function widestTable(forecast: Forecast, record: CarRecord): FigureTable {
  const rows = restOf(forecast, record)
    .filter(({ share }) => share >= 0.005)
    .sort((a, b) => b.share - a.share)
    .slice(0, 5);
  return {
    caption: 'The lines that carry most of the spread',
    head: 'Line',
    columns: [{ head: 'Left, P10 – P90' }, { head: 'Of the spread' }],
    rows: rows.map(({ head, to, part, money, share }) => ({
      head,
      to,
      notes: [part],
      cells: [about(money), figure(percentText(share))],
    })),
  };
}

function restOf({ lines, choices }: Forecast, record: CarRecord): Rest[] {
  return [...lines.map((line) => lineRow(line, record)), ...choices.map((each) => choiceRow(each, record))];
}

function lineRow(line: LineAhead, record: CarRecord): Rest {
  const { part, begun, since, over } = line;
  const state = since ? `as written ${datedText(since)}` : begun ? 'in hand' : 'not begun';
  return {
    part: namesOf(record).part(part),
    head: line.line.do,
    to: page.part(part),
    ...spansOf(line, record),
    state: [state, ...over.map((each) => overText(each, record))].join('; '),
  };
}

function overText({ of, spent, high }: LineAhead['over'][number], { currency }: CarRecord): string {
  if (of === 'hours') {
    const time = (hours: number) => minutesText(Math.round(hours * 60));
    return `past its high end: ${time(spent)} worked, ${time(high)} at most foreseen`;
  }
  const money = (amount: number) => moneyText(Math.round(amount), currency);
  return `past its high end: ${money(spent)} paid for ${of === 'spend' ? 'things bought' : 'outside work'}, ${money(high)} at most foreseen`;
}

function choiceRow(left: ChoiceAhead, record: CarRecord): Rest {
  const { choice, lines, chosen } = left;
  const names = namesOf(record);
  const option = choice.options.find(({ option: id }) => id === chosen);
  const stands = `in place of ${lines.map(names.line).join('; ')}`;
  return {
    part: choice.part.map(names.part).join(', '),
    head: choice.question,
    to: page.choice(choice.id),
    ...spansOf(left, record),
    state: option
      ? `decided: ${optionName(option)}, ${stands}`
      : `open choice, each way as likely as another, ${stands}`,
  };
}

function spansOf({ hours, money, share }: LineAhead | ChoiceAhead, { currency }: CarRecord) {
  return {
    hours: hours.p90 > 0 ? hoursSpan(hours.p10, hours.p90) : '',
    money: money.p90 > 0 ? moneySpan(money.p10, money.p90, currency) : '',
    share,
  };
}

/** What can go on and what waits, each line once. */
export function waitsTable(forecast: Forecast, record: CarRecord, rollup: Rollup): FigureTable {
  return {
    caption: 'What can go on, and what waits',
    head: '',
    columns: [{ head: 'Lines' }, { head: 'Hours, expected' }],
    rows: heldUp(forecast, orderOfWork(record, rollup)).map(({ for: reason, lines, hours }) => ({
      head: REASON[reason],
      cells: [figure(String(lines.length)), about(leftHours(forecast, hours))],
    })),
  };
}

const REASON: { [reason in Holds['for']]: string } = {
  now: 'Can be done now',
  word: 'Waits for the owner’s word',
  work: 'Waits for other work',
  delivery: 'Waits for a delivery',
  outside: 'Waits for outside work',
};
