// A statement taken apart for who reads it: labor by day, lines by bill, deposits, what changed, payments.
import { added } from '../estimate/charged-tax.ts';
import { type Amounts, comesTo } from '../estimate/statement.ts';
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import type { StatedCorrection } from './corrections.ts';
import type { Statement } from './issued.ts';
import type { StatedLine } from './stated-lines.ts';

/** The labor of a day. `minutes` are those charged. */
export type LabourDay = {
  day: Day;
  lines: StatedLine[];
  minutes: number;
  labour: Minor;
  materials: Minor;
};

/** What a bill or a line of one comes to; `charged` is all of it, without deposits and tax charged. */
export type BillAmounts = { goods: Minor; freight: Minor; paidTax: Minor; handling: Minor; charged: Minor };
export type StatedBill = {
  day: Day;
  vendor: string | undefined;
  bill: string | undefined;
  lines: (BillAmounts & { line: StatedLine })[];
  sum: BillAmounts;
};

/** A line that changed: what it came to before tax, and the tax rounded on it, as stated and as it reads now. */
export type Changed = StatedCorrection & {
  before: Minor;
  after: Minor;
  difference: Minor;
  tax: { before: Minor; after: Minor };
};

export type Account = {
  days: LabourDay[];
  labour: LabourDay | undefined;
  bills: StatedBill[];
  billed: BillAmounts;
  deposits: StatedLine[];
  changed: Changed[];
  payments: StatedLine[];
};

/** Every line of the statement, where it belongs; a bill with a deposit stands among the bills and the deposits. */
export function accountOf({ lines, corrections }: Statement): Account {
  const of = (...kinds: StatedLine['kind'][]) => lines.filter(({ kind }) => kinds.includes(kind));
  const worked = of('hours', 'price');
  const days = [...Map.groupBy(worked, ({ day }) => day)].map(([day, own]) => labourDay(day, own));
  const bills = billsOf(of('bill').filter(isBilled));
  return {
    days,
    labour: worked[0] && labourDay(worked[0].day, worked),
    bills,
    billed: sumOf(bills.map(({ sum }) => sum)),
    deposits: lines.filter(({ amounts }) => (amounts.deposit ?? 0) !== 0),
    changed: corrections.map(changedOf),
    payments: of('paid'),
  };
}

function labourDay(day: Day, lines: StatedLine[]): LabourDay {
  return {
    day,
    lines,
    minutes: lines.reduce((sum, { timed }) => sum + (timed?.minutes ?? 0), 0),
    labour: total(lines, 'labour'),
    materials: total(lines, 'materials'),
  };
}

/** Not a line on which nothing but a deposit came back. */
function isBilled({ amounts: { deposit = 0, ...others } }: StatedLine): boolean {
  return deposit === 0 || Object.values(others).some((amount) => amount !== 0);
}

function billsOf(lines: readonly StatedLine[]): StatedBill[] {
  const bills = Map.groupBy(lines, ({ day, vendor, bill }) => JSON.stringify([day, vendor, bill]));
  return [...bills.values()].map((own) => {
    const shown = own.map((line) => ({ ...billAmounts(line.amounts), line }));
    const [{ day = '', vendor = undefined, bill = undefined } = {}] = own;
    return { day, vendor, bill, lines: shown, sum: sumOf(shown) };
  });
}

function billAmounts({
  goods = 0,
  freight = 0,
  'paid-tax': paidTax = 0,
  handling = 0,
}: Amounts): BillAmounts {
  return { goods, freight, paidTax, handling, charged: goods + freight + paidTax + handling };
}

function sumOf(bills: readonly BillAmounts[]): BillAmounts {
  const sum = (of: keyof BillAmounts) => bills.reduce((all, bill) => all + bill[of], 0);
  return {
    goods: sum('goods'),
    freight: sum('freight'),
    paidTax: sum('paidTax'),
    handling: sum('handling'),
    charged: sum('charged'),
  };
}

function changedOf({ was, now }: StatedCorrection): Changed {
  const [before, after] = [comesTo(was), comesTo(now)];
  return {
    ...(was && { was }),
    ...(now && { now }),
    before,
    after,
    difference: after - before,
    tax: { before: taxOf(was), after: taxOf(now) },
  };
}

function taxOf(line: StatedLine | undefined): Minor {
  return added(line?.taxes ?? []).reduce((sum, { amount }) => sum + amount, 0);
}

function total(lines: readonly StatedLine[], of: keyof Amounts): Minor {
  return lines.reduce((sum, { amounts }) => sum + (amounts[of] ?? 0), 0);
}
