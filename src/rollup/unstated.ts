// When the owner's account comes to know of a change: lines that were edited after they were stated stand in the log
// as they read now, and on the account as they were until the statement that corrects them.
import { added } from '../estimate/charged-tax.ts';
import { comesTo } from '../estimate/statement.ts';
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import type { CarRecord } from '../record/record.ts';
import type { StatedCorrection } from './corrections.ts';
import { issuedStatements } from './issued.ts';
import type { StatedLine } from './stated-lines.ts';
import { nextFrom, statementFor } from './statement.ts';

/**
 * What the log charges from a day on and the account only from `known` on, the last day of the statement that says so;
 * below zero for what went from the log and stays on the account until then.
 */
export type Unstated = { day: Day; known: Day; amount: Minor; entry: string; what: string };

/** By statement; what isn't on one yet is known on the last day written. */
export function unstated(record: CarRecord): Unstated[] {
  const issued = issuedStatements(record);
  const last = record.entries.at(-1)?.day ?? '';
  const next = nextFrom(record);
  const open = next === undefined ? [] : statementFor(record, { from: next, to: last }).corrections;
  return [
    ...issued.flatMap(({ corrections, to }) => corrections.flatMap((one) => halves(one, to))),
    ...open.flatMap((one) => halves(one, last)),
  ];
}

function halves({ was, now }: StatedCorrection, known: Day): Unstated[] {
  const half = ({ day, entry, what, ...line }: StatedLine, sign: 1 | -1): Unstated => {
    const tax = added(line.taxes).reduce((sum, { amount }) => sum + amount, 0);
    return { day, known, amount: sign * (comesTo({ day, ...line }) + tax), entry, what };
  };
  return [...(was ? [half(was, -1)] : []), ...(now ? [half(now, 1)] : [])].filter(
    ({ amount }) => amount !== 0,
  );
}
