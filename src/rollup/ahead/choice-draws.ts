// What has to be drawn of each choice, as plain values: it can be drawn elsewhere, and be found by its name.
import type { Choice as ChoiceSums } from '../../estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../estimate/uncertain/choice/compare.ts';
import type { KeptDraws } from '../../estimate/uncertain/kept-draws.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { choiceSums } from './compared.ts';
import { drawnName } from './drawn-before.ts';
import { heldFigures, outcomeFrom, type Took, tookSoFar } from './outcome.ts';

/** The options of a choice with their seed; of a decided one what it took so far. */
export type ChoiceDraws = { sums: ChoiceSums; seed: string; took?: Took };

/** The draws of every choice. */
export function choiceDraws(record: CarRecord, rollup: Rollup): ChoiceDraws[] {
  return record.choices.map((choice) => {
    const { ahead, seed } = choiceSums(choice, record, rollup.lines);
    const took = tookSoFar(choice, rollup);
    return { sums: ahead.sums, seed, ...(took && { took }) };
  });
}

/** The name that a comparison of options is known by. */
export function optionsName({ sums, seed }: Pick<ChoiceDraws, 'sums' | 'seed'>): string {
  return drawnName('options', [sums, seed]);
}

/** Draws one choice; gives its results by the names that they are known by. */
export function drawnOfChoice({ sums, seed, took }: ChoiceDraws): [name: string, result: unknown][] {
  const kept: KeptDraws = new Map();
  const compared = compareOptions(sums, { seed, kept });
  const results: [string, unknown][] = [[optionsName({ sums, seed }), compared]];
  const chosen = compared.sound && compared.comparison.options.find(({ id }) => id === took?.option);
  if (!took || !chosen) return results;
  const from = outcomeFrom(sums, seed, chosen, took);
  return [...results, [drawnName('outcome', from), heldFigures(sums, { seed, kept }, chosen, took)]];
}
