// What decided choices took against what was foreseen for the way chosen.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Choice } from '../record/record.ts';
import { choicesSoFar, type Held, type Outcome, outcomeOf } from '../rollup/ahead/outcome.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { chosenName } from './choices.ts';
import { datedText } from './dated.ts';
import { hoursAbout, hoursSpan, moneyAbout, moneySpan } from './live/rounded.ts';
import { namesOf } from './names.ts';

/** One line of the table: what was foreseen is an estimate, what it took is not. */
export type OutcomeRow = { what: string; expected: string; range: string; took: string; where: string };

export type OutcomeShown = { sentence: string; rows: OutcomeRow[]; basis: string };

/** A decided choice to which something was logged; nothing for any other. */
export function outcomeShown(choice: Choice, record: CarRecord, rollup: Rollup): OutcomeShown | undefined {
  const outcome = outcomeOf(choice, record, rollup);
  if (!outcome || !choice.decided) return undefined;
  return {
    sentence: sentenceOf(outcome, record),
    rows: [moneyRow('Money', outcome.money, record), hoursRow(outcome.hours)],
    basis: `At the rules of ${datedText(choice.decided.on)}. Ranges run from the figure passed nine times in ten to the one passed one time in ten.`,
  };
}

/** All choices that have ended: how many kept to their range, and by how much estimates ran over. */
export type KeptShown = { sentence: string; rows: (OutcomeRow & { choice: string })[] };

export function keptShown(record: CarRecord, rollup: Rollup): KeptShown | undefined {
  const { ended, inside, over, under, ratio } = choicesSoFar(record, rollup);
  if (ended.length === 0) return undefined;
  const counted = ended.length === 1 ? 'One choice has ended.' : `${ended.length} choices have ended.`;
  return {
    sentence: `${counted} ${inside} inside the range foreseen from one time in ten to nine in ten, ${over} above it, ${under} below; of many, eight in ten should end inside. ${overText(ratio)}`,
    rows: ended.map((outcome) => ({
      ...moneyRow(`${chosenName(outcome.choice)}`, outcome.money, record),
      choice: outcome.choice.id,
    })),
  };
}

function overText(ratio: number | undefined): string {
  if (ratio === undefined) return '';
  const percent = Math.round((ratio - 1) * 100);
  if (percent === 0) return 'Together they took what was expected, to the nearest percent.';
  return `Together they took ${Math.abs(percent)}% ${percent > 0 ? 'more' : 'less'} than was expected.`;
}

function sentenceOf({ ended, open, money, inside }: Outcome, record: CarRecord): string {
  const names = namesOf(record);
  if (!ended) {
    const lines = open.map((name) => {
      const [part = '', line = ''] = name.split('/');
      return `${names.part(part)}: ${line.replaceAll('-', ' ')}`;
    });
    return `Not ended yet: ${lines.join(', ')} ${lines.length === 1 ? 'is' : 'are'} not finished.`;
  }
  const lower = Math.round(money.below * 100);
  const place = inside ? 'inside its range' : money.took > money.p90 ? 'above its range' : 'below its range';
  return `It ended ${place}: of 100 draws of what was foreseen, ${lower} cost less than it took.`;
}

function moneyRow(what: string, held: Held, { currency }: CarRecord): OutcomeRow {
  const spread = held.p90 - held.p10;
  return {
    what,
    expected: moneyAbout(held.expected, spread, currency),
    range: moneySpan(held.p10, held.p90, currency),
    took: moneyText(held.took, currency),
    where: whereText(held),
  };
}

function hoursRow(held: Held): OutcomeRow {
  return {
    what: 'Hours',
    expected: hoursAbout(held.expected, held.p90 - held.p10),
    range: hoursSpan(held.p10, held.p90),
    took: minutesText(Math.round(held.took * 60)),
    where: whereText(held),
  };
}

function whereText({ took, p10, p90, below }: Held): string {
  const place = took > p90 ? 'above' : took < p10 ? 'below' : 'inside';
  return `${place}, over ${Math.round(below * 100)} of 100`;
}
