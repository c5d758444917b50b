// The log as the owner's account takes it: one line for each written line, with all that it is charged at.
import type { LineTax } from '../estimate/charged-tax.ts';
import type { TaxRule } from '../estimate/rules.ts';
import type { AccountLine, Amounts } from '../estimate/statement.ts';
import type { Minor } from '../figures/money.ts';
import type { Rounding } from '../figures/rounding.ts';
import { once } from '../record/once.ts';
import type { Place } from '../record/place.ts';
import type { CarRecord } from '../record/record.ts';
import type { STATED } from '../record/schema/statement.ts';
import type { CostKind, CostLine } from './cost-lines.ts';
import { drawnLines } from './drawn-lines.ts';

/** A tax rule as a statement keeps it: the shop's file may read otherwise by the time it is looked at. */
export type StatedRule = Pick<TaxRule, 'name' | 'rate' | 'by'> & { rounding: Rounding };

/** A line of an account, with all that a statement says of it. */
export type StatedLine = AccountLine<StatedRule> & {
  entry: string;
  kind: (typeof STATED)[number];
  what: string;
  part?: string;
  work?: string;
  person?: string;
  /** Time worked, in minutes. */
  minutes?: number;
  /** Time charged, in minutes, and the rate of an hour. */
  timed?: { minutes: number; rate: Minor };
  noCharge?: string;
  inPrice?: true;
  vendor?: string;
  bill?: string;
  byOwner?: true;
  exempt?: true;
  place: Place;
};

/** Every line of the log that an owner's account lists, payments included, by day. */
export const statedLines: (record: CarRecord) => readonly StatedLine[] = once((record) => {
  const written = Map.groupBy(drawnLines(record), ({ line }) => line.place);
  const charged = [...written.values()].flatMap((drawn): StatedLine[] => {
    const [first] = drawn;
    if (!first || first.line.entry === undefined) return [];
    return [
      {
        ...saysOf(first.line, first.line.entry),
        ...(first.exempt && { exempt: true }),
        amounts: amountsOf(drawn.map(({ line }) => line)),
        taxes: drawn.flatMap(({ taxes }) => taxes.map(kept)),
      },
    ];
  });
  const payments = record.entries.flatMap((entry) =>
    (entry.paid ?? []).map(({ amount, how, place }): StatedLine => {
      return {
        day: entry.day,
        entry: entry.id,
        kind: 'paid',
        what: how,
        amounts: { paid: amount },
        taxes: [],
        place,
      };
    }),
  );
  return [...charged, ...payments].sort(byDay);
});

/** One rule is another when it says the same, wherever it stands. */
export function sameRule({ name, rate, by, rounding }: StatedRule): string {
  return `${by} ${rate} ${rounding} ${name}`;
}

export function ruleOf({ name, rate, by, rounding }: TaxRule): StatedRule {
  return { name, rate, by, rounding: rounding ?? 'half-up' };
}

function kept({ rule, ...tax }: LineTax<TaxRule>): LineTax<StatedRule> {
  return { ...tax, rule: ruleOf(rule) };
}

function saysOf(line: CostLine, entry: string): Omit<StatedLine, 'amounts' | 'taxes'> {
  const { day, kind, text, part, work, person, minutes, timed, noCharge, fixed, vendor, bill, place } = line;
  return {
    day,
    entry,
    kind: fixed?.is === 'price' ? 'price' : kind === 'labour' ? 'hours' : 'bill',
    what: text,
    ...(part !== undefined && { part }),
    ...(work !== undefined && { work }),
    ...(person !== undefined && { person }),
    ...(minutes !== undefined && { minutes }),
    ...(timed !== undefined && { timed }),
    ...(noCharge !== undefined && { noCharge }),
    ...(fixed?.is === 'hours' && { inPrice: true }),
    ...(vendor !== undefined && { vendor }),
    ...(bill !== undefined && { bill }),
    ...(line.paidByOwner && { byOwner: true }),
    place,
  };
}

function amountsOf(lines: readonly CostLine[]): Amounts {
  const amounts: Amounts = {};
  for (const { kind, charged } of lines) {
    const of = AMOUNT[kind];
    if (of && charged !== 0) amounts[of] = (amounts[of] ?? 0) + charged;
  }
  return amounts;
}

const AMOUNT: { [kind in CostKind]?: keyof Amounts } = {
  labour: 'labour',
  materials: 'materials',
  bought: 'goods',
  outside: 'goods',
  freight: 'freight',
  'paid-tax': 'paid-tax',
  handling: 'handling',
  deposit: 'deposit',
};

function byDay(a: StatedLine, b: StatedLine): number {
  return (
    compare(a.day, b.day) ||
    compare(a.entry, b.entry) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
