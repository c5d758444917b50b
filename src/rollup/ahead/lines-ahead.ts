// The planned lines that are left, each as an item of the finish: hours at their price, purchases at what is charged.
import { constantCurve, curveMean } from '../../estimate/uncertain/curve.ts';
import type { Item } from '../../estimate/uncertain/finish.ts';
import { plannedLines } from '../../record/checks/planned-lines.ts';
import type { CarRecord, PlannedLine } from '../../record/record.ts';
import type { Rollup } from '../cost-lines.ts';
import { fixedAhead } from '../fixed-prices.ts';
import { type ChoiceLeft, choiceAt, sumsOf } from './choices-left.ts';
import type { Experience } from './experience.ts';
import { curveOfLeft, type LeftFrom, type LineLeft, lineLeft } from './line-left.ts';
import { type Prices, withMaterials } from './prices.ts';

/** An unfinished planned line, by its full name. */
export type OpenLine = { id: string; part: string; line: PlannedLine };
/** `fixed` is what is still to be charged of a price fixed beforehand, in minor units: its hours cost nothing then. */
export type LineWithRest = OpenLine & { left: LineLeft; fixed?: number };

/** Unfinished lines that no counted choice stands for; `unestimated` are those of which nobody said what they take. */
export function linesAhead(
  record: CarRecord,
  rollup: Rollup,
  experience: Experience,
  counted: readonly ChoiceLeft[],
): { lines: LineWithRest[]; unestimated: OpenLine[] } {
  const settled = new Set(counted.flatMap(({ lines }) => lines));
  const lines: LineWithRest[] = [];
  const unestimated: OpenLine[] = [];
  const prices = fixedAhead(record);
  for (const [id, { part, line }] of plannedLines(record)) {
    const so = rollup.planned[id];
    if (!so || so.finished !== undefined || settled.has(id)) continue;
    const left = lineLeft(line, so, experience);
    const fixed = prices.get(id);
    if (left.hours || left.spend || left.outside || fixed !== undefined)
      lines.push({ id, part: part.id, line, left, ...(fixed !== undefined && { fixed }) });
    else unestimated.push({ id, part: part.id, line });
  }
  return { lines, unestimated };
}

/** An item whose curves are still to be worked out, of plain values. */
export type ItemFrom = Omit<Item, 'hours' | 'money'> & {
  hours?: LeftFrom;
  money: { id: string; from: LeftFrom | { fixed: number }; factor: number }[];
};

/** The item with its curves. */
export function itemOf({ id, hours, perHour, money }: ItemFrom): Item {
  return {
    id,
    ...(hours && { hours: curveOfLeft(hours) }),
    perHour,
    money: money.map(({ from, ...part }) => ({
      ...part,
      curve: 'fixed' in from ? constantCurve(from.fixed) : curveOfLeft(from),
    })),
  };
}

/** Hours without a rate cost nothing here; the forecast names their kind of work. */
export function itemFrom(
  { id, line, left, fixed }: LineWithRest,
  { rate, charges, materials }: Prices,
): ItemFrom {
  const hourly = fixed === undefined ? rate(line.work) : undefined;
  const bought = (part: 'spend' | 'outside', factor: number) =>
    left[part] ? [{ id: part, from: left[part].from, factor }] : [];
  return {
    id,
    ...(left.hours && { hours: left.hours.from }),
    perHour: hourly === undefined ? 0 : hourly * charges.labour + materials(line.work),
    money: [
      ...bought('spend', charges.factor('bought')),
      ...bought('outside', charges.factor('outside')),
      ...(fixed ? [{ id: 'fixed-price', from: { fixed }, factor: charges.labour }] : []),
    ],
  };
}

/** What the line most likely still costs, by its figures as they were written. */
export function likelyMoney({ left, fixed = 0 }: LineWithRest, { perHour, money }: ItemFrom): number {
  const likely = (id: string) =>
    id === 'fixed-price' ? fixed : (left[id as 'spend' | 'outside']?.likely ?? 0);
  return money.reduce(
    (sum, { id, factor }) => sum + likely(id) * factor,
    (left.hours?.likely ?? 0) * perHour,
  );
}

/** Materials expected with all hours that are left, choices included, before a cap cuts them; 0 without a cap. */
export function expectedMaterials(
  lines: readonly LineWithRest[],
  counted: readonly ChoiceLeft[],
  record: CarRecord,
  rollup: Rollup,
  { charges, rate, materials }: Prices,
): number {
  if (charges.materialsLeft === Number.POSITIVE_INFINITY) return 0;
  const ofLines = lines.reduce(
    (sum, { line, left, fixed }) =>
      sum + (left.hours && fixed === undefined ? curveMean(left.hours.curve) * materials(line.work) : 0),
    0,
  );
  const none = withMaterials(charges, 0);
  const ofChoices = counted.reduce((sum, each) => {
    const cost = (at: typeof charges) =>
      choiceAt(each, sumsOf(each.choice, record, rollup, { rate, charges: at }), 'mean').money;
    return sum + cost(charges) - cost(none);
  }, 0);
  return ofLines + ofChoices;
}

/** Kinds of work that are left with hours and have no rate, in lines and in options. */
export function worksWithoutRate(
  lines: readonly LineWithRest[],
  counted: readonly ChoiceLeft[],
  { rate }: Prices,
): string[] {
  const works = [
    ...lines.filter(({ left, fixed }) => left.hours && fixed === undefined).map(({ line }) => line.work),
    ...counted.flatMap(({ choice }) =>
      choice.options.flatMap((option) => option.lines.filter(({ hours }) => hours).map(({ work }) => work)),
    ),
  ];
  return [...new Set(works)].filter((work) => work !== undefined && rate(work) === undefined) as string[];
}
