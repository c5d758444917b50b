// Holds bills above `ask-above` against the owner’s word and the choices decided.
import { addDays } from '../../figures/days.ts';
import { type Minor, times } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Place } from '../place.ts';
import type { CarRecord, OutsideLine } from '../record.ts';
import type { Check } from './check.ts';

const DAYS = 30;

export const spendWithoutWord: Check = {
  rule: 'spend-without-word',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A spend above what was agreed to be asked for needs the owner’s word in the log, not in somebody’s memory.',
  run: (record) => {
    const { car, choices, entries, currency, unread } = record;
    const most = car['ask-above'];
    if (most === undefined) return [];
    const decided = new Set(choices.filter((choice) => choice.decided).map(({ id }) => id));
    const covered = new Set<string>();
    for (const { day, agreed } of entries) {
      for (let days = 0; agreed && days <= DAYS; days += 1) covered.add(addDays(day, days));
    }
    return bills(record)
      .filter(
        ({ sum, day, choices: named }) =>
          sum > most &&
          !named.some((choice) => decided.has(choice) || unread.has(`choices/${choice}.md`)) &&
          !covered.has(day),
      )
      .map(({ from, bill, sum, place }) => ({
        place,
        reason: `${bill === undefined ? 'This bill' : `Bill \`${bill}\``} of \`${from}\` is ${moneyText(sum, currency)}, above ${moneyText(most, currency)}, and no \`agreed\` stands in the ${DAYS} days before.`,
        mend: 'Write the owner’s word under `agreed` of the day it was given, or name the `choice`.',
        related: [car.placeAt(['ask-above'])],
      }));
  },
};

type Bill = {
  from: string;
  bill: string | undefined;
  day: string;
  sum: Minor;
  choices: string[];
  place: Place;
};

type Line = { count?: string; discount?: Minor; freight?: Minor } & OutsideLine;

/** Each bill once, with its lines of one day summed: goods, freight and tax, without deposits and what the owner paid. */
function bills({ entries }: CarRecord): Bill[] {
  return entries.flatMap(({ day, bought = [], outside = [] }) => {
    const ofDay = new Map<string, Bill>();
    const lines: Line[] = [...bought, ...outside];
    for (const [i, { from, bill, place, choice, ...line }] of lines.entries()) {
      if (line['paid-by'] === 'owner') continue;
      const key = `${from} ${bill ?? `line ${i}`}`;
      const known = ofDay.get(key) ?? { from, bill, day, sum: 0, choices: [], place };
      ofDay.set(key, known);
      const { price, count = '1', discount = 0, freight = 0, tax = 0 } = line;
      known.sum += times(price, count) - discount + freight + tax;
      if (choice !== undefined) known.choices.push(choice);
    }
    return [...ofDay.values()];
  });
}
