// The options of each choice compared, for its sheet: worked out once, since the list, the sheet and the forecast ask.

import { type Comparison, compareOptions } from '../../estimate/uncertain/choice/compare.ts';
import type { Trouble } from '../../estimate/uncertain/choice/troubles.ts';
import type { Day } from '../../figures/days.ts';
import type { CarRecord, Choice } from '../../record/record.ts';
import type { CostLine } from '../cost-lines.ts';
import { type ChoiceAhead, choiceAhead } from './choice-sums.ts';
import { drawnOnce } from './drawn-before.ts';

/** `comparison` is missing where the options can't be compared; the checks say why to the writer. */
export type ComparedChoice = {
  ahead: ChoiceAhead;
  seed: string;
  comparison?: Comparison;
  troubles: Trouble[];
};

/** An open choice at the rules of the last day written, a decided one at those of the day it was decided. */
export function comparedChoice(
  choice: Choice,
  record: CarRecord,
  lines: readonly CostLine[],
): ComparedChoice {
  const known = done.get(choice);
  if (known?.lines === lines) return known.compared;
  const compared = compare(choice, record, lines);
  done.set(choice, { lines, compared });
  return compared;
}

const done = new WeakMap<Choice, { lines: readonly CostLine[]; compared: ComparedChoice }>();

function compare(choice: Choice, record: CarRecord, lines: readonly CostLine[]): ComparedChoice {
  const { ahead, seed } = choiceSums(choice, record, lines);
  const compared = drawnOnce(record, 'options', [ahead.sums, seed], () =>
    compareOptions(ahead.sums, { seed }),
  );
  return compared.sound
    ? { ahead, seed, comparison: compared.comparison, troubles: [] }
    : { ahead, seed, troubles: compared.troubles };
}

/** What a comparison is drawn from: the sums of a choice, at the rules of its day, and its seed. */
export function choiceSums(
  choice: Choice,
  record: CarRecord,
  lines: readonly CostLine[],
): { ahead: ChoiceAhead; seed: string } {
  return {
    ahead: choiceAhead(choice, record, lines, choice.decided?.on ?? lastDay(record)),
    seed: seedOf(record, choice),
  };
}

/** Figures come out the same at every build: the seed is the car and, within one choice, the choice. */
export function seedOf({ car }: CarRecord, choice?: Choice): string {
  return [car.name, car.opened, ...(choice ? [choice.id] : [])].join(' / ');
}

/** The day up to which the record is written; the day it was opened before anything is. */
export function lastDay({ car, entries }: CarRecord): Day {
  return entries.at(-1)?.day ?? car.opened;
}
