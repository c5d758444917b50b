// A choice of the record as the sums of a choice take it: every line of an option becomes what drives its cost.
import type {
  Choice as ChoiceSums,
  Driver,
  Group,
  Option as OptionSums,
  Term,
} from '../../estimate/uncertain/choice/choice.ts';
import type { Day } from '../../figures/days.ts';
import { certain } from '../../figures/ranges.ts';
import type { CarRecord, Choice, Option } from '../../record/record.ts';
import type { CostLine } from '../cost-lines.ts';
import { type Bill, type Charges, chargesOn } from './charges.ts';
import { inHours, rateOf } from './hours.ts';

/** What a driver stands for. `line` counts the option's lines from 0; `works` are the kinds of work at one rate. */
export type About =
  | { is: 'hours' | 'price' | 'freight' | 'spend' | 'outside'; option: string; line: number }
  | { is: 'chance'; option: string }
  | { is: 'rate'; works: string[] };

/**
 * `about` by driver. Groups are named `hours <option>` and `money <option>`. Works in `noRate` have hours and no rate:
 * their hours cost nothing here.
 */
export type ChoiceAhead = {
  sums: ChoiceSums;
  about: ReadonlyMap<string, About>;
  rates: { driver: string; rate: number; works: string[] }[];
  noRate: string[];
  day: Day;
};

/** The prices of a choice, where they aren't those of the day: minor units an hour, and what comes on top. */
export type OwnPrices = { rate?: (work: string) => number | undefined; charges?: Charges };

/**
 * Money in minor units, hours in hours, at the rules of a day. Hours cost their rate and the materials that go with
 * it; prices carry tax, freight and handling. A price fixed beforehand takes the place of what its hours would cost.
 */
export function choiceAhead(
  choice: Choice,
  record: CarRecord,
  lines: readonly CostLine[],
  day: Day,
  { rate = (work) => rateOf(record, work, day), charges = chargesOn(record, lines, day) }: OwnPrices = {},
): ChoiceAhead {
  const rates = ratesOf(choice, rate);
  const about = new Map<string, About>();
  const drivers: Driver[] = [];
  const put = (driver: Driver, what: About) => {
    drivers.push(driver);
    about.set(driver.id, what);
  };
  for (const { driver, rate, works } of rates.known) {
    put({ id: driver, kind: 'rate', range: certain(rate) }, { is: 'rate', works });
  }
  const options = choice.options.map((option) => optionSums(option, charges, rates.byWork, put));
  const groups = choice.options.flatMap(({ option }): Group[] => {
    const of = (kind: Driver['kind']) =>
      drivers.filter(({ id, kind: its }) => its === kind && id.startsWith(`${option}: `)).map(({ id }) => id);
    return [
      { id: `hours ${option}`, drivers: of('hours') },
      { id: `money ${option}`, drivers: of('price') },
    ].filter(({ drivers: members }) => members.length > 0);
  });
  const hourly = Math.max(0, ...rates.known.map(({ rate }) => rate));
  return {
    sums: { drivers, options, groups, ...(hourly > 0 && { hourly }) },
    about,
    rates: rates.known,
    noRate: rates.unknown,
    day,
  };
}

/** Kinds of work that are charged alike are one driver: the owner asks what an hour costs, not an hour of each. */
function ratesOf(choice: Choice, rateOfWork: (work: string) => number | undefined) {
  const works = new Set(
    choice.options.flatMap(({ lines }) =>
      lines.flatMap(({ work, hours }) => (work !== undefined && hours ? [work] : [])),
    ),
  );
  const byRate = Map.groupBy([...works].sort(), rateOfWork);
  const known = [...byRate].flatMap(([rate, alike]) =>
    rate === undefined ? [] : [{ driver: `rate of ${alike.join(', ')}`, rate, works: alike }],
  );
  const byWork = new Map(known.flatMap(({ driver, works: alike }) => alike.map((work) => [work, driver])));
  return { known, byWork, unknown: byRate.get(undefined) ?? [] };
}

type Put = (driver: Driver, what: About) => void;

function optionSums(
  { option, lines, wait, 'can-fail': fail, 'fixed-price': fixed }: Option,
  charges: Charges,
  rates: ReadonlyMap<string, string>,
  put: Put,
): OptionSums {
  const terms = lines.flatMap((line, i): Term[] => {
    const name = `${option}: ${line.line ?? i}`;
    const money = (is: 'price' | 'freight' | 'spend' | 'outside', kind: Bill): Term[] => {
      const range = line[is];
      if (!range) return [];
      const id = `${name} ${is}`;
      put({ id, kind: 'price', range }, { is, option, line: i });
      const tax = is === 'price' || is === 'freight' ? line.tax : undefined;
      return [{ amount: id, times: charges.factor(kind, kind === 'freight' ? undefined : tax) }];
    };
    return [
      ...hoursTerms(line, name, charges, rates, (driver) =>
        put(driver, { is: 'hours', option, line: i }),
      ).map((term) => (fixed === undefined ? term : { ...term, times: 0 })),
      ...money('price', 'bought'),
      ...money('freight', 'freight'),
      ...money('spend', 'bought'),
      ...money('outside', 'outside'),
    ];
  });
  if (fixed !== undefined) {
    const id = `${option}: fixed price`;
    const of = Math.max(
      0,
      lines.findIndex(({ hours }) => hours),
    );
    put({ id, kind: 'price', range: certain(fixed) }, { is: 'price', option, line: of });
    terms.push({ amount: id, times: charges.labour });
  }
  const chance = `${option}: fails`;
  if (fail)
    put({ id: chance, kind: 'chance', range: certain(Number(fail.chance)) }, { is: 'chance', option });
  return {
    id: option,
    terms,
    ...(fail && { canFail: { chance, after: Number(fail.after), next: fail.then } }),
    ...(wait && { wait }),
  };
}

/** An hour costs rate × (1 + tax + share of materials) + materials by the hour. */
function hoursTerms(
  { hours, work }: Option['lines'][number],
  name: string,
  { labour, materials }: Charges,
  rates: ReadonlyMap<string, string>,
  put: (driver: Driver) => void,
): Term[] {
  if (!hours) return [];
  const id = `${name} hours`;
  put({ id, kind: 'hours', range: inHours(hours) });
  const rate = work === undefined ? undefined : rates.get(work);
  return [
    ...(rate === undefined ? [] : [{ amount: id, by: [rate], times: labour + materials.share }]),
    { amount: id, times: rate === undefined ? 0 : materials.hour },
  ];
}
