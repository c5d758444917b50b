// The shop's rules behind the sums, in words: rates, steps, handling, materials, tax.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord } from '../record/record.ts';
import { datedText } from './dated.ts';

/** One tax rule as its row is printed. */
export type TaxRow = { name: string; rate: string; who: string; on: string; rounded: string; from: string };

/** Every tax rule of the shop: what it is on, from when, and how and where it is rounded. */
export function taxRows({ shop }: CarRecord): TaxRow[] {
  return (shop.tax ?? []).map(({ name, rate, side, on, from, by, rounding, included }) => ({
    name,
    rate: shareText(rate),
    who: `${side === 'paid' ? 'paid to vendors' : 'charged to the owner'}${included ? ', held in the prices' : ''}`,
    on: on.map((kind) => TAXED[kind]).join(', '),
    rounded: `${ROUNDED[rounding ?? 'half-up']}, ${by === 'line' ? 'on each line' : side === 'paid' ? 'once a bill' : 'once on the statement’s sum'}`,
    from: datedText(from),
  }));
}

/** Handling, shop materials, the step and the least of charged time, a sentence each. */
export function otherRules({ shop, currency }: CarRecord): string[] {
  const { step = 0, minimum = 0 } = shop;
  return [
    ...(step > 0 ? [`Charged time is rounded up to ${minutesText(step)}.`] : []),
    ...(minimum > 0 ? [`No line of hours is charged at less than ${minutesText(minimum)}.`] : []),
    ...(shop.handling ?? []).map(
      ({ kind, share, from }) =>
        `Handling on ${kind === 'bought' ? 'bought things' : 'outside work'}: ${shareText(share)}, from ${datedText(from)}.`,
    ),
    ...(shop.materials ?? []).map((rule) => {
      const share = rule['of-labour'];
      const each =
        share === undefined
          ? `${moneyText(rule['per-hour'] ?? 0, currency)} for each charged hour`
          : `${shareText(share)} of the labor`;
      const cap = rule.cap === undefined ? '' : `, at most ${moneyText(rule.cap, currency)} in all`;
      return `Shop materials: ${each}${cap}, from ${datedText(rule.from)}.`;
    }),
  ];
}

const TAXED = {
  bought: 'bought things',
  outside: 'outside work',
  labour: 'labor',
  materials: 'shop materials',
  freight: 'freight',
};
const ROUNDED = { 'half-up': 'half up', 'half-even': 'half to even', down: 'down' };
