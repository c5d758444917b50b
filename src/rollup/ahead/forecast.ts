// The forecast: what is spent, what is left of every planned line, and where that ends, at the rules of the last day.
import type { Both, Finish, ItemLeft } from '../../estimate/uncertain/finish.ts';
import { CORRELATION, DRAWS } from '../../estimate/uncertain/sample.ts';
import type { Day } from '../../figures/days.ts';
import type { Minor } from '../../figures/money.ts';
import { figuresDigest } from '../../record/figures-digest.ts';
import { once } from '../../record/once.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import {
  type ChoiceLeft,
  choiceAt,
  choiceItem,
  choicesLeft,
  sumsOf,
  type Uncounted,
} from './choices-left.ts';
import { lastDay, seedOf } from './compared.ts';
import { drawnName, drawnOnce } from './drawn-before.ts';
import { type Experience, experienceOf } from './experience.ts';
import { type FinishDraws, finishFigures } from './finish-draws.ts';
import type { LineLeft } from './line-left.ts';
import {
  expectedMaterials,
  itemFrom,
  likelyMoney,
  linesAhead,
  type OpenLine,
  worksWithoutRate,
} from './lines-ahead.ts';
import { capped, pricesOf } from './prices.ts';

/** What is left of a planned line. `over` is what has reached its high end: hours, or vendors' prices. */
export type LineAhead = ItemLeft &
  OpenLine & {
    begun: boolean;
    /** The day of the writer's word, where that says what is left and not the plan. */
    since: Day | undefined;
    over: { of: keyof LineLeft; spent: number; high: number }[];
  };

/** A choice that stands for the lines that it settles. */
export type ChoiceAhead = ItemLeft & ChoiceLeft;

/** Money in minor units, hours in hours. */
export type Forecast = Pick<Finish, 'draws' | 'left' | 'finish' | 'quantiles'> & {
  day: Day;
  correlation: number;
  spent: Both<number>;
  agreed: Minor;
  /** Chance of ending within what was agreed; nothing without an agreement. */
  within: { chance: number; error: number } | undefined;
  /** Agreed less the P80 of the finish: below zero where it is short. */
  spare: number;
  /** Spent, and what is likely for each line as written. The contingency is the P80 of the finish less that. */
  likelyFinish: number;
  contingency: number;
  lines: LineAhead[];
  choices: ChoiceAhead[];
  uncounted: Uncounted[];
  unestimated: OpenLine[];
  /** Kinds of work that are left and have no rate: their hours count, their money doesn't. */
  noRate: string[];
  /** Share of the materials expected that a cap lets pass; 1 unless it binds. */
  materials: number;
  experience: Experience;
};

export type ForecastOptions = { corrected?: boolean; draws?: number };

const kept = once((_rollup: Rollup) => new Map<string, Forecast>());

/** `corrected: false` takes the ranges as written, whatever finished lines took. Worked out once for a roll-up. */
export function forecastOf(
  record: CarRecord,
  rollup: Rollup,
  { corrected = true, draws = DRAWS }: ForecastOptions = {},
): Forecast {
  const known = kept(rollup);
  const name = `${corrected} ${draws}`;
  const forecast = known.get(name) ?? drawn(record, rollup, corrected, draws);
  known.set(name, forecast);
  return forecast;
}

/**
 * The draws of the forecasts that pages show: with what finished lines taught, and without where they taught anything.
 * Those whose results are `known` are left out.
 */
export function finishDraws(
  record: CarRecord,
  rollup: Rollup,
  known: (name: string) => boolean = () => false,
): FinishDraws[] {
  const { hours, money } = basisOf(record, rollup, true).experience;
  const both = hours.used || money.used ? [true, false] : [true];
  return both
    .map((corrected) => ({ corrected, draws: DRAWS }))
    .filter((options) => !known(finishName(record, options)))
    .map((options) => drawsOf(basisOf(record, rollup, options.corrected), record, rollup, options));
}

/** What a forecast rests on before anything is drawn. */
type Basis = ReturnType<typeof basisFor>;

const bases = once((_rollup: Rollup) => new Map<boolean, Basis>());

function basisOf(record: CarRecord, rollup: Rollup, corrected: boolean): Basis {
  const known = bases(rollup);
  const basis = known.get(corrected) ?? basisFor(record, rollup, corrected);
  known.set(corrected, basis);
  return basis;
}

function basisFor(record: CarRecord, rollup: Rollup, corrected: boolean) {
  const experience = experienceOf(record, rollup, corrected);
  const { counted, uncounted } = choicesLeft(record, rollup);
  const { lines, unestimated } = linesAhead(record, rollup, experience, counted);
  const before = pricesOf(record, rollup.lines);
  const prices = capped(before, expectedMaterials(lines, counted, record, rollup, before));
  const spent = { hours: rollup.total.minutes / 60, money: rollup.total.charged };
  return { experience, counted, uncounted, lines, unestimated, prices, spent };
}

function drawsOf(
  { lines, counted, prices, spent }: Basis,
  record: CarRecord,
  rollup: Rollup,
  { corrected, draws }: Required<ForecastOptions>,
): FinishDraws {
  const priced = lines.map((line) => ({ line, item: itemFrom(line, prices) }));
  const choices = counted.map((each) => ({ each, sums: sumsOf(each.choice, record, rollup, prices) }));
  return {
    name: finishName(record, { corrected, draws }),
    spent,
    items: priced.map(({ item }) => item),
    choices: choices.map(({ each: { choice, chosen }, sums }) => ({
      id: choice.id,
      ...(chosen !== undefined && { chosen }),
      sums,
    })),
    sampling: { seed: seedOf(record), draws },
    agreed: rollup.agreed,
    likelyLeft:
      sum(priced.map(({ line, item }) => likelyMoney(line, item))) +
      sum(choices.map(({ each, sums }) => choiceAt(each, sums, 'likely').money)),
  };
}

const finishFrom = (record: CarRecord, { corrected, draws }: Required<ForecastOptions>) => [
  figuresDigest(record),
  corrected,
  draws,
];

const finishName = (record: CarRecord, options: Required<ForecastOptions>) =>
  drawnName('finish', finishFrom(record, options));

function drawn(record: CarRecord, rollup: Rollup, corrected: boolean, draws: number): Forecast {
  const basis = basisOf(record, rollup, corrected);
  const { experience, counted, uncounted, lines, unestimated, prices, spent } = basis;
  const { agreed, planned } = rollup;
  const options = { corrected, draws };
  const { within, likelyLeft, items, ...finish } = drawnOnce(
    record,
    'finish',
    finishFrom(record, options),
    () => finishFigures(drawsOf(basis, record, rollup, options)),
  );
  const byId = new Map(items.map((item) => [item.id, item]));
  const left = (id: string) => byId.get(id) as ItemLeft;
  const likelyFinish = spent.money + likelyLeft;
  return {
    ...finish,
    day: lastDay(record),
    correlation: CORRELATION,
    spent,
    agreed,
    within,
    spare: agreed - finish.finish.money.p80,
    likelyFinish,
    contingency: finish.finish.money.p80 - likelyFinish,
    lines: lines.map(({ id, part, line, left: own }) => ({
      ...left(id),
      part,
      line,
      begun: planned[id]?.begun ?? false,
      since: own.hours?.since ?? own.spend?.since,
      over: overOf(own),
    })),
    choices: counted.map((each) => ({ ...left(choiceItem(each.choice)), ...each })),
    uncounted,
    unestimated,
    noRate: worksWithoutRate(lines, counted, prices),
    materials: prices.share,
    experience,
  };
}

function overOf(left: LineLeft): LineAhead['over'] {
  return (['hours', 'spend', 'outside'] as const).flatMap((of) => {
    const over = left[of]?.over;
    return over ? [{ of, ...over }] : [];
  });
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
