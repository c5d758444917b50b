// The finish: what is spent, and what is left of every item drawn together, in hours and in money.
import { type Curve, curveMean, scaledCurve, valueAt } from './curve.ts';
import { normalQuantile } from './normal.ts';
import { drawerFor, type Sampling } from './sample.ts';
import { percentilesOf } from './select.ts';
import { spreadByLine } from './spread.ts';
import {
  chanceAtMost,
  chanceError,
  meanAndDeviation,
  quantileOf,
  type Summary,
  sortedDraws,
  summarize,
} from './summary.ts';

/** Money in any unit, hours in hours. */
export type Both<T> = { hours: T; money: T };

/** What is left of one item. Each of its hours costs `perHour`; each amount of `money` is charged times `factor`. */
export type Item = {
  id: string;
  hours?: Curve;
  perHour: number;
  money: readonly { id: string; curve: Curve; factor: number }[];
};

/** An item that was drawn elsewhere with the same seed and as many draws, such as an open choice. */
export type DrawnItem = { id: string } & Both<Float64Array>;

export type Ahead = { spent: Both<number>; items: readonly Item[]; drawn?: readonly DrawnItem[] };

/** `p10` and `p90` are read off the curve where the item has but one, else off the draws. */
export type Span = { mean: number; p10: number; p90: number };

/** `share` of the spread of the money at the finish that comes with the item. */
export type ItemLeft = { id: string; share: number } & Both<Span>;

export type Finish = {
  draws: number;
  left: Both<Summary>;
  finish: Both<Summary>;
  /** Money at the finish with 1%, 2% … 99% of the draws below it. */
  quantiles: number[];
  /** In the order given, drawn ones last. */
  items: ItemLeft[];
  /** Chance that the money at the finish is at most so much, with its standard error. */
  within: (money: number) => { chance: number; error: number };
};

/**
 * The order of the items changes nothing.
 * @throws RangeError as `drawerFor` does, and for items drawn elsewhere another number of times.
 */
export function finishOf({ spent, items, drawn = [] }: Ahead, sampling: Sampling): Finish {
  const drawer = drawerFor(sampling);
  const odd = drawn.find(
    ({ hours, money }) => hours.length !== drawer.draws || money.length !== drawer.draws,
  );
  if (odd) throw new RangeError(`${odd.id} is drawn another number of times than ${drawer.draws}`);
  const all = [...items.map((item) => drawnItem(item, drawer)), ...drawn];
  const totals = { hours: totalOf(all, 'hours', drawer.draws), money: totalOf(all, 'money', drawer.draws) };
  const sorted = { hours: sortedDraws(totals.hours), money: sortedDraws(totals.money) };
  const left = { hours: summarize(sorted.hours), money: summarize(sorted.money) };
  const shares = new Map(
    spreadByLine({
      draws: drawer.draws,
      lines: all.map(({ id, money }) => ({ id, values: money })),
      totals: totals.money,
    }).map(({ id, share }) => [id, share]),
  );
  const spans = [...items.map((item, i) => itemSpans(item, all[i] as DrawnItem)), ...drawn.map(drawnSpans)];
  return {
    draws: drawer.draws,
    left,
    finish: { hours: moved(left.hours, spent.hours), money: moved(left.money, spent.money) },
    quantiles: Array.from({ length: 99 }, (_, i) => spent.money + quantileOf(sorted.money, (i + 1) / 100)),
    items: all.map(({ id }, i) => ({ id, share: shares.get(id) ?? 0, ...(spans[i] as Both<Span>) })),
    within: (money) => {
      const chance = chanceAtMost(sorted.money, money - spent.money);
      return { chance, error: chanceError(chance, drawer.draws) };
    },
  };
}

function drawnItem({ id, hours, perHour, money }: Item, drawer: ReturnType<typeof drawerFor>): DrawnItem {
  const worked = hours ? drawer.draw(`${id} hours`, hours) : new Float64Array(drawer.draws);
  const cost = new Float64Array(drawer.draws);
  if (hours && perHour > 0) add(cost, worked, perHour);
  for (const part of money) add(cost, drawer.draw(`${id} ${part.id}`, part.curve), part.factor);
  return { id, hours: worked, money: cost };
}

/** Summed in the order of the names: the last digit of a sum depends on the order of its parts. */
function totalOf(items: readonly DrawnItem[], of: 'hours' | 'money', draws: number): Float64Array {
  const total = new Float64Array(draws);
  for (const item of items.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))) {
    add(total, item[of], 1);
  }
  return total;
}

function add(into: Float64Array, values: Float64Array, times: number): void {
  for (let d = 0; d < into.length; d++) into[d] = (into[d] as number) + times * (values[d] as number);
}

function itemSpans({ hours, perHour, money }: Item, drawn: DrawnItem): Both<Span> {
  const curves = [
    ...(hours && perHour > 0 ? [scaledCurve(hours, perHour)] : []),
    ...money.map(({ curve, factor }) => scaledCurve(curve, factor)),
  ];
  const [only] = curves;
  const ofCurves = () => ({
    ...drawnSpan(drawn.money),
    mean: curves.reduce((sum, curve) => sum + curveMean(curve), 0),
  });
  return {
    hours: hours ? curveSpan(hours) : NOTHING,
    money: only === undefined ? NOTHING : curves.length === 1 ? curveSpan(only) : ofCurves(),
  };
}

const drawnSpans = ({ hours, money }: DrawnItem): Both<Span> => ({
  hours: drawnSpan(hours),
  money: drawnSpan(money),
});

const NOTHING: Span = { mean: 0, p10: 0, p90: 0 };
const Z90 = normalQuantile(0.9);

const curveSpan = (curve: Curve): Span => ({
  mean: curveMean(curve),
  p10: valueAt(curve, -Z90),
  p90: valueAt(curve, Z90),
});

function drawnSpan(values: Float64Array): Span {
  const [p10, p90] = percentilesOf(values, [0.1, 0.9]) as [number, number];
  return { mean: meanAndDeviation(values).mean, p10, p90 };
}

/** The same draws, so much higher. */
const moved = (summary: Summary, by: number): Summary => ({
  ...summary,
  mean: summary.mean + by,
  p10: summary.p10 + by,
  p50: summary.p50 + by,
  p80: summary.p80 + by,
  p90: summary.p90 + by,
});
