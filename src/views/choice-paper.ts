// A choice in print, as plain data: the page's words and figures in the order of the paper. Open, it is the sheet that
// the owner decides on; decided or withdrawn, it is the reasons for good.
import type { CarRecord, Choice } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type Block, blocksOf } from './book/blocks.ts';
import { CAUTION_CLOSING } from './cautions.ts';
import { optionRows, type Saying } from './choice.ts';
import { type OutcomeShown, outcomeShown } from './choice-outcome.ts';
import { askedOf, type ChoiceSheet, choiceCautions, choiceSheet, choiceShots } from './choice-sheet.ts';
import {
  asItStood,
  barsCaption,
  COST_IS_ONE_LINE,
  FIGURE_HEADS,
  isOpen,
  NOTHING_LOGGED,
  rangesNote,
  signers,
  TRIAL_FIRST,
} from './choice-words.ts';
import { choiceState, decision, optionName } from './choices.ts';
import { datedText } from './dated.ts';
import { about, type FigureTable, figure } from './figure-table.ts';
import type { OptionFigures } from './live/sheet-words.ts';
import { namesOf } from './names.ts';
import { kindSums } from './part.ts';
import { capital } from './parts.ts';
import type { Photos } from './photos.ts';
import { onScale, type Scaled } from './ranges-on-scale.ts';
import { captionText, takenText } from './shot-words.ts';

/** A run of words; an estimate is set in italics. */
type Piece = { text: string; estimate: boolean };
/** One thing that an option says; `big` is its expected cost. */
type Line = { pieces: Piece[]; care: string; big: boolean };
/** One row of the options side by side: some lines for each, none where it says nothing. */
type Row = { head: string; cells: Line[][] };

export type ChoicePaper = {
  title: string;
  open: boolean;
  car: string;
  built: string;
  shop: string;
  question: string;
  /** When it was asked, how it stands, which parts it is about. */
  marks: string[];
  aim: string | undefined;
  decided: { on: string; chosen: string; by: string; reason: string } | undefined;
  withdrawn: { on: string; reason: string } | undefined;
  outcome: { basis: string; sentence: string; table: FigureTable } | undefined;
  /** `file` is the web picture's. */
  shots: { file: string; ratio: number; alt: string; caption: string; day: string }[];
  basis: string[];
  options: { name: string; taken: boolean }[];
  rows: Row[];
  /** Bars and sentences; nothing where the options can't be compared. */
  compared: { scale: Scaled; alt: string; caption: string; sentences: Sentence[]; stood: string } | undefined;
  cautions: { name: string; of: string; text: string; source: string }[];
  closing: string;
  /** Where the owner's word is asked for. */
  sign: { asked: string; boxes: string[]; signers: string[] } | undefined;
  looked: Block[];
  logged: { says: string; table: FigureTable | undefined } | undefined;
  foot: string;
};
type Sentence = { head: string; pieces: Piece[] };

/** What is printed of a choice. At most three pictures, as on its page; planned work is left to the page while it is open. */
export function choicePaper(choice: Choice, record: CarRecord, rollup: Rollup, photos: Photos): ChoicePaper {
  const { car, shop } = record;
  const open = isOpen(choice);
  const shown = choiceSheet(choice, record, rollup);
  const last = record.entries.at(-1)?.day;
  const said = decision(choice);
  return {
    title: open ? 'Choice sheet' : 'Choice',
    open,
    car: car.name,
    built: car.built,
    shop: shop.shop,
    question: choice.question,
    marks: marksOf(choice, record),
    aim: car.aim,
    decided: choice.decided && said && { on: datedText(choice.decided.on), ...said },
    withdrawn: choice.withdrawn && { ...choice.withdrawn, on: datedText(choice.withdrawn.on) },
    outcome: outcomeOf(outcomeShown(choice, record, rollup)),
    shots: choiceShots(choice, record, photos, 3).map((shot) => ({
      file: shot.file,
      ratio: shot.ratio,
      alt: shot.alt,
      caption: captionText(shot),
      day: takenText(shot),
    })),
    basis: [...(shown?.basis ?? []), rangesNote(true)],
    options: choice.options.map((option) => ({
      name: optionName(option),
      taken: !choice.withdrawn && choice.decided?.option === option.option,
    })),
    rows: [...figureRows(choice, shown?.said.options), ...writtenRows(choice, record)],
    compared: shown && comparedOf(shown, choice),
    cautions: choiceCautions(choice).map(({ name, text, source, options }) => ({
      name,
      of: options.length === choice.options.length ? 'all' : options.join('; '),
      text,
      source,
    })),
    closing: `${CAUTION_CLOSING} ${COST_IS_ONE_LINE}`,
    sign: open
      ? {
          asked: askedOf(choice),
          boxes: [...choice.options.map(optionName), TRIAL_FIRST],
          signers: signers(shop.shop),
        }
      : undefined,
    looked: open ? [] : blocksOf(choice.body.tree),
    logged: open ? undefined : loggedOf(choice, record, rollup),
    foot: `${last ? `Written up to ${datedText(last)}. ` : ''}Amounts in ${record.currency.code}.`,
  };
}

function marksOf(choice: Choice, record: CarRecord): string[] {
  const names = namesOf(record);
  const by = choice['needed-by'];
  const state = isOpen(choice) && by ? `needed by ${datedText(by)}` : choiceState(choice).replace(/:.*/, '');
  return [`asked ${datedText(choice.asked)}`, state, choice.part.map(names.part).join(', ')];
}

function outcomeOf(outcome: OutcomeShown | undefined): ChoicePaper['outcome'] {
  return (
    outcome && {
      basis: outcome.basis,
      sentence: outcome.sentence,
      table: {
        caption: 'What it took against what was foreseen',
        head: '',
        columns: ['Expected', 'Foreseen range', 'Took', 'Where in the range'].map((head) => ({ head })),
        rows: outcome.rows.map(({ what, expected, range, took, where }) => ({
          head: what,
          cells: [about(expected), about(range), figure(took), figure(where)],
        })),
      },
    }
  );
}

const line = (pieces: Piece[], care = '', big = false): Line => ({ pieces, care, big });
const upright = (text: string): Piece => ({ text, estimate: false });
const estimated = (text: string): Piece => ({ text, estimate: true });

/** What each option may cost; no rows where they can't be compared. */
function figureRows({ options }: Choice, figures: readonly OptionFigures[] | undefined): Row[] {
  if (!figures) return [];
  const row = (head: string, lines: (of: OptionFigures) => Line[]): Row => ({
    head,
    cells: options.map(({ option }) => figures.filter(({ id }) => id === option).flatMap(lines)),
  });
  return [
    row(FIGURE_HEADS.cost, ({ cost, span }) => [line([estimated(cost)], '', true), line([estimated(span)])]),
    row(FIGURE_HEADS.hours, ({ hours }) => [line([estimated(hours)])]),
    row(FIGURE_HEADS.cheapest, ({ cheapest }) => [line([upright(cheapest)])]),
  ];
}

/** What was written of each option, its figures behind its words. */
function writtenRows(choice: Choice, record: CarRecord): Row[] {
  const left = isOpen(choice) ? ['Way', 'Work'] : [];
  return optionRows(choice, record)
    .filter(({ head }) => !left.includes(head))
    .map(({ head, cells }) => ({ head, cells: cells.map((sayings) => sayings.map(lineOf)) }));
}

function lineOf({ text, figures, care }: Saying): Line {
  const behind = figures.flatMap(({ before, text: figure, estimate }, i): Piece[] => [
    upright(`${i > 0 ? '; ' : text === '' ? '' : ': '}${before}`),
    { text: figure, estimate },
  ]);
  return line([upright(text), ...behind], care);
}

function comparedOf({ sheet, said, ranges, title, draws }: ChoiceSheet, choice: Choice) {
  return {
    scale: onScale(ranges, sheet.currency),
    alt: title,
    caption: barsCaption(draws),
    sentences: said.sentences.map(({ head, text }) => ({
      head,
      pieces: text.map((piece) => (typeof piece === 'string' ? upright(piece) : estimated(piece.estimate))),
    })),
    stood: isOpen(choice) ? '' : capital(asItStood(choice)),
  };
}

function loggedOf(choice: Choice, record: CarRecord, rollup: Rollup): ChoicePaper['logged'] {
  const sums = kindSums(
    'choice',
    rollup.tables.choice.rows.find(({ key }) => key === choice.id),
    record,
  );
  if (!sums) return { says: NOTHING_LOGGED, table: undefined };
  const row = ({ name, time, charged, from }: Omit<(typeof sums.rows)[number], 'to'>) => ({
    head: name,
    cells: [time, charged, from].map((text) => figure(text)),
  });
  return {
    says: `Hours and bills of this choice, in ${record.currency.code}.`,
    table: {
      caption: 'Logged to it so far',
      head: 'Kind',
      columns: ['Hours', 'Charged', 'Lines'].map((head) => ({ head })),
      rows: sums.rows.map(row),
      foot: row({ ...sums, name: 'All' }),
    },
  };
}
