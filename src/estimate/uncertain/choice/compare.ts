// A choice worked out for the owner and the shop. It ranks nothing and calls no option best: cost is one column.
import type { Sampling } from '../sample.ts';
import { percentilesOf } from '../select.ts';
import { chanceError, type Summary, summarize } from '../summary.ts';
import { type Choice, type Option, type Plan, planOf } from './choice.ts';
import { drawOptions, meanOf, meansOf, type OptionDraws, type Shape } from './draws.ts';
import { costAt, hoursAt, type Values, waitAt } from './expected.ts';
import { chancesOfCheapest, valueOfKnowing } from './knowing.ts';
import { type Pair, pairsOf } from './pairs.ts';
import { type Trouble, troublesIn } from './troubles.ts';

/** `expected` is exact; the rest comes from the draws. */
export type Outlook = { expected: number } & Summary;

/** This option's cost less the other's: below zero where this one is cheaper. `mean` is exact. */
export type Against = { other: string; mean: number; p10: number; p50: number; p90: number };

export type OptionOutlook = {
  id: string;
  cost: Outlook;
  hours: Outlook;
  wait: Outlook;
  cheapest: { chance: number; error: number };
  against: Against[];
};

/** `knowing.hours` is null where no hourly rate was given. */
export type Comparison = {
  draws: number;
  options: OptionOutlook[];
  pairs: Pair[];
  knowing: { worth: number; error: number; hours: number | null };
};

export type Compared = { sound: true; comparison: Comparison } | { sound: false; troubles: Trouble[] };

/**
 * Compares the options of a choice; what can't be compared comes back as troubles.
 * @throws RangeError as `sampleLines` does, for a correlation or a number of draws that is none.
 */
export function compareOptions(choice: Choice, sampling: Sampling & { shape?: Shape }): Compared {
  const troubles = troublesIn(choice);
  if (troubles.length > 0) return { sound: false, troubles };
  const shape = sampling.shape ?? 'pert';
  const plan = planOf(choice);
  const means = meansOf(plan, shape);
  const drawn = drawOptions(plan, sampling, shape);
  const costs = choice.options.map(({ id }) => (drawn.get(id) as OptionDraws).cost);
  const chances = chancesOfCheapest(costs);
  const { worth, error } = valueOfKnowing(costs);
  const draws = costs[0]?.length ?? 0;
  const options = choice.options.map((option, i): OptionOutlook => {
    const chance = chances[i] as number;
    return {
      id: option.id,
      ...outlooks(plan, option, drawn.get(option.id) as OptionDraws, means, shape),
      cheapest: { chance, error: chanceError(chance, draws) },
      against: againstOthers(plan, option.id, drawn, means),
    };
  });
  const hours = choice.hourly ? worth / choice.hourly : null;
  return {
    sound: true,
    comparison: { draws, options, pairs: pairsOf(plan, means), knowing: { worth, error, hours } },
  };
}

function outlooks(plan: Plan, { id }: Option, drawn: OptionDraws, means: Values, shape: Shape) {
  const days = ({ wait }: Option) => (wait ? meanOf(wait, shape) : 0);
  return {
    cost: { expected: costAt(plan, id, means), ...summarize(drawn.cost) },
    hours: { expected: hoursAt(plan, id, means), ...summarize(drawn.hours) },
    wait: { expected: waitAt(plan, id, means, days), ...summarize(drawn.wait) },
  };
}

function againstOthers(plan: Plan, id: string, drawn: Map<string, OptionDraws>, means: Values): Against[] {
  const own = (drawn.get(id) as OptionDraws).cost;
  return [...drawn]
    .filter(([other]) => other !== id)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([other, { cost }]) => {
      const [p10, p50, p90] = percentilesOf(differences(own, cost), [0.1, 0.5, 0.9]) as [
        number,
        number,
        number,
      ];
      return { other, mean: costAt(plan, id, means) - costAt(plan, other, means), p10, p50, p90 };
    });
}

function differences(own: Float64Array, other: Float64Array): Float64Array {
  const less = new Float64Array(own.length);
  for (let d = 0; d < less.length; d++) less[d] = (own[d] as number) - (other[d] as number);
  return less;
}
