// Where the answer turns, in words: which figure has to become what before another option is expected to cost least.
import type { Comparison } from '../../estimate/uncertain/choice/compare.ts';
import type { Turning } from '../../estimate/uncertain/choice/turning.ts';
import { pertMean } from '../../estimate/uncertain/pert.ts';
import { moneyText } from '../../figures/money-text.ts';
import { type Sheet, shortName } from './sheet.ts';

/** Something that may turn the answer: what it is, what it is expected to be, and its figure as text. */
type Mover = {
  key: string;
  /** The option it belongs to; none for a rate. */
  option?: string;
  /** `Hours: Repair the original`, for a table. */
  what: string;
  /** `Repair the original takes`, `an hour costs`, for a sentence; `its` when the sentence has named the option. */
  subject: string;
  its: string;
  over: string;
  under: string;
  now: number;
  text: (value: number) => string;
};

/** One row of the table behind the sentence. `turns` is empty where nothing turns. */
export type TurnRow = { what: string; now: string; turns: string };

/** Where a mover turns the answer: above or below a value, and to which option. */
type Turn = { mover: Mover; value: number; above: boolean; to: string };

/** The option expected to cost least, and the one after it; of two alike, by name. */
export function leastExpected({ options }: Comparison): string[] {
  return options
    .toSorted((a, b) => a.cost.expected - b.cost.expected || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
}

/**
 * What turns the answer to each other option: the nearest turnings, at most four, within what a reader may move a
 * figure to. With two options the sentence names the first, and says `it`.
 */
export function turnClauses(sheet: Sheet, comparison: Comparison): { to: string; clauses: string[] }[] {
  const [least] = leastExpected(comparison);
  const two = comparison.options.length === 2;
  const away = ({ mover, value }: Turn) => Math.abs(Math.log(value / mover.now));
  const nearest = turnsOf(sheet, comparison)
    .filter((turn) => away(turn) <= Math.log(FAR))
    .sort((a, b) => away(a) - away(b))
    .slice(0, MOST);
  return [...Map.groupBy(nearest, ({ to }) => to)].map(([to, turns]) => ({
    to,
    clauses: turns.map(({ mover, value, above }) => {
      const subject = two && mover.option === least ? mover.its : mover.subject;
      return `${subject} ${above ? mover.over : mover.under} ${mover.text(value)} (now ${mover.text(mover.now)})`;
    }),
  }));
}

const MOST = 4;

/** A figure this many times what it is expected to be, or that part of it, is no longer the same question. */
export const FAR = 2.5;

/** Every figure asked about, with where it turns the answer or why it doesn't. */
export function turnRows(sheet: Sheet, comparison: Comparison): TurnRow[] {
  const turns = turnsOf(sheet, comparison);
  return moversOf(sheet).map((mover) => {
    const own = turns.filter((turn) => turn.mover.key === mover.key);
    const says = own.map(
      ({ value, above, to }) => `${above ? 'above' : 'below'} ${mover.text(value)}: ${shortName(sheet, to)}`,
    );
    return {
      what: mover.what,
      now: mover.text(mover.now),
      turns: says.join('; ') || (depends(mover, comparison) ? 'never, within its range' : 'none'),
    };
  });
}

function turnsOf(sheet: Sheet, comparison: Comparison): Turn[] {
  const [least] = leastExpected(comparison);
  return moversOf(sheet).flatMap((mover) => {
    const all = comparison.pairs.flatMap((pair): Turn[] => {
      const to = pair.first === least ? pair.second : pair.second === least ? pair.first : undefined;
      const turning = turningIn(pair, mover.key);
      if (to === undefined || turning?.kind !== 'at') return [];
      return [
        { mover, value: turning.value, above: turning.firstCheaperBelow === (pair.first === least), to },
      ];
    });
    const nearest = (above: boolean) =>
      all
        .filter((turn) => turn.above === above)
        .sort((a, b) => (above ? a.value - b.value : b.value - a.value) || (a.to < b.to ? -1 : 1))
        .slice(0, 1);
    return [...nearest(true), ...nearest(false)];
  });
}

function turningIn(pair: Comparison['pairs'][number], key: string): Turning | undefined {
  return (
    pair.turns.find(({ driver }) => driver === key)?.turning ??
    pair.together.find(({ group }) => group === key)?.turning
  );
}

function depends({ key }: Mover, { pairs }: Comparison): boolean {
  return pairs.some((pair) => {
    const turning = turningIn(pair, key);
    return turning !== undefined && turning.kind !== 'none';
  });
}

/** The hours and the purchases of each option as one, then rates, then chances. */
function moversOf(sheet: Sheet): Mover[] {
  const { sums, labels, bought, currency } = sheet;
  const mean = (id: string) => {
    const range = sums.drivers.find((driver) => driver.id === id)?.range;
    return range ? pertMean(range) : 0;
  };
  const groups = (sums.groups ?? []).map(({ id, drivers }): Mover => {
    const option = id.slice(id.indexOf(' ') + 1);
    const name = shortName(sheet, option);
    const all = { ...MORE_OR_LESS, key: id, option, now: drivers.reduce((sum, each) => sum + mean(each), 0) };
    if (id.startsWith('hours ')) {
      return { ...all, what: `Hours: ${name}`, subject: `${name} takes`, its: 'it takes', text: hoursOf };
    }
    const subject = `${bought[option] ?? `what is bought for ${name}`} comes to`;
    return {
      ...all,
      what: bought[option] ?? `Bought for ${name}`,
      subject,
      its: bought[option] ? subject : 'what is bought for it comes to',
      text: (amount) => moneyText(Math.round(amount), currency).replace(/\.\d+$/, ''),
    };
  });
  const single = sums.drivers.flatMap(({ id, kind }): Mover[] => {
    const now = mean(id);
    if (kind === 'rate') {
      const label = labels[id] ?? id;
      const subject = `${label} costs`;
      const text = (value: number) => moneyText(Math.round(value), currency);
      return [{ ...MORE_OR_LESS, key: id, what: capital(label), subject, its: subject, now, text }];
    }
    const option = sums.options.find(({ canFail }) => canFail?.chance === id)?.id;
    if (kind !== 'chance' || option === undefined) return [];
    const name = shortName(sheet, option);
    const text = (value: number) => `${Math.round(value * 100)}%`;
    const said = { subject: `the chance that ${name} fails`, its: 'the chance that it fails' };
    return [
      {
        key: id,
        option,
        what: `Chance of failing: ${name}`,
        ...said,
        over: 'passes',
        under: 'falls below',
        now,
        text,
      },
    ];
  });
  return [...groups, ...single];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const MORE_OR_LESS = { over: 'more than', under: 'less than' };

/** Whole hours; below ten to the quarter. */
export function hoursOf(hours: number): string {
  return `${hours < 10 ? Math.round(hours * 4) / 4 : Math.round(hours)} h`;
}
