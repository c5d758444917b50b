// The choice sheet: what an owner needs before saying yes, on one page and one printed sheet.

import { moneyText } from '../figures/money-text.ts';
import { type CarRecord, type Choice, type Option, photoPath } from '../record/record.ts';
import { chargesOn } from '../rollup/ahead/charges.ts';
import type { About, ChoiceAhead } from '../rollup/ahead/choice-sums.ts';
import { comparedChoice } from '../rollup/ahead/compared.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type Caution, cautionsOf } from './cautions.ts';
import { optionName } from './choices.ts';
import { datedText } from './dated.ts';
import { jsonInPage } from './json-text.ts';
import { type CostRange, costRanges, rangesTitle } from './live/cost-ranges.ts';
import { type Control, controlsOf, controlText } from './live/moved.ts';
import type { Sheet } from './live/sheet.ts';
import { type SheetWords, sheetWords } from './live/sheet-words.ts';
import { type TurnRow, turnRows } from './live/turning-words.ts';
import { capital, words } from './parts.ts';
import { type Photos, type Shot, shotsOf, shotsOfPart } from './photos.ts';

/** A control with the words that stand at it before it is moved. */
export type ShownControl = Control & { text: string };

/** A caution with the options whose work carries it. */
export type OptionCaution = Caution & { options: string[] };

export type ChoiceSheet = {
  sheet: Sheet;
  said: SheetWords;
  turns: TurnRow[];
  ranges: CostRange[];
  title: string;
  /** Rates and what figures rest on, one short line each. */
  basis: string[];
  controls: ShownControl[];
  draws: number;
};

/** The comparison of a choice in words and figures; nothing where its options can't be compared. */
export function choiceSheet(choice: Choice, record: CarRecord, rollup: Rollup): ChoiceSheet | undefined {
  const { ahead, seed, comparison } = comparedChoice(choice, record, rollup.lines);
  if (!comparison) return undefined;
  const sheet: Sheet = {
    currency: record.currency,
    seed,
    sums: ahead.sums,
    names: Object.fromEntries(choice.options.map((option) => [option.option, optionName(option)])),
    labels: Object.fromEntries([...ahead.about].map(([id, about]) => [id, labelOf(about, choice, ahead)])),
    bought: Object.fromEntries(
      choice.options.flatMap((option) => {
        const only = onlyBought(option);
        return only === undefined ? [] : [[option.option, only]];
      }),
    ),
  };
  const ranges = costRanges(sheet, comparison);
  return {
    sheet,
    said: sheetWords(sheet, comparison),
    turns: turnRows(sheet, comparison),
    ranges,
    title: rangesTitle(ranges),
    basis: basisOf(ahead, record, rollup),
    controls: controlsOf(sheet).map((control) => ({
      ...control,
      text: controlText(control, control.value, sheet),
    })),
    draws: comparison.draws,
  };
}

/** The sheet as a page carries it for its script: no text of the record can end the element it stands in. */
export function sheetJson(sheet: Sheet): string {
  return jsonInPage(sheet);
}

/** The hazards of all lines of all options, each with the options that it belongs to. */
export function choiceCautions({ options }: Choice): OptionCaution[] {
  const of = ({ lines }: Option) => lines.flatMap(({ hazards = [] }) => hazards);
  return cautionsOf(options.flatMap(of)).map((caution) => ({
    ...caution,
    options: options
      .filter((option) => of(option).some((hazard) => hazard === caution.hazard))
      .map(optionName),
  }));
}

/** The pictures that a choice names; else the newest of its parts. At most `most`, the oldest of them first. */
export function choiceShots(choice: Choice, record: CarRecord, photos: Photos, most: number): Shot[] {
  if (choice.photos) {
    const named = new Set(choice.photos);
    return record.entries
      .flatMap((entry) => {
        const own = (entry.photos ?? []).filter(({ file }) => named.has(photoPath(file, entry.day)));
        return shotsOf({ ...entry, photos: own }, photos);
      })
      .slice(0, most);
  }
  return choice.part
    .flatMap((part) => shotsOfPart(record, photos, part))
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
    .slice(-most);
}

/** What the owner is asked for: `One of these three ways, by December 5, 2025.` */
export function askedOf(choice: Choice): string {
  const count = COUNT[choice.options.length] ?? String(choice.options.length);
  const by = choice['needed-by'] ? `, by ${datedText(choice['needed-by'])}` : '';
  return `One of these ${count} ways${by}.`;
}

const COUNT = ['', '', 'two', 'three', 'four', 'five', 'six'];

function labelOf(about: About, { options }: Choice, { rates }: ChoiceAhead): string {
  if (about.is === 'rate') return rates.length > 1 ? `an hour of ${list(about.works.map(words))}` : 'an hour';
  const option = options.find(({ option: id }) => id === about.option);
  if (about.is === 'chance') return option ? optionName(option) : about.option;
  const line = option?.lines[about.line];
  const what = line?.do ?? line?.buy ?? about.option;
  const shared = options.some(
    (other) => other !== option && other.lines.some((its) => (its.do ?? its.buy) === what),
  );
  const named = shared && option ? `${what} (${optionName(option).split(',')[0]})` : what;
  if (about.is === 'freight') return `freight of ${named}`;
  if (about.is === 'spend') return `what is bought to ${small(named)}`;
  return about.is === 'outside' ? `${named}, outside` : named;
}

/** The one thing that an option buys, as the subject of a sentence. */
function onlyBought({ lines }: Option): string | undefined {
  const [only, ...others] = lines.filter(({ price, spend, outside }) => price ?? spend ?? outside);
  if (only?.buy === undefined || others.length > 0) return undefined;
  return only.freight ? `${only.buy} with freight` : only.buy;
}

function basisOf({ rates, noRate, day }: ChoiceAhead, record: CarRecord, { lines }: Rollup): string[] {
  const { materials } = chargesOn(record, lines, day);
  const rate = (amount: number) => moneyText(amount, record.currency);
  return [
    ...rates.map(({ rate: amount, works }) =>
      rates.length > 1 ? `${capital(list(works.map(words)))} at ${rate(amount)}` : `Hours at ${rate(amount)}`,
    ),
    ...(noRate.length > 0
      ? [`No rate is set for ${list(noRate.map(words))}: its hours cost nothing here.`]
      : []),
    `With ${materials.hour > 0 || materials.share > 0 ? 'shop materials, ' : ''}handling and tax by the rules of ${datedText(day)}`,
  ];
}

const small = (text: string) => text.replace(/^./u, (first) => first.toLowerCase());
const list = (texts: readonly string[]) =>
  texts.length > 1 ? `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)}` : (texts[0] ?? '');
