// The forecast as a page and a command say it: the same figures in the same words.
import type { Both } from '../estimate/uncertain/finish.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import { type Forecast, type ForecastOptions, forecastOf } from '../rollup/ahead/forecast.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { depositsSum } from '../rollup/deposits-sum.ts';
import { datedText } from './dated.ts';
import type { FigureTable } from './figure-table.ts';
import {
  earnedSentence,
  experienceSentences,
  type UnplannedWords,
  unplannedWords,
} from './forecast-experience.ts';
import { chanceTable, percentTables, runTable } from './forecast-figures.ts';
import { leftTable, waitsTable, widestTable } from './forecast-lines.ts';
import { againstAgreed, forecastSentence, noneLeft, percentText } from './forecast-words.ts';
import { fromLines } from './line-text.ts';
import { moneyAbout } from './live/rounded.ts';
import type { Said } from './live/said.ts';
import { namesOf } from './names.ts';

export { forecastOf, forecastSentence };

export type ForecastPage = {
  asOf: string;
  from: string;
  lead: Said;
  percents: Both<FigureTable>;
  against: Said[];
  /** What the forecast misses, a sentence each. */
  missing: string[];
  chances: FigureTable;
  run: FigureTable;
  widest: FigureTable;
  left: FigureTable;
  /** Said where the table of what is left is empty. */
  noneLeft: string;
  waits: FigureTable;
  unplanned: UnplannedWords;
  experience: string[];
  earned: Said;
  fine: string[];
};

/** `corrected: false` leaves out what finished lines teach; else both are shown where that corrects anything. */
export function forecastPage(record: CarRecord, rollup: Rollup, options: ForecastOptions = {}): ForecastPage {
  const forecast = forecastOf(record, rollup, options);
  const { hours, money } = forecast.experience;
  const taught = hours.used || money.used;
  const written = taught ? forecastOf(record, rollup, { ...options, corrected: false }) : undefined;
  return {
    asOf: datedText(forecast.day),
    from: fromLines(rollup.total.lines.length),
    lead: forecastSentence(forecast, record),
    percents: percentTables(forecast, written, record, rollup),
    against: againstAgreed(forecast, record),
    missing: missingSentences(forecast, record),
    chances: chanceTable(forecast, record),
    run: runTable(forecast, record, rollup),
    widest: widestTable(forecast, record),
    left: leftTable(forecast, record),
    noneLeft: noneLeft(forecast),
    waits: waitsTable(forecast, record, rollup),
    unplanned: unplannedWords(forecast, record, rollup),
    experience: experienceSentences(forecast),
    earned: earnedSentence(forecast, record, rollup),
    fine: finePrint(forecast, record, rollup),
  };
}

function missingSentences({ uncounted, unestimated, noRate }: Forecast, record: CarRecord): string[] {
  const names = namesOf(record);
  return [
    ...uncounted.map(({ choice, why }) =>
      why === 'no line named'
        ? `“${choice.question}” is not in the forecast: no planned line is named under \`settles\` in its file.`
        : `“${choice.question}” is not in the forecast: its options can’t be compared. The lines that it settles count as planned.`,
    ),
    ...unestimated.map(
      ({ part, line }) =>
        `${names.part(part)}: ${line.do}. It is planned without an estimate, and counts as nothing.`,
    ),
    ...noRate.map(
      (work) => `There is no rate for ${work}: its hours are in the forecast, what they cost is not.`,
    ),
  ];
}

function finePrint(forecast: Forecast, { currency }: CarRecord, rollup: Rollup): string[] {
  const { draws, finish, correlation, day, materials } = forecast;
  const out = depositsSum(rollup);
  const { p80 } = finish.money.error;
  return [
    'P10 is what the finish stays under one time in ten, P80 eight times in ten. A range runs from P10 to P90: one time in ten it ends lower, one time in ten higher.',
    `${draws.toLocaleString('en-US')} draws, the same ones at every build. ${p80 > 0 ? `Other draws would put the P80 within about ${moneyAbout(2 * p80, 2 * p80, currency)} of this one.` : ''}`,
    `Lines share causes, a correlation of ${correlation} between any two, so that many run over together more often than by chance. Ranges are drawn and never added end to end.`,
    `Prices follow the rates, handling, tax and materials in force on ${datedText(day)}; an hour costs what those who have done that kind of work so far are charged at.`,
    'A line in hand is its plan, given that what is spent is spent; where the log says what is left, that holds.',
    ...(materials < 1
      ? [
          `Shop materials have a cap: of what would go with the hours left, ${percentText(materials)} can still be charged.`,
        ]
      : []),
    ...(out > 0
      ? [`${moneyText(out, currency)} of deposits is still out, and counts as spent until it comes back.`]
      : []),
  ];
}
