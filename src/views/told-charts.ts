// The charts of each page, by what they show.
import type { CarRecord } from '../record/record.ts';
import { type Forecast, forecastOf } from '../rollup/ahead/forecast.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import type { ChartTold } from './chart-told.ts';
import type { ChoiceSheet } from './choice-sheet.ts';
import { type CostFigure, costFigures } from './cost-figures.ts';
import { costLead } from './costs.ts';
import { finishCurve } from './finish-chart.ts';
import { endingOf } from './forecast-figures.ts';
import { forecastSentence } from './forecast-words.ts';
import { plain } from './live/said.ts';
import { runningTold } from './running-chart.ts';

/** All charts of the costs page. */
export function costCharts(record: CarRecord, rollup: Rollup): ChartTold[] {
  const figures = costFigures(record, rollup).map(figureChart);
  return rollup.months.length > 0 ? [costRunning(record, rollup), ...figures] : figures;
}

/** The running total against what was agreed. */
export function costRunning(record: CarRecord, rollup: Rollup): ChartTold {
  return {
    kind: 'running',
    id: 'running',
    title: `Running total by month. ${costLead(record, rollup)}`,
    running: runningTold(rollup),
    currency: record.currency,
  };
}

/** One figure of the costs page. */
export function figureChart({ by, title, bars }: Pick<CostFigure, 'by' | 'title' | 'bars'>): ChartTold {
  return { kind: 'bars', id: `by-${by}`, title, bars };
}

/** All charts of the forecast. */
export function forecastCharts(record: CarRecord, rollup: Rollup): ChartTold[] {
  const forecast = forecastOf(record, rollup);
  return [finishTold(forecast, record), endingTold(forecast, record, rollup)].filter((told) => !!told);
}

/** The chance of each finish; nothing where the finish is certain. */
export function finishTold(forecast: Forecast, record: CarRecord): ChartTold | undefined {
  const curve = finishCurve(forecast);
  if (!curve) return undefined;
  const title = `The chance of each finish. ${plain(forecastSentence(forecast, record))}`;
  return { kind: 'finish', id: 'finish', title, curve, currency: record.currency };
}

/** What was spent, and where it is likely to end; nothing before the first month, or where nothing is left to do. */
export function endingTold(forecast: Forecast, record: CarRecord, rollup: Rollup): ChartTold | undefined {
  const ending = endingOf(forecast, record);
  if (!ending || rollup.months.length === 0) return undefined;
  const title = `Running total by month, and the finish. ${plain(forecastSentence(forecast, record))}`;
  const running = runningTold(rollup);
  return { kind: 'running', id: 'run', title, running, currency: record.currency, ending };
}

/** What each option of a choice may come to. */
export function rangesTold({ ranges, sheet, title }: ChoiceSheet): ChartTold {
  return { kind: 'ranges', id: 'ranges', title, ranges, currency: sheet.currency };
}
