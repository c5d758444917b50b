// Choices that stand in the forecast for the planned lines that they settle: the word is the owner's, so that an open
// choice is any of its options.
import type { Choice as ChoiceSums, Driver, Plan } from '../../estimate/uncertain/choice/choice.ts';
import { planOf } from '../../estimate/uncertain/choice/choice.ts';
import { drawOptions, meansOf } from '../../estimate/uncertain/choice/draws.ts';
import { costAt, hoursAt, type Values } from '../../estimate/uncertain/choice/expected.ts';
import { troublesIn } from '../../estimate/uncertain/choice/troubles.ts';
import type { Both, DrawnItem } from '../../estimate/uncertain/finish.ts';
import { drawerFor, type Sampling } from '../../estimate/uncertain/sample.ts';
import { plannedLines } from '../../record/checks/planned-lines.ts';
import { type CarRecord, type Choice, settledBy } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { choiceAhead, type OwnPrices } from './choice-sums.ts';
import { lastDay } from './compared.ts';

/** `lines` are the unfinished ones that it stands for; `chosen` the option decided on, nothing while it is open. */
export type ChoiceLeft = { choice: Choice; lines: string[]; chosen?: string };

/** Why a choice that is open stands for no line. */
export type Uncounted = { choice: Choice; why: 'no line named' | 'not comparable' };

export type ChoicesLeft = { counted: ChoiceLeft[]; uncounted: Uncounted[] };

/**
 * An open choice counts until its lines are finished; a decided one until one of them is worked on, is stated or
 * finished after the decision: from then on its lines speak for themselves.
 */
export function choicesLeft(record: CarRecord, rollup: Rollup): ChoicesLeft {
  const planned = plannedLines(record);
  const found: ChoicesLeft = { counted: [], uncounted: [] };
  const taken = new Set<string>();
  for (const choice of record.choices) {
    if (choice.withdrawn) continue;
    const open = choice.decided === undefined;
    const names = settledBy(choice).filter((name) => planned.has(name));
    if (names.length === 0) {
      if (open) found.uncounted.push({ choice, why: 'no line named' });
      continue;
    }
    const lines = names.filter((name) => !rollup.planned[name]?.finished && !taken.has(name));
    if (lines.length === 0 || (choice.decided && begunSince(names, choice.decided.on, rollup))) continue;
    if (troublesIn(sumsOf(choice, record, rollup)).length > 0) {
      if (open) found.uncounted.push({ choice, why: 'not comparable' });
      continue;
    }
    for (const name of lines) taken.add(name);
    found.counted.push({ choice, lines, ...(choice.decided && { chosen: choice.decided.option }) });
  }
  return found;
}

function begunSince(names: readonly string[], day: string, { planned }: Rollup): boolean {
  return names.some((name) => {
    const so = planned[name];
    return (
      so !== undefined &&
      (so.finished !== undefined ||
        [so.left?.hours, so.left?.spend].some((said) => said !== undefined && said.on >= day) ||
        so.lines.some((line) => line.day >= day))
    );
  });
}

/** The choice at the rules of the last day written, its drivers and options named after it: no two share a draw. */
export function sumsOf(
  choice: Choice,
  record: CarRecord,
  rollup: Rollup,
  prices: OwnPrices = {},
): ChoiceSums {
  const { drivers, options } = choiceAhead(choice, record, rollup.lines, lastDay(record), prices).sums;
  const own = (id: string) => `${choice.id}: ${id}`;
  return {
    drivers: drivers.map((driver) => ({ ...driver, id: own(driver.id) })),
    options: options.map(({ terms, canFail, ...option }) => ({
      ...option,
      id: own(option.id),
      terms: terms.map((term) => ({ ...term, amount: own(term.amount), by: (term.by ?? []).map(own) })),
      ...(canFail && {
        canFail: { ...canFail, chance: own(canFail.chance), next: own(canFail.next) },
      }),
    })),
  };
}

/** Draws of a counted choice. While it is open each of its ways is equally likely, picked anew in every draw. */
export function drawChoice(
  { id: own, chosen }: { id: string; chosen: string | undefined },
  sums: ChoiceSums,
  sampling: Sampling,
): DrawnItem {
  const options = drawOptions(planOf(sums), sampling, 'pert');
  // In order of their names, so that the order in which they are written changes nothing.
  const ways = [...options]
    .filter(([id]) => chosen === undefined || id === `${own}: ${chosen}`)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, draws]) => draws);
  const drawer = drawerFor(sampling);
  const pick = drawer.drawChances(`choice ${own}`);
  const hours = new Float64Array(drawer.draws);
  const money = new Float64Array(drawer.draws);
  for (let d = 0; d < drawer.draws; d++) {
    const way = ways[Math.floor((pick[d] as number) * ways.length)];
    hours[d] = way?.hours[d] ?? 0;
    money[d] = way?.cost[d] ?? 0;
  }
  return { id: choiceItem({ id: own }), hours, money };
}

export const choiceItem = ({ id }: Pick<Choice, 'id'>) => `choice ${id}`;

/** Hours and money at the likely figures, or as expected, the mean over the ways that are still open. */
export function choiceAt(
  { choice, chosen }: ChoiceLeft,
  sums: ChoiceSums,
  at: 'likely' | 'mean',
): Both<number> {
  const plan = planOf(sums);
  const values = at === 'mean' ? meansOf(plan, 'pert') : likelyOf(plan);
  const ids = [...plan.options.keys()].filter(
    (id) => chosen === undefined || id === `${choice.id}: ${chosen}`,
  );
  const meanOf = (of: typeof costAt) =>
    ids.reduce((sum, id) => sum + of(plan, id, values), 0) / Math.max(1, ids.length);
  return { hours: meanOf(hoursAt), money: meanOf(costAt) };
}

const likelyOf =
  (plan: Plan): Values =>
  (id) =>
    (plan.drivers.get(id) as Driver).range.likely;
