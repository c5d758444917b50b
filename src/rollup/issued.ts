// Issued statements as the sums take them, and what they have stated in all.
import type { LineTax } from '../estimate/charged-tax.ts';
import type { StatementSums } from '../estimate/statement.ts';
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import { once } from '../record/once.ts';
import type { Place } from '../record/place.ts';
import type { CarRecord, IssuedStatement } from '../record/record.ts';
import { type StatedCorrection, sameLine } from './corrections.ts';
import type { StatedLine, StatedRule } from './stated-lines.ts';

/** The owner's account over a period, issued or not. */
export type Statement = {
  from: Day;
  to: Day;
  lines: StatedLine[];
  /** What has changed in lines that stand on earlier statements. */
  corrections: StatedCorrection[];
  sums: StatementSums<StatedRule>;
};

/** A statement as it was issued, with where it is kept. */
export type Issued = Statement & { number: string; issued: Day; file: IssuedStatement };

/** All that a statement charges: corrections and tax among it, payments not. */
export function chargedIn({ sums }: Statement): Minor {
  return sums.balance - sums.broughtForward + sums.paid;
}

/** In order of their periods. */
export const issuedStatements: (record: CarRecord) => readonly Issued[] = once((record) =>
  record.statements.map(issuedOf),
);

/** What stands on statements, as the last of them that has a line left it. */
export function statedSoFar(record: CarRecord): StatedLine[] {
  const standing: StatedLine[] = [];
  for (const { lines, corrections } of issuedStatements(record)) {
    for (const { was, now } of corrections) {
      const at = was ? standing.findIndex((line) => sameLine(line, was)) : -1;
      if (at >= 0) standing.splice(at, 1);
      if (now) standing.push(now);
    }
    standing.push(...lines);
  }
  return standing;
}

type Written = NonNullable<IssuedStatement['lines']>[number];
type Unplaced = Omit<Written, 'place'>;

function issuedOf(file: IssuedStatement): Issued {
  const { number, from, to, issued, sums, balance } = file;
  const rules = new Map(
    (file.taxes ?? []).map(({ tax, name, rate, by, rounding, within }) => [
      tax,
      { rule: { name, rate, by, rounding }, ...(within !== undefined && { within }) },
    ]),
  );
  const line = (written: Unplaced, place: Place) => lineOf(written, place, rules);
  return {
    number,
    from,
    to,
    issued,
    file,
    lines: (file.lines ?? []).map((written) => line(written, written.place)),
    corrections: (file.corrections ?? []).map(({ was, now, place }): StatedCorrection => {
      return { ...(was && { was: line(was, place) }), ...(now && { now: line(now, place) }) };
    }),
    sums: {
      broughtForward: file['brought-forward'],
      ...sums,
      taxes: (file.taxes ?? []).flatMap(({ tax, basis, amount }) => {
        const terms = rules.get(tax);
        return terms ? [{ ...terms, basis, amount }] : [];
      }),
      balance,
    },
  };
}

function lineOf(
  written: Unplaced,
  place: Place,
  rules: ReadonlyMap<string, Pick<LineTax<StatedRule>, 'rule' | 'within'>>,
): StatedLine {
  const { day, entry, kind, what, part, work, by, time, charged, rate, from, bill } = written;
  const { labour, materials, goods, freight, handling, deposit, paid, taxes = [] } = written;
  const amounts = {
    labour,
    materials,
    goods,
    freight,
    'paid-tax': written['paid-tax'],
    handling,
    deposit,
    paid,
  };
  return {
    day,
    entry,
    kind,
    what,
    ...(part !== undefined && { part }),
    ...(work !== undefined && { work }),
    ...(by !== undefined && { person: by }),
    ...(time !== undefined && { minutes: time }),
    ...(charged !== undefined && { timed: { minutes: charged, rate: rate ?? 0 } }),
    ...(written['no-charge'] !== undefined && { noCharge: written['no-charge'] }),
    ...(written['in-price'] && { inPrice: true }),
    ...(from !== undefined && { vendor: from }),
    ...(bill !== undefined && { bill }),
    ...(written['paid-by-owner'] && { byOwner: true }),
    ...(written.exempt && { exempt: true }),
    amounts: Object.fromEntries(Object.entries(amounts).filter(([, amount]) => amount !== undefined)),
    taxes: taxes.flatMap(({ tax, basis, amount }) => {
      const terms = rules.get(tax);
      return terms ? [{ ...terms, basis, ...(amount !== undefined && { amount }) }] : [];
    }),
    place,
  };
}
