// What the record itself teaches: work that nobody planned, and what finished lines took.
import type { Calibration } from '../estimate/uncertain/calibration.ts';
import { minutesText } from '../figures/hours.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import { earnedHours } from '../rollup/ahead/earned.ts';
import type { Forecast } from '../rollup/ahead/forecast.ts';
import { unplannedOf } from '../rollup/ahead/unplanned.ts';
import type { Rollup, Total } from '../rollup/cost-lines.ts';
import { timeText } from './day.ts';
import { type FigureTable, figure } from './figure-table.ts';
import { leftHours, percentText, spreadOf } from './forecast-words.ts';
import { fromLines } from './line-text.ts';
import { type BriefLine, briefLines } from './lines.ts';
import { moneyAbout } from './live/rounded.ts';
import { estimate, type Said } from './live/said.ts';
import { namesOf } from './names.ts';

/** Work that was never planned: in a sentence, by part, and line by line. */
export type UnplannedWords = {
  text: Said;
  table: FigureTable;
  total: string;
  from: string;
  lines: BriefLine[];
};

export function unplannedWords(forecast: Forecast, record: CarRecord, rollup: Rollup): UnplannedWords {
  const { total, share, perPlanned, parts } = unplannedOf(rollup);
  const { currency } = record;
  const cells = ({ minutes, charged }: Total) => [
    figure(timeText(minutes)),
    figure(amountText(charged, currency)),
  ];
  const more = perPlanned * forecast.left.money.mean;
  const adds: Said =
    more > 0
      ? [
          ' If what is left draws as much along with it, about ',
          estimate(moneyAbout(more, Math.max(more, spreadOf(forecast.left.money)), currency)),
          ' comes on top. That is in none of the figures above.',
        ]
      : [];
  const time = total.minutes > 0 ? ` and ${minutesText(total.minutes)}` : '';
  const went = `${moneyText(total.charged, currency)}${time} went into what no planned line and no choice names`;
  return {
    text:
      total.lines.length === 0
        ? ['No work has been charged that was not planned.']
        : [`${went}: ${percentText(share)} of all that was charged.`, ...adds],
    table: {
      caption: `Never planned, by part, in ${currency.code}`,
      head: 'Part',
      columns: [{ head: 'Hours' }, { head: 'Charged' }],
      rows: parts.map(({ part, total: own }) => ({ head: namesOf(record).part(part), cells: cells(own) })),
      foot: { head: 'All', cells: cells(total) },
    },
    total: moneyText(total.charged, currency),
    from: fromLines(total.lines.length),
    lines: briefLines(total.lines, record),
  };
}

/** What finished lines took, and whether what is left is corrected by it; a sentence for hours, one for money. */
export function experienceSentences({ experience: { hours, money } }: Forecast): string[] {
  return [sentenceOf(hours, 'Hours', 'line'), sentenceOf(money, 'Things bought and outside work', 'amount')];
}

function sentenceOf({ n, used, median, factor, widening }: Calibration, of: string, one: string): string {
  if (n === 0) return `${of}: nothing planned with a figure is finished yet, so nothing is corrected.`;
  const seen = `${of}: ${n} finished ${n === 1 ? one : `${one}s`}, the middle one at ${ratio(median ?? 1)} of its likely figure.`;
  if (used)
    return `${seen} What is left of a plan is taken at ${ratio(factor)} of what was written${widening > 0 ? ', and with a wider range' : ''}.`;
  return n < 5
    ? `${seen} That is too few to correct by: five are needed.`
    : `${seen} Nothing is corrected by that here.`;
}

/** What the hours worked have earned of the hours planned. Nothing where no line is planned with hours. */
export function earnedSentence(forecast: Forecast, record: CarRecord, rollup: Rollup): Said {
  const { planned, earned, actual, index, whole } = earnedHours(record, rollup, forecast.experience);
  if (planned === 0) return [];
  const about = (hours: number) => estimate(leftHours(forecast, hours));
  const start: Said = ['Planned lines were expected to take ', about(planned), ' in all.'];
  if (index === null || whole === null) return [...start, ' None has been worked on.'];
  return [
    ...start,
    ' What is done of them was expected to take ',
    about(earned),
    ` and took ${minutesText(Math.round(actual * 60))}: ${ratio(index)} hours earned for each hour worked. At that pace they come to `,
    about(whole),
    ' in all.',
  ];
}

const ratio = (value: number): string => value.toFixed(2);
