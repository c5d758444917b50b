// What a decided choice took, held against the range that its chosen option had on the day of the decision.
import { planOf } from '../../estimate/uncertain/choice/choice.ts';
import { drawOptions } from '../../estimate/uncertain/choice/draws.ts';
import { chanceAtMost, quantileOf, sortedDraws } from '../../estimate/uncertain/summary.ts';
import { type CarRecord, type Choice, settledBy } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { comparedChoice } from './compared.ts';
import { drawnOnce } from './drawn-before.ts';

/** One figure as foreseen and as it came. `below` is the share of the draws at most what it took. */
export type Held = { expected: number; p10: number; p90: number; took: number; below: number };

/**
 * `ended` when every planned line that the choice settles, or that was logged to it, is finished; `open` names those
 * that are not. Money in minor units, hours in hours. `inside`: the money ended from P10 to P90.
 */
export type Outcome = {
  choice: Choice;
  ended: boolean;
  open: string[];
  money: Held;
  hours: Held;
  inside: boolean;
};

/** Nothing for a choice that isn't decided, can't be compared, or to which nothing was logged. */
export function outcomeOf(choice: Choice, record: CarRecord, rollup: Rollup): Outcome | undefined {
  const row = rollup.tables.choice.rows.find(({ key }) => key === choice.id);
  const { ahead, seed, comparison } = comparedChoice(choice, record, rollup.lines);
  const chosen = comparison?.options.find(({ id }) => id === choice.decided?.option);
  if (!choice.decided || !row || !chosen) return undefined;
  const { charged, minutes } = row;
  const figures = drawnOnce(record, 'outcome', [ahead.sums, seed, chosen, charged, minutes], () => {
    const draws = drawOptions(planOf(ahead.sums), { seed }, 'pert').get(chosen.id);
    return (
      draws && {
        money: held(chosen.cost.expected, draws.cost, charged),
        hours: held(chosen.hours.expected, draws.hours, minutes / 60),
      }
    );
  });
  if (!figures) return undefined;
  const { money, hours } = figures;
  const open = linesOf(choice, rollup).filter((name) => rollup.planned[name]?.finished === undefined);
  return {
    choice,
    ended: open.length === 0,
    open,
    money,
    hours,
    inside: charged >= money.p10 && charged <= money.p90,
  };
}

/** All decided choices that ended, taken together. */
export type Kept = {
  ended: Outcome[];
  inside: number;
  under: number;
  over: number;
  /** What they took for each unit expected; nothing when none ended. */
  ratio: number | undefined;
};

/** How the estimates of choices have held so far. */
export function choicesSoFar(record: CarRecord, rollup: Rollup): Kept {
  const ended = record.choices.flatMap((choice) => {
    const outcome = outcomeOf(choice, record, rollup);
    return outcome?.ended ? [outcome] : [];
  });
  const sum = (of: (held: Held) => number) => ended.reduce((total, { money }) => total + of(money), 0);
  const expected = sum((money) => money.expected);
  return {
    ended,
    inside: ended.filter(({ inside }) => inside).length,
    under: ended.filter(({ money }) => money.took < money.p10).length,
    over: ended.filter(({ money }) => money.took > money.p90).length,
    ratio: expected > 0 ? sum(({ took }) => took) / expected : undefined,
  };
}

function held(expected: number, draws: Float64Array, took: number): Held {
  const sorted = sortedDraws(draws);
  return {
    expected,
    p10: quantileOf(sorted, 0.1),
    p90: quantileOf(sorted, 0.9),
    took,
    below: chanceAtMost(sorted, took),
  };
}

/** The planned lines that say when a choice has ended. */
function linesOf(choice: Choice, { lines }: Rollup): string[] {
  if (choice.settles) return settledBy(choice);
  const logged = lines.flatMap((line) => (line.choice === choice.id && line.line ? [line.line] : []));
  return [...new Set(logged)];
}
