// The figures and sentences of a choice sheet. They say what each way may cost and where that turns, and rank nothing.
import type { Comparison, OptionOutlook } from '../../estimate/uncertain/choice/compare.ts';
import { minutesText } from '../../figures/hours.ts';
import { moneyText } from '../../figures/money-text.ts';
import type { Range } from '../../figures/ranges.ts';
import { hoursAbout, hoursSpan, moneyAbout, moneySpan } from './rounded.ts';
import { estimate, type Said } from './said.ts';
import { type Sheet, shortName } from './sheet.ts';
import { leastExpected, turnClauses } from './turning-words.ts';

/** What the table says of one option. `cost` is the expected cost, `span` from P10 to P90 with the middle. */
export type OptionFigures = { id: string; cost: string; span: string; hours: string; cheapest: string };

/** The sentences under the figure, each with the words it begins with. */
export type Sentence = { head: string; text: Said };

export type SheetWords = { options: OptionFigures[]; sentences: Sentence[] };

export function sheetWords(sheet: Sheet, comparison: Comparison): SheetWords {
  return {
    options: comparison.options.map((option) => figuresOf(option, sheet)),
    sentences: [
      cheapest(sheet, comparison),
      turns(sheet, comparison),
      ...swings(sheet, comparison),
      trial(sheet, comparison),
    ],
  };
}

function figuresOf({ id, cost, hours, cheapest }: OptionOutlook, { currency }: Sheet): OptionFigures {
  const spread = cost.p90 - cost.p10;
  return {
    id,
    cost: moneyAbout(cost.expected, spread, currency),
    span:
      spread === 0
        ? 'certain'
        : `${moneySpan(cost.p10, cost.p90, currency)}, middle ${moneyAbout(cost.p50, spread, currency)}`,
    hours:
      hours.p90 === hours.p10
        ? hoursAbout(hours.expected, 0)
        : `${hoursSpan(hours.p10, hours.p90)}, expected ${hoursAbout(hours.expected, hours.p90 - hours.p10)}`,
    cheapest: `${hundred(cheapest.chance)} of 100`,
  };
}

/** How often each costs least, and how far apart the two least expected are. */
function cheapest(sheet: Sheet, comparison: Comparison): Sentence {
  const [first, ...rest] = comparison.options.toSorted(
    (a, b) => b.cheapest.chance - a.cheapest.chance || (a.id < b.id ? -1 : 1),
  );
  const name = (id: string) => shortName(sheet, id);
  const shares = rest.map((option) => `${name(option.id)} in ${hundred(option.cheapest.chance)}`);
  const said = first
    ? `${name(first.id)} in ${hundred(first.cheapest.chance)} of 100${shares.map((text) => `, ${text}`).join('')}. `
    : '';
  return { head: 'Cheapest.', text: [said, ...apart(sheet, comparison)] };
}

function apart(sheet: Sheet, comparison: Comparison): Said {
  const [least = '', next = ''] = leastExpected(comparison);
  const against = comparison.options
    .find(({ id }) => id === least)
    ?.against.find(({ other }) => other === next);
  if (!against) return [];
  const spread = against.p90 - against.p10;
  const money = (amount: number) => estimate(moneyAbout(Math.abs(amount), spread, sheet.currency));
  const way = (amount: number) => (amount > 0 ? ' more' : ' less');
  const [low, high] = [against.p10, against.p90];
  const between: Said =
    low < 0 && high > 0
      ? ['between ', money(low), ' less and ', money(high), ' more.']
      : [
          'between ',
          money(Math.min(Math.abs(low), Math.abs(high))),
          ' and ',
          money(Math.max(Math.abs(low), Math.abs(high))),
          `${way(low + high)}.`,
        ];
  return [
    `On average ${shortName(sheet, least)} costs `,
    money(against.mean),
    ` less than ${shortName(sheet, next)}; eight times in ten, `,
    ...between,
  ];
}

function turns(sheet: Sheet, comparison: Comparison): Sentence {
  const head = 'The answer turns';
  const [least = ''] = leastExpected(comparison);
  const name = shortName(sheet, least);
  const ways = turnClauses(sheet, comparison);
  if (ways.length === 0) {
    return { head, text: [`nowhere near these figures: ${name} is expected to cost least throughout.`] };
  }
  const many = comparison.options.length > 2;
  const said = ways.map(
    ({ to, clauses }) => `${many ? `to ${shortName(sheet, to)} ` : ''}if ${either(clauses)}`,
  );
  return { head, text: [`from ${name} ${said.join('; ')}.`] };
}

function either(clauses: readonly string[]): string {
  return clauses.length > 1 ? `${clauses.slice(0, -1).join(', ')} or ${clauses.at(-1)}` : (clauses[0] ?? '');
}

/** The two lines that move the difference of the two least expected most, each at both its ends. */
function swings(sheet: Sheet, comparison: Comparison): Sentence[] {
  const two = leastExpected(comparison).slice(0, 2);
  const pair = comparison.pairs.find(({ first, second }) => two.includes(first) && two.includes(second));
  const widest = (pair?.swings ?? []).slice(0, 2).flatMap(({ driver }) => {
    const found = sheet.sums.drivers.find(({ id }) => id === driver);
    return found ? [{ label: sheet.labels[driver] ?? driver, range: found.range, kind: found.kind }] : [];
  });
  if (widest.length === 0) return [];
  const text = widest.flatMap(
    ({ label, range, kind }, i): Said => [
      `${i > 0 ? '; then ' : ''}${label}, `,
      estimate(rangeOf(range, kind, sheet)),
    ],
  );
  return [{ head: 'What swings it most:', text: [...text, '.'] }];
}

function rangeOf({ low, high }: Range, kind: string, { currency }: Sheet): string {
  if (kind === 'hours') return hoursSpan(low, high);
  const money = (amount: number) => moneyText(amount, currency).replace(/\.0+$/, '');
  return `${money(low)} – ${money(high)}`;
}

/** What it is worth at most to know beforehand, in money and in hours at the dearest rate. */
function trial({ currency, sums }: Sheet, { knowing }: Comparison): Sentence {
  const head = 'A trial.';
  const one = 10 ** currency.digits;
  if (knowing.worth < one) {
    return {
      head,
      text: [
        'To know for certain beforehand would change nothing: the same way costs least however it goes.',
      ],
    };
  }
  const hours = knowing.hours === null ? '' : hoursWorth(knowing.hours);
  const rate = sums.hourly === undefined ? '' : moneyText(Math.round(sums.hourly), currency);
  return {
    head,
    text: [
      'To know for certain beforehand is worth at most ',
      estimate(moneyAbout(knowing.worth, knowing.worth, currency)),
      ...(hours ? [`, or ${hours} of work at ${rate}`] : []),
      '. A trial that tells less is worth less.',
    ],
  };
}

function hoursWorth(hours: number): string {
  if (hours >= 10) return `${Math.round(hours)} h`;
  const minutes = Math.max(5, Math.round(hours * 12) * 5);
  return minutes < 60 ? `${minutes} minutes` : minutesText(minutes);
}

const hundred = (chance: number) => Math.round(chance * 100);
