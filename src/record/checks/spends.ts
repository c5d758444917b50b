// What is spent or bespoken at one stroke: a bill with its lines of one day summed, or an order with its price.
import type { Day } from '../../figures/days.ts';
import { type Minor, times } from '../../figures/money.ts';
import type { Place } from '../place.ts';
import type { CarRecord, Entry, OutsideLine } from '../record.ts';
import { thing } from './back-from-vendors.ts';

/** One spend. `things` are its vendor and words, by which a bill is known to be that of an order. */
export type Spend = {
  is: 'bill' | 'order';
  from: string;
  bill: string | undefined;
  day: Day;
  sum: Minor;
  choices: string[];
  things: string[];
  place: Place;
};

type Line = { count?: string; discount?: Minor; freight?: Minor } & OutsideLine;

/** Orders and bills in order of days. Deposits and what the owner paid are no spend; an order without a price is none yet. */
export function spends({ entries }: CarRecord): Spend[] {
  return entries.flatMap((entry) => [...orders(entry), ...bills(entry)]);
}

function orders({ day, ordered = [] }: Entry): Spend[] {
  return ordered.flatMap(({ from, what, bill, price, choice, place }) =>
    price === undefined
      ? []
      : [
          {
            is: 'order',
            from,
            bill,
            day,
            sum: price,
            choices: choice === undefined ? [] : [choice],
            things: [thing(from, what)],
            place,
          },
        ],
  );
}

function bills({ day, bought = [], outside = [] }: Entry): Spend[] {
  const ofDay = new Map<string, Spend>();
  const lines: Line[] = [...bought, ...outside];
  for (const [i, { from, what, bill, place, choice, ...line }] of lines.entries()) {
    if (line['paid-by'] === 'owner') continue;
    const key = `${from} ${bill ?? `line ${i}`}`;
    const known: Spend = ofDay.get(key) ?? {
      is: 'bill',
      from,
      bill,
      day,
      sum: 0,
      choices: [],
      things: [],
      place,
    };
    ofDay.set(key, known);
    const { price, count = '1', discount = 0, freight = 0, tax = 0 } = line;
    known.sum += times(price, count) - discount + freight + tax;
    known.things.push(thing(from, what));
    if (choice !== undefined) known.choices.push(choice);
  }
  return [...ofDay.values()];
}
