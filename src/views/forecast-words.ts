// The sentences of the forecast. What is estimated is told apart from what is spent.
import type { Currency } from '../figures/currency.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { Forecast } from '../rollup/ahead/forecast.ts';
import { hoursAbout, moneyAbout } from './live/rounded.ts';
import { estimate, type Said } from './live/said.ts';

/** The one sentence: spent, where it is likely to end, and the chance of ending within what was agreed. */
export function forecastSentence(forecast: Forecast, { currency }: CarRecord): Said {
  const { spent, lines, choices, agreed, within, finish } = forecast;
  const now = `${moneyText(spent.money, currency)} is spent`;
  if (lines.length + choices.length === 0) return [`${now}. ${noneLeft(forecast)}`];
  const about = finishAbout(forecast, currency);
  if (spreadOf(finish.money) < 1) {
    const side = finish.money.p50 > agreed + 0.5 ? 'over' : 'within';
    return [
      `${now}; the finish comes to `,
      about(finish.money.p50),
      agreed > 0 ? `, ${side} the ${wholeText(agreed, currency)} agreed.` : '.',
    ];
  }
  const end = within
    ? `, and within the ${wholeText(agreed, currency)} agreed ${chanceText(within.chance)}.`
    : '.';
  return [
    `${now}; the finish is likely at `,
    about(finish.money.p50),
    ', eight times in ten under ',
    about(finish.money.p80),
    end,
  ];
}

/** What is said where nothing is left that has an estimate. */
export function noneLeft({ unestimated }: Forecast): string {
  return unestimated.length === 0
    ? 'Nothing that was planned is left.'
    : 'What is left of the planned work has no estimate.';
}

/** What is spare or short, and what has to be held back, each in one sentence. */
export function againstAgreed(forecast: Forecast, { currency }: CarRecord): Said[] {
  const { agreed, spare, finish, contingency, likelyFinish, lines, choices } = forecast;
  if (lines.length + choices.length === 0) return [];
  const about = finishAbout(forecast, currency);
  const held: Said = [
    'What is spent, and the likely figure of each line as it was written, come to ',
    about(likelyFinish),
    '; the finish that holds eight times in ten lies ',
    about(Math.abs(contingency)),
    contingency < 0
      ? ' under that, so that nothing has to be held back.'
      : ' above that: so much has to be held back for what can’t be known, the contingency. Likely figures alone are no promise: most lines can run further over than under.',
  ];
  if (agreed === 0) return [held];
  const room: Said =
    spare < 0
      ? [
          `To end within what was agreed eight times in ten, `,
          about(-spare),
          ` would have to be added to the ${wholeText(agreed, currency)}.`,
        ]
      : [
          'Eight times in ten ',
          about(spare),
          ` or more of the ${wholeText(agreed, currency)} agreed is left over.`,
        ];
  return spreadOf(finish.money) < 1 ? [room] : [room, held];
}

/** `97 times in a hundred`; the ends are never said to be certain. */
export function chanceText(chance: number): string {
  const times = Math.round(chance * 100);
  if (times >= 100) return 'more than 99 times in a hundred';
  if (times === 0) return 'less than once in a hundred times';
  return times === 1 ? 'once in a hundred times' : `${times} times in a hundred`;
}

/** Money with the digits that the spread of the finish leaves known. */
function finishAbout({ finish }: Forecast, currency: Currency) {
  return (amount: number) => estimate(moneyAbout(amount, spreadOf(finish.money), currency));
}

export const spreadOf = ({ p10, p90 }: { p10: number; p90: number }): number => p90 - p10;

/** `$92,000`, without cents where there are none. */
export const wholeText = (amount: number, currency: Currency): string =>
  moneyText(amount, currency).replace(/\.0+$/, '');

/** `7%`; `less than 1%` for what rounds to nothing. */
export function percentText(share: number): string {
  const whole = Math.round(share * 100);
  return whole === 0 && share > 0 ? 'less than 1%' : `${whole}%`;
}

/** Hours with the digits that the spread of all that is left leaves known. */
export const leftHours = ({ left }: Forecast, hours: number): string =>
  hoursAbout(hours, spreadOf(left.hours));
