// Holds bills and orders above `ask-above` against the owner’s word and the choices decided.
import { type Day, daysBetween } from '../../figures/days.ts';
import type { Minor } from '../../figures/money.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { CarRecord, Entry } from '../record.ts';
import type { Check } from './check.ts';
import { type Spend, spends } from './spends.ts';

const DAYS = 30;

export const spendWithoutWord: Check = {
  rule: 'spend-without-word',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A spend above what was agreed to be asked for needs the owner’s word in the log, not in somebody’s memory.',
  run: (record) => {
    const { car, currency } = record;
    const most = car['ask-above'];
    if (most === undefined) return [];
    const all = spends(record);
    const given = words(record);
    const bespoken = new Set<string>();
    return all.flatMap((spend) => {
      if (spend.sum <= most) return [];
      // A bill that was above when it was ordered stands or falls with its order.
      if (spend.is === 'bill' && spend.things.some((thing) => bespoken.has(thing))) return [];
      if (spend.is === 'order') for (const thing of spend.things) bespoken.add(thing);
      if (isDecided(spend, record)) return [];
      const near = given.filter((word) => concerns(word, spend));
      if (near.some(({ most: upTo }) => upTo === undefined || spend.sum <= upTo)) return [];
      return [
        {
          place: spend.place,
          reason: `${nameOf(spend)} is ${moneyText(spend.sum, currency)}, above ${moneyText(most, currency)}, and ${why(near, (amount) => moneyText(amount, currency))}.`,
          mend: 'Write the owner’s word under `agreed` of the day it was given, or name the `choice`.',
          related: [car.placeAt(['ask-above']), ...near.map(({ line }) => line.place)],
        },
      ];
    });
  },
};

type Word = { day: Day; line: NonNullable<Entry['agreed']>[number]; most: Minor | undefined };

function words({ entries }: CarRecord): Word[] {
  return entries.flatMap(({ day, agreed = [] }) => agreed.map((line) => ({ day, line, most: line.amount })));
}

/** A word on a choice is for what follows from it; any other, for what is spent within a month. */
function concerns({ day, line }: Word, spend: Spend): boolean {
  const since = daysBetween(day, spend.day);
  if (since < 0) return false;
  return since <= DAYS || (line.choice !== undefined && spend.choices.includes(line.choice));
}

function isDecided({ choices: named, day }: Spend, { choices, unread }: CarRecord): boolean {
  return named.some(
    (choice) =>
      unread.has(`choices/${choice}.md`) ||
      choices.some(({ id, decided }) => id === choice && decided !== undefined && decided.on <= day),
  );
}

function nameOf({ is, from, bill }: Spend): string {
  if (is === 'order') return `This order from \`${from}\``;
  return `${bill === undefined ? 'This bill' : `Bill \`${bill}\``} of \`${from}\``;
}

function why(near: readonly Word[], money: (amount: Minor) => string): string {
  const upTo = Math.max(...near.map(({ most }) => most ?? 0));
  return near.length === 0
    ? `no \`agreed\` stands in the ${DAYS} days before`
    : `what is agreed goes up to ${money(upTo)}`;
}
