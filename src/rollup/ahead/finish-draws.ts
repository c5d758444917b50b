// The draws of a forecast, as plain values: they can be made elsewhere, and be found by their name.
import type { Choice as ChoiceSums } from '../../estimate/uncertain/choice/choice.ts';
import { type Both, type Finish, finishOf } from '../../estimate/uncertain/finish.ts';
import type { Sampling } from '../../estimate/uncertain/sample.ts';
import type { Minor } from '../../figures/money.ts';
import { drawChoice } from './choices-left.ts';
import { type ItemFrom, itemOf } from './lines-ahead.ts';

/** What a finish is drawn from; `likelyLeft` is worked out already. Money in minor units, hours in hours. */
export type FinishDraws = {
  /** The name that the result is known by. */
  name: string;
  spent: Both<number>;
  items: ItemFrom[];
  choices: { id: string; chosen?: string; sums: ChoiceSums }[];
  sampling: Sampling;
  agreed: Minor;
  likelyLeft: number;
};

/** `within` is the chance of ending within what was agreed; nothing without an agreement. */
export type FinishFigures = Omit<Finish, 'within'> & {
  within: { chance: number; error: number } | undefined;
  likelyLeft: number;
};

/** Draws a finish. */
export function finishFigures(draws: FinishDraws): FinishFigures {
  const { spent, items, choices, sampling, agreed, likelyLeft } = draws;
  const drawn = choices.map(({ id, chosen, sums }) => drawChoice({ id, chosen }, sums, sampling));
  const { within, ...finish } = finishOf({ spent, items: items.map(itemOf), drawn }, sampling);
  // Half a minor unit: what is charged is rounded to whole ones.
  return { ...finish, within: agreed > 0 ? within(agreed + 0.5) : undefined, likelyLeft };
}
