// Which statement is meant by a period, and whether it can be issued: the sentences are those of the command.
import type { Day } from '../figures/days.ts';
import { didYouMean } from '../record/nearest.ts';
import type { CarRecord } from '../record/record.ts';
import { type Issued, issuedStatements, type Statement } from '../rollup/issued.ts';
import { nextFrom, statementFor } from '../rollup/statement.ts';

/** A statement, or why there is none. */
export type Asked<S> = { statement: S; refused?: never } | { refused: string; statement?: never };

/** A period as far as it was named: it begins where the last statement ended, and ends with the last entry. */
export type Period = { from?: Day | undefined; to?: Day | undefined };

/** An issued statement of just that period, or one that isn't issued yet. */
export function statementOf(record: CarRecord, period: Period): Asked<Statement | Issued> {
  const { from, to } = named(record, period);
  if (from === undefined || to === undefined)
    return { refused: 'The log charges nothing yet, so there is no statement.' };
  const last = issuedStatements(record).at(-1);
  if (period.from === undefined && last && to <= last.to)
    return {
      refused: `Statement ${last.number} goes up to ${last.to}. What isn’t issued yet begins on ${from}.`,
    };
  if (from > to) return { refused: `A statement can’t begin on ${from} and end on ${to}.` };
  const issued = issuedStatements(record);
  const same = issued.find((one) => one.from === from && one.to === to);
  if (same) return { statement: same };
  const over = issued.find((one) => one.from <= to && one.to >= from);
  if (!over) return { statement: statementFor(record, { from, to }) };
  return {
    refused: `${from} to ${to} runs into statement ${over.number}, of ${over.from} to ${over.to}. What isn’t issued yet begins on ${nextFrom(record)}.`,
  };
}

/** The issued statement of a number. */
export function statementNumbered(record: CarRecord, number: string): Asked<Issued> {
  const issued = issuedStatements(record);
  const statement = issued.find((one) => one.number === number);
  if (statement) return { statement };
  const numbers = issued.map((one) => one.number);
  const which =
    didYouMean(number, numbers) ??
    (numbers.length === 0 ? 'None is issued yet.' : `Issued are ${numbers.join(', ')}.`);
  return { refused: `There is no statement ${number}. ${which}` };
}

/** A statement that can be issued on a day: it follows the one before, its period is over, its number is free. */
export function statementToIssue(
  record: CarRecord,
  period: Period,
  { number, issued }: { number: string; issued: Day },
): Asked<Statement> {
  const { statement, refused } = statementOf(record, period);
  if (!statement) return { refused };
  if ('number' in statement)
    return { refused: `That period is issued already, as statement ${statement.number}.` };
  const before = issuedStatements(record).at(-1);
  const next = nextFrom(record);
  if (before && statement.from !== next)
    return {
      refused: `Statement ${before.number} ends on ${before.to}, so the next one begins on ${next}.`,
    };
  if (next !== undefined && statement.from > next)
    return { refused: `The log begins on ${next}, so the first statement begins then or earlier.` };
  if (statement.to > issued)
    return { refused: `It would be issued on ${issued}, before its period ends on ${statement.to}.` };
  if (!/^(?=.*\d)[a-z0-9]+(?:-[a-z0-9]+)*$/.test(number))
    return { refused: `\`${number}\` is no number such as \`003\` or \`2025-03\`.` };
  if (record.statements.some(({ id }) => id === number))
    return { refused: `There is a statement ${number} already.` };
  return { statement };
}

/** One more than the highest number so far: `001` for the first. */
export function numberAfter({ statements }: CarRecord): string {
  const highest = statements.reduce((most, { id }) => Math.max(most, /^\d+$/.test(id) ? Number(id) : 0), 0);
  return String(highest + 1).padStart(3, '0');
}

function named(record: CarRecord, { from, to }: Period): Period {
  const next = nextFrom(record);
  const last = record.entries.at(-1)?.day;
  // Nothing written since the last statement: the day after it, empty.
  const until = next !== undefined && last !== undefined && last < next ? next : last;
  return { from: from ?? next, to: to ?? until };
}
