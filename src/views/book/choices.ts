// What was decided and why: each question with its options, none of their figures.
import { shareText } from '../../figures/shares.ts';
import type { CarRecord, Choice } from '../../record/record.ts';
import { boughtFrom } from '../choice.ts';
import { choiceState, chosenName, optionName, sentence } from '../choices.ts';
import { datedText } from '../dated.ts';
import { namesOf } from '../names.ts';
import { words } from '../parts.ts';
import { type Block, blocksOf } from './blocks.ts';
import type { Fact } from './car.ts';

export type BookOption = { name: string; taken: boolean; facts: Fact[]; for: string[]; against: string[] };

export type BookChoice = {
  question: string;
  /** The names of its parts. */
  parts: string[];
  facts: Fact[];
  /** Why it was decided so, or dropped; empty while it is open. */
  reason: string;
  options: BookOption[];
  looked: Block[];
};

/** Decided, then withdrawn, then open choices, each in order of the day they were asked. */
export function bookChoices(record: CarRecord): BookChoice[] {
  const rank = ({ decided, withdrawn }: Choice) => (withdrawn ? 1 : decided ? 0 : 2);
  const inOrder = record.choices.toSorted(
    (a, b) => rank(a) - rank(b) || (a.asked < b.asked ? -1 : a.asked > b.asked ? 1 : 0),
  );
  return inOrder.map((choice) => choiceOf(choice, record));
}

function choiceOf(choice: Choice, record: CarRecord): BookChoice {
  const names = namesOf(record);
  const { decided, withdrawn } = choice;
  const facts: [string, string | undefined][] = [
    [choice.part.length === 1 ? 'Part' : 'Parts', choice.part.map(names.part).join(', ')],
    ['Asked', datedText(choice.asked)],
    ['State', decided || withdrawn ? undefined : choiceState(choice)],
    ['Decided', decided && `${chosenName(choice)}, ${datedText(decided.on)}`],
    ['By', decided?.by],
    ['Withdrawn', withdrawn && datedText(withdrawn.on)],
  ];
  return {
    question: choice.question,
    parts: choice.part.map(names.part),
    facts: facts.flatMap(([name, text]) => (text === undefined ? [] : [{ name, text }])),
    reason: withdrawn?.reason ?? decided?.reason ?? '',
    options: choice.options.map((option): BookOption => {
      const { lines, keeps, mark, for: reasons = [], against = [] } = option;
      const things = lines.flatMap(({ buy, from }) => (buy ? [boughtFrom(buy, from, names)] : []));
      return {
        name: optionName(option),
        taken: decided?.option === option.option && !withdrawn,
        facts: [
          { name: 'Way', text: words(option.way) },
          ...(things.length === 0 ? [] : [{ name: 'To buy', text: things.join('; ') }]),
          ...(keeps === undefined ? [] : [{ name: 'Original kept', text: shareText(keeps) }]),
          ...(mark === undefined ? [] : [{ name: 'Mark', text: mark }]),
        ],
        for: reasons.map(sentence),
        against: against.map(sentence),
      };
    }),
    looked: blocksOf(choice.body.tree),
  };
}
