// What a decided choice took, held against the range that its chosen option had on the day of the decision.
import { type Choice as ChoiceSums, planOf } from '../../estimate/uncertain/choice/choice.ts';
import type { OptionOutlook } from '../../estimate/uncertain/choice/compare.ts';
import { drawOptions } from '../../estimate/uncertain/choice/draws.ts';
import type { Sampling } from '../../estimate/uncertain/sample.ts';
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

/** What was logged to a decided choice, in minor units and minutes; nothing before anything was. */
export function tookSoFar(choice: Choice, { tables }: Rollup): Took | undefined {
  const row = tables.choice.rows.find(({ key }) => key === choice.id);
  if (!choice.decided || !row) return undefined;
  return { option: choice.decided.option, charged: row.charged, minutes: row.minutes };
}

export type Took = { option: string; charged: number; minutes: number };

/** All that the figures of an outcome are drawn from. */
export function outcomeFrom(sums: ChoiceSums, seed: string, chosen: OptionOutlook, took: Took): unknown {
  return [sums, seed, chosen, took.charged, took.minutes];
}

/** What a chosen option took, held against its draws. */
export function heldFigures(
  sums: ChoiceSums,
  sampling: Sampling,
  chosen: OptionOutlook,
  { charged, minutes }: Took,
): { money: Held; hours: Held } | undefined {
  const draws = drawOptions(planOf(sums), sampling, 'pert').get(chosen.id);
  return (
    draws && {
      money: held(chosen.cost.expected, draws.cost, charged),
      hours: held(chosen.hours.expected, draws.hours, minutes / 60),
    }
  );
}

/** Nothing for a choice that isn't decided, can't be compared, or to which nothing was logged. */
export function outcomeOf(choice: Choice, record: CarRecord, rollup: Rollup): Outcome | undefined {
  const took = tookSoFar(choice, rollup);
  const { ahead, seed, comparison } = comparedChoice(choice, record, rollup.lines);
  const chosen = comparison?.options.find(({ id }) => id === choice.decided?.option);
  if (!took || !chosen) return undefined;
  const figures = drawnOnce(record, 'outcome', outcomeFrom(ahead.sums, seed, chosen, took), () =>
    heldFigures(ahead.sums, { seed }, chosen, took),
  );
  if (!figures) return undefined;
  const { money, hours } = figures;
  const open = linesOf(choice, rollup).filter((name) => rollup.planned[name]?.finished === undefined);
  return {
    choice,
    ended: open.length === 0,
    open,
    money,
    hours,
    inside: took.charged >= money.p10 && took.charged <= money.p90,
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
