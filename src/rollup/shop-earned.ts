// What the work really earned the shop: by kind of work, at no charge, at prices fixed beforehand, and by handling.
import { labourSums } from '../estimate/labour.ts';
import type { Minor } from '../figures/money.ts';
import { Exact, roundWhole } from '../figures/rounding.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostLine, Rollup } from './cost-lines.ts';

/**
 * Hours and what came of them. `charged` is labor, prices fixed beforehand among it; `perHour` is what an hour worked
 * was charged at, and `left` that less its pay. Both are missing where nobody worked.
 */
export type Earned = {
  minutes: number;
  chargedMinutes: number;
  charged: Minor;
  pay: Minor;
  perHour?: Minor;
  left?: Minor;
};

/** Work at no charge; `forgone` is what it would have been charged at. */
type Given = { minutes: number; pay: Minor; forgone: Minor };
export type GivenAway = Given & {
  reasons: (Given & { reason: string; days: { entry: string; text: string }[] })[];
};

/** A price fixed beforehand, earned or not yet, against its hours. `of` is a planned line or a choice. */
export type AtPrice = Earned & { of: string; priced: boolean };

/** Bills passed on: what the shop paid, and what it added. */
export type Handled = { kind: 'bought' | 'outside'; cost: Minor; handling: Minor };

export type ShopEarned = {
  works: (Earned & { work: string })[];
  all: Earned;
  givenAway: GivenAway;
  prices: AtPrice[];
  handled: Handled[];
};

/** Kinds of work by the time worked, the most first. */
export function shopEarned(record: CarRecord, { lines }: Rollup): ShopEarned {
  const labour = lines.filter(({ kind }) => kind === 'labour');
  const works = [...Map.groupBy(labour, ({ work }) => work ?? '')];
  const free = labour.filter(({ noCharge }) => noCharge !== undefined);
  const priced = labour.filter(({ fixed }) => fixed !== undefined);
  return {
    works: works
      .map(([work, own]) => ({ work, ...earnedBy(own) }))
      .sort((a, b) => b.minutes - a.minutes || (a.work < b.work ? -1 : 1)),
    all: earnedBy(labour),
    givenAway: {
      ...given(free, record),
      reasons: [...Map.groupBy(free, ({ noCharge }) => noCharge ?? '')]
        .map(([reason, own]) => ({
          reason,
          ...given(own, record),
          days: own.map(({ entry = '', text }) => ({ entry, text })),
        }))
        .sort((a, b) => b.minutes - a.minutes || (a.reason < b.reason ? -1 : 1)),
    },
    prices: [...Map.groupBy(priced, ({ fixed }) => fixed?.of ?? '')].map(([of, own]) => ({
      of,
      priced: own.some(({ fixed }) => fixed?.is === 'price'),
      ...earnedBy(own),
    })),
    handled: handledOf(lines),
  };
}

function earnedBy(lines: readonly CostLine[]): Earned {
  const sum = (of: (line: CostLine) => number) => lines.reduce((all, line) => all + of(line), 0);
  const minutes = sum((line) => line.minutes ?? 0);
  const charged = sum((line) => line.charged);
  const pay = sum(({ cost }) => cost);
  const anHour = (amount: Minor) => roundWhole(new Exact(amount).times(60).div(minutes));
  return {
    minutes,
    chargedMinutes: sum(({ timed }) => timed?.minutes ?? 0),
    charged,
    pay,
    ...(minutes > 0 && { perHour: anHour(charged), left: anHour(charged - pay) }),
  };
}

function given(lines: readonly CostLine[], { shop }: CarRecord): Given {
  const { rates = [], step, minimum } = shop;
  const forgone = lines.reduce((sum, { day, person, work = '', minutes = 0 }) => {
    const hours = { day, who: person, work, minutes, free: false };
    return sum + labourSums(hours, { rates, pay: [], step, minimum }).charged;
  }, 0);
  const { minutes, pay } = earnedBy(lines);
  return { minutes, pay, forgone };
}

/** Lines that came from one written line share its place; what the owner paid is none of the shop's. */
function handledOf(lines: readonly CostLine[]): Handled[] {
  const bills = [...Map.groupBy(lines, ({ place }) => place).values()].filter(([first]) => first?.vendor);
  return (['bought', 'outside'] as const).flatMap((kind) => {
    const own = bills.filter((bill) => bill.some((line) => line.kind === kind && !line.paidByOwner)).flat();
    if (own.length === 0) return [];
    const sum = (kinds: readonly CostLine['kind'][], of: 'cost' | 'charged') =>
      own.reduce((all, line) => all + (kinds.includes(line.kind) ? line[of] : 0), 0);
    return [
      { kind, cost: sum([kind, 'freight', 'paid-tax'], 'cost'), handling: sum(['handling'], 'charged') },
    ];
  });
}
