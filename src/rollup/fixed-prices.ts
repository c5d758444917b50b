// Work for which a price was fixed beforehand: it is charged once, when it is finished, and its hours are not.
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import { plannedLines } from '../record/checks/planned-lines.ts';
import { type CarRecord, type Entry, type HoursLine, lineName, settledBy } from '../record/record.ts';
import { type Drawn, groupsOf, sourceOf } from './drawn.ts';

/** The planned line or choice whose price hours are within, and a line for each price that has been earned. */
export type FixedPrices = {
  priceOf: (hours: HoursLine, entry: Entry) => string | undefined;
  lines: Drawn[];
};

/** Prices of planned lines, and of the option that a choice was decided for. */
export function fixedPrices(record: CarRecord): FixedPrices {
  const prices = pricesOf(record);
  const done = firstFinished(record.entries);
  const groups = groupsOf(record);
  return {
    priceOf: ({ line, part, choice }, { day }) => {
      const name = line === undefined ? undefined : lineName(line, part);
      const price = prices.find(
        (one) =>
          (one.choice !== undefined && one.choice === choice) ||
          (name !== undefined && day >= one.since && one.until.includes(name)),
      );
      return price && nameOf(price);
    },
    lines: prices.flatMap((price) => {
      const last = lastOf(price.until.map((name) => done.get(name)));
      return last ? [drawn(price, last, groups)] : [];
    }),
  };
}

/** Planned lines within a price that isn’t earned yet: what is still to be charged stands on one of them, 0 on the others. */
export function fixedAhead(record: CarRecord): Map<string, Minor> {
  const done = firstFinished(record.entries);
  const ahead = new Map<string, Minor>();
  for (const { until, amount } of pricesOf(record)) {
    const [first, ...others] = until.filter((name) => !done.has(name));
    if (first === undefined) continue;
    ahead.set(first, (ahead.get(first) ?? 0) + amount);
    for (const name of others) ahead.set(name, ahead.get(name) ?? 0);
  }
  return ahead;
}

type Price = {
  amount: Minor;
  what: string;
  part?: string | undefined;
  work?: string | undefined;
  line?: string;
  choice?: string;
  /** The planned lines that must be finished, and the day from which hours on them are within the price. */
  until: readonly string[];
  since: Day;
};

const nameOf = ({ line, choice }: Price) => line ?? choice ?? '';

const pricesOf = (record: CarRecord): Price[] => [...pricesOfLines(record), ...pricesOfChoices(record)];

function pricesOfLines(record: CarRecord): Price[] {
  return [...plannedLines(record)].flatMap(([name, { part, line }]) => {
    const { do: what, work, 'fixed-price': amount } = line;
    return amount === undefined
      ? []
      : [{ amount, what, part: part.id, work, line: name, until: [name], since: '' }];
  });
}

function pricesOfChoices({ choices }: CarRecord): Price[] {
  return choices.flatMap((choice) => {
    const { id, decided, options, part } = choice;
    const taken = options.find(({ option }) => option === decided?.option);
    const amount = taken?.['fixed-price'];
    if (!decided || !taken || amount === undefined) return [];
    const only = part.length === 1 ? part[0] : undefined;
    const works = [...new Set(taken.lines.flatMap(({ work }) => work ?? []))];
    return [
      {
        amount,
        what: taken.name ?? taken.option,
        part: only,
        work: works.length === 1 ? works[0] : undefined,
        choice: id,
        until: settledBy(choice),
        since: decided.on,
      },
    ];
  });
}

type Finished = { entry: Entry; index: number };

/** Where each planned line was first said to be finished. */
function firstFinished(entries: readonly Entry[]): Map<string, Finished> {
  const done = new Map<string, Finished>();
  for (const entry of entries) {
    for (const [index, name] of (entry.finished ?? []).entries()) {
      if (!done.has(name)) done.set(name, { entry, index });
    }
  }
  return done;
}

/** The last of several to be finished; nothing as long as one isn't, or where there are none. */
function lastOf(done: readonly (Finished | undefined)[]): Finished | undefined {
  let last: Finished | undefined;
  for (const one of done) {
    if (!one) return undefined;
    if (!last || one.entry.day >= last.entry.day) last = one;
  }
  return last;
}

function drawn(price: Price, { entry, index }: Finished, groups: ReadonlyMap<string, string>): Drawn {
  const { amount, what, part, work, line, choice } = price;
  const written = {
    place: entry.placeAt(['finished', index]),
    ...(part !== undefined && { part }),
    ...(line !== undefined && { line }),
    ...(choice !== undefined && { choice }),
  };
  return {
    line: {
      ...sourceOf(written, entry, groups),
      kind: 'labour',
      text: `At the price fixed: ${what}`,
      ...(work !== undefined && { work }),
      cost: 0,
      charged: amount,
      fixed: { is: 'price', of: nameOf(price) },
    },
    taxed: { day: entry.day, charged: { labour: amount } },
  };
}
