// Choices: the question, the options as they were written, the decision. No comparison is drawn here.
import type { Currency } from '../figures/currency.ts';
import { shortDayText } from '../figures/days.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord, Choice, Option } from '../record/record.ts';
import { namesOf } from './names.ts';
import { words } from './parts.ts';
import { daysRangeText, hoursRangeText, moneyRangeText } from './range-text.ts';

/** `decided on June 11: repair`, `open, needed by December 5`, `withdrawn on July 1`. */
export function choiceState(choice: Choice): string {
  if (choice.withdrawn) return `withdrawn on ${shortDayText(choice.withdrawn.on)}`;
  if (choice.decided)
    return `decided on ${shortDayText(choice.decided.on)}: ${decidedName(choice).toLowerCase()}`;
  return choice['needed-by'] ? `open, needed by ${shortDayText(choice['needed-by'])}` : 'open';
}

/** The heading of an option: its name, or its id in words. */
export function optionName(option: Option): string {
  return option.name ?? words(option.option).replace(/^./, (first) => first.toUpperCase());
}

/** Open choices first by the day they are needed, then decided, then withdrawn. */
export function choiceGroups(record: CarRecord): { title: string; choices: Choice[] }[] {
  const by = (choice: Choice) => choice['needed-by'] ?? choice.asked;
  const sorted = [...record.choices].sort((a, b) => (by(a) < by(b) ? -1 : 1));
  return [
    { title: 'Open', choices: sorted.filter(({ decided, withdrawn }) => !decided && !withdrawn) },
    { title: 'Decided', choices: sorted.filter(({ decided, withdrawn }) => decided && !withdrawn) },
    { title: 'Withdrawn', choices: sorted.filter(({ withdrawn }) => withdrawn) },
  ].filter(({ choices }) => choices.length > 0);
}

/** What stands beside the options, a row each; an option that says nothing has an empty cell. */
export function optionRows(choice: Choice, record: CarRecord): { head: string; cells: string[][] }[] {
  const { options } = choice;
  const name = (id: string) => {
    const option = options.find((each) => each.option === id);
    return option ? optionName(option) : id;
  };
  const rows: [string, (option: Option) => string[]][] = [
    ['Way', (option) => [words(option.way)]],
    ['Work', (option) => workLines(option, record)],
    ['To buy', (option) => buyLines(option, record)],
    ['Wait', ({ wait }) => (wait ? [daysRangeText(wait)] : [])],
    ['Original kept', ({ keeps }) => (keeps === undefined ? [] : [shareText(keeps)])],
    [
      'Can fail',
      ({ 'can-fail': fail }) =>
        fail
          ? [
              `${shareText(fail.chance)}; ${shareText(fail.after)} of its cost is spent by then, and “${name(fail.then)}” follows.`,
            ]
          : [],
    ],
    ['Mark', ({ mark }) => (mark ? [mark] : [])],
    ['For', (option) => option.for ?? []],
    ['Against', (option) => option.against ?? []],
  ];
  return rows
    .map(([head, of]) => ({ head, cells: options.map(of) }))
    .filter(({ cells }) => cells.some((cell) => cell.length > 0));
}

function decidedName(choice: Choice): string {
  const option = choice.options.find(({ option: id }) => id === choice.decided?.option);
  return option ? optionName(option) : (choice.decided?.option ?? '');
}

function workLines({ lines }: Option, { currency }: CarRecord): string[] {
  return lines.flatMap(({ do: what, work, hours, spend, outside, hazards }) => {
    if (what === undefined) return [];
    const figures = [
      hours ? hoursRangeText(hours) : '',
      spend ? `to buy ${moneyRangeText(spend, currency)}` : '',
      outside ? `outside ${moneyRangeText(outside, currency)}` : '',
      hazards ? `care: ${hazards.map(words).join(', ')}` : '',
    ].filter((figure) => figure !== '');
    return [`${what}${work ? ` (${work})` : ''}: ${figures.join('; ') || 'no figures'}`];
  });
}

function buyLines({ lines }: Option, record: CarRecord): string[] {
  const names = namesOf(record);
  return lines.flatMap(({ buy, price, freight, tax, from }) =>
    buy === undefined
      ? []
      : [
          `${buy}${from ? ` from ${names.vendor(from)}` : ''}: ${priceText(record.currency, price, freight, tax)}`,
        ],
  );
}

function priceText(
  currency: Currency,
  price: Parameters<typeof moneyRangeText>[0] | undefined,
  freight?: Parameters<typeof moneyRangeText>[0],
  tax?: string,
): string {
  return [
    price ? moneyRangeText(price, currency) : 'no price',
    freight ? `freight ${moneyRangeText(freight, currency)}` : '',
    tax ? `tax ${shareText(tax)}` : '',
  ]
    .filter((text) => text !== '')
    .join('; ');
}
