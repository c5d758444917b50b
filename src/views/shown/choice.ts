// What the page of a choice shows: open, the sheet that the owner decides on; decided, the reasons, and what it took.
import type { Body } from '../../record/body.ts';
import type { CarRecord, Choice } from '../../record/record.ts';
import type { Rollup } from '../../rollup/cost-lines.ts';
import type { Sees } from '../audience.ts';
import { type OptionRow, optionRows } from '../choice.ts';
import { outcomeShown } from '../choice-outcome.ts';
import { askedOf, type ChoiceSheet, choiceCautions, choiceSheet, choiceShots } from '../choice-sheet.ts';
import { asItStood, isOpen, signers } from '../choice-words.ts';
import { choiceState, decision, optionName } from '../choices.ts';
import { datedText } from '../dated.ts';
import { page } from '../links.ts';
import { namesOf } from '../names.ts';
import { type KindSums, kindSums } from '../part.ts';
import type { Photos, Shot } from '../photos.ts';

/** Pictures of its parts that a sheet shows. */
const SHOTS = 3;

type Dated = { on: string; day: string };

export type ChoiceShown = {
  path: string;
  question: string;
  open: boolean;
  asked: string;
  state: string;
  /** A part without a page of its own leads nowhere. */
  parts: { text: string; to?: string }[];
  file: string;
  aim: string | undefined;
  decided: (Dated & NonNullable<ReturnType<typeof decision>>) | undefined;
  outcome: ReturnType<typeof outcomeShown>;
  withdrawn: (Dated & { reason: string }) | undefined;
  shots: Shot[];
  heads: { option: string; name: string; chosen: boolean }[];
  /** Nothing where the options can’t be compared, or amounts aren’t seen. */
  sheet: ChoiceSheet | undefined;
  rows: OptionRow[];
  cautions: ReturnType<typeof choiceCautions>;
  stood: string;
  ask: string;
  signers: string[];
  body: Body;
  sums: KindSums | undefined;
  code: string;
};

export function choiceShown(
  choice: Choice,
  { record, rollup, photos }: { record: CarRecord; rollup: Rollup; photos: Photos },
  sees: Sees,
): ChoiceShown {
  const names = namesOf(record);
  const known = new Set(record.parts.map(({ id }) => id));
  const open = isOpen(choice);
  const { withdrawn } = choice;
  const why = decision(choice);
  return {
    path: page.choice(choice.id),
    question: choice.question,
    open,
    asked: datedText(choice.asked),
    state: stateOf(choice, open, sees),
    parts: choice.part.map((part) =>
      known.has(part) ? { text: names.part(part), to: page.part(part) } : { text: part },
    ),
    file: choice.file,
    aim: record.car.aim,
    decided: choice.decided && why && { ...dated(choice.decided.on), ...why },
    outcome: sees.money ? outcomeShown(choice, record, rollup) : undefined,
    withdrawn: withdrawn && { ...dated(withdrawn.on), reason: withdrawn.reason },
    shots: choiceShots(choice, record, photos, SHOTS),
    heads: choice.options.map((option) => ({
      option: option.option,
      name: optionName(option),
      chosen: choice.decided?.option === option.option,
    })),
    sheet: sees.money ? choiceSheet(choice, record, rollup) : undefined,
    rows: optionRows(choice, record),
    cautions: choiceCautions(choice),
    stood: open ? '' : asItStood(choice),
    ask: open ? askedOf(choice) : '',
    signers: signers(record.shop.shop),
    body: choice.body,
    sums: kindSums(
      'choice',
      rollup.tables.choice.rows.find(({ key }) => key === choice.id),
      record,
    ),
    code: record.currency.code,
  };
}

const dated = (on: string): Dated => ({ on, day: datedText(on) });

function stateOf(choice: Choice, open: boolean, { money }: Sees): string {
  if (!open) return choiceState(choice).replace(/:.*/, '');
  if (!money) return 'not decided';
  return choice['needed-by'] ? `needed by ${datedText(choice['needed-by'])}` : choiceState(choice);
}
