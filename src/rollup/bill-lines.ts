// Bought, outside and returned lines of the log as cost lines: goods, freight, tax paid, handling, deposit.
import { type BillLine, type BillSums, billSums, netOf } from '../estimate/bill.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Entry } from '../record/record.ts';
import type { CostLine } from './cost-lines.ts';
import { type Drawn, groupsOf, passedOn, type Source, sourceOf } from './drawn.ts';
import { boughtFor, type Returned } from './returns.ts';
import { handlingRules, taxRules } from './shop-rules.ts';

/** Everything that came from vendors or went back to them. */
export function billLines(record: CarRecord): Drawn[] {
  const billed = [...billedLines(record), ...returnedLines(record)];
  const rules = { handling: handlingRules(record.shop), tax: taxRules(record.shop) };
  const passed = billed.filter(({ byOwner }) => !byOwner);
  const sums = billSums(
    passed.map(({ bill }) => bill),
    rules,
  );
  return [
    ...passed.flatMap((line, i) => drawn(line, sums[i] as BillSums)),
    ...billed.filter(({ byOwner }) => byOwner).map((line) => ownersLine(line, record)),
  ];
}

type Billed = {
  source: Source;
  what: string;
  bill: BillLine;
  /** The owner paid the vendor. */
  byOwner: boolean;
  /** False when only a deposit came back. */
  goods: boolean;
  back: boolean;
  /** No tax is charged on it. */
  exempt: boolean;
};

function billedLines(record: CarRecord): Billed[] {
  const groups = groupsOf(record);
  return record.entries.flatMap((entry) => {
    const billed = (written: NonNullable<Entry['bought'] | Entry['outside']>[number], bill: BillLine) => ({
      source: { ...sourceOf(written, entry, groups), vendor: written.from },
      what: written.what,
      bill,
      byOwner: written['paid-by'] === 'owner',
      goods: true,
      back: false,
      exempt: written.exempt ?? false,
    });
    return [
      ...(entry.bought ?? []).map((line) =>
        billed(line, { ...line, kind: 'bought', rulesOf: entry.day, bill: billName(line, entry) }),
      ),
      ...(entry.outside ?? []).map((line) =>
        billed(line, { ...line, kind: 'outside', rulesOf: entry.day, bill: billName(line, entry) }),
      ),
    ];
  });
}

/** What comes back follows the rules of the day it was bought, so that a full return leaves nothing. */
function returnedLines(record: CarRecord): Billed[] {
  const groups = groupsOf(record);
  const matching = boughtFor(record.entries);
  return record.entries.flatMap((entry) =>
    (entry.returned ?? []).map((line): Billed => {
      const [bought] = matching({ entry, line } satisfies Returned);
      const { price, tax, deposit } = line;
      const refunded = tax ?? (bought && bought.line.tax !== undefined ? 0 : undefined);
      const written = {
        ...line,
        part: line.part ?? bought?.line.part,
        line: bought?.line.line,
        choice: line.choice ?? bought?.line.choice,
      };
      return {
        source: { ...sourceOf(written, entry, groups), vendor: line.from },
        what: line.what,
        bill: {
          kind: 'bought',
          rulesOf: bought?.entry.day ?? entry.day,
          bill: billName(line, entry),
          price: -(price ?? 0) + 0,
          tax: refunded === undefined ? undefined : -refunded + 0,
          deposit: -(deposit ?? 0) + 0,
        },
        byOwner: bought?.line['paid-by'] === 'owner',
        goods: price !== undefined || deposit === undefined,
        back: true,
        exempt: bought?.line.exempt ?? false,
      };
    }),
  );
}

function drawn({ source, what, bill, goods, back, exempt }: Billed, sums: BillSums): Drawn[] {
  const { net, freight, paid, handling, deposit, charged } = sums;
  const { kind } = bill;
  const text = back ? `Returned: ${what}` : what;
  const own: CostLine = { ...source, kind, text, cost: net, charged: net };
  const added = handling === 0 ? [] : [{ ...source, text: `Handling: ${text}`, cost: 0, charged: handling }];
  const lines: CostLine[] = [
    ...(goods ? [own] : []),
    ...passedOn('freight', freight, `Freight: ${text}`, source),
    ...paid.flatMap(({ name, amount, workedOut }) =>
      workedOut
        ? passedOn('paid-tax', amount, `${name}, worked out: ${text}`, source, { workedOut })
        : passedOn('paid-tax', amount, `Tax as billed: ${text}`, source),
    ),
    ...added.map((line) => ({ ...line, kind: 'handling' as const })),
    ...passedOn('deposit', deposit, `${back ? 'Deposit back' : 'Deposit'}: ${what}`, source),
  ];
  const taxed = { day: bill.rulesOf, charged: { [kind]: charged.goods, freight: charged.freight }, exempt };
  return lines.map((line, i) => (i === 0 ? { line, taxed } : { line }));
}

/** Listed with its price, and neither spent nor charged. */
function ownersLine({ source, what, bill, back }: Billed, { currency }: CarRecord): Drawn {
  const price = netOf(bill) + (bill.freight ?? 0) + (bill.tax ?? 0) + (bill.deposit ?? 0);
  const paid = `${moneyText(Math.abs(price), currency)} ${back ? 'back to' : 'paid by'} the owner`;
  const text = `${back ? 'Returned: ' : ''}${what} (${paid})`;
  return { line: { ...source, kind: bill.kind, text, cost: 0, charged: 0, paidByOwner: true } };
}

function billName({ from, bill }: { from: string; bill?: string }, entry: Entry): string | undefined {
  return bill === undefined ? undefined : `${entry.day} ${from} ${bill}`;
}
