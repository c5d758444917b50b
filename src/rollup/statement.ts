// The owner's account over a period that isn't issued yet: it goes on from the last statement that is.
import { statementSums } from '../estimate/statement.ts';
import { addDays, type Day } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import { correctionsOf, type StatedCorrection } from './corrections.ts';
import { issuedStatements, type Statement, statedSoFar } from './issued.ts';
import { type StatedLine, sameRule, statedLines } from './stated-lines.ts';

/**
 * A statement of a period after the last issued one. What lies between is brought forward as one open statement; what
 * has changed in issued lines goes to whichever of the two comes first.
 */
export function statementFor(record: CarRecord, { from, to }: { from: Day; to: Day }): Statement {
  const { broughtForward, lines, corrections } = openAccount(record);
  const before = lines.filter(({ day }) => day < from);
  const own = lines.filter(({ day }) => day >= from && day <= to);
  const next = nextFrom(record);
  const gap = next !== undefined && next < from;
  const earlier = gap ? sumsOf(broughtForward, before, corrections).balance : broughtForward;
  const corrected = gap ? [] : corrections;
  return { from, to, lines: own, corrections: corrected, sums: sumsOf(earlier, own, corrected) };
}

/** The day on which the next statement begins: the first after the last issued one, or the first with a line. */
export function nextFrom(record: CarRecord): Day | undefined {
  const last = issuedStatements(record).at(-1);
  return last ? addDays(last.to, 1) : statedLines(record)[0]?.day;
}

/** What no statement holds yet. */
function openAccount(record: CarRecord): {
  broughtForward: number;
  lines: StatedLine[];
  corrections: StatedCorrection[];
} {
  const last = issuedStatements(record).at(-1);
  const all = statedLines(record);
  if (!last) return { broughtForward: 0, lines: [...all], corrections: [] };
  return {
    broughtForward: last.sums.balance,
    lines: all.filter(({ day }) => day > last.to),
    corrections: correctionsOf(
      statedSoFar(record),
      all.filter(({ day }) => day <= last.to),
    ),
  };
}

function sumsOf(broughtForward: number, lines: StatedLine[], corrections: StatedCorrection[]) {
  return statementSums(broughtForward, lines, corrections, sameRule);
}
