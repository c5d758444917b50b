// What a chart shows as plain values: by them its picture is found again, and can be drawn on another core.
import type { Currency } from '../figures/currency.ts';
import type { CarRecord } from '../record/record.ts';
import { awaitedOnce, drawnName } from '../rollup/ahead/drawn-before.ts';
import { type BarRow, barsOf } from './charts.ts';
import { type FinishCurve, finishChart } from './finish-chart.ts';
import { type CostRange, rangesChart } from './live/cost-ranges.ts';
import { type Chart, NARROW, WIDE } from './live/pen.ts';
import { type Running, runningOf } from './running-chart.ts';
import type { Ending } from './running-end.ts';

/** `id` is its own on the page, with the size behind it; `title` says in words what it shows. */
export type ChartTold = { id: string; title: string } & Shown;

type Shown =
  | { kind: 'bars'; bars: BarRow[] }
  | { kind: 'running'; running: Running; currency: Currency; ending?: Ending }
  | { kind: 'finish'; curve: FinishCurve; currency: Currency }
  | { kind: 'ranges'; ranges: CostRange[]; currency: Currency };

/** A chart is drawn for a desk and for a phone. */
export type ChartSize = 'wide' | 'narrow';
export const CHART_SIZES: readonly ChartSize[] = ['wide', 'narrow'];

/** The chart as it is drawn at one of the two sizes. */
function chartOf(told: ChartTold, size: ChartSize): Chart {
  const width = { wide: WIDE, narrow: NARROW }[size];
  switch (told.kind) {
    case 'bars':
      return barsOf(told.bars, width);
    case 'running':
      return runningOf(told.running, told.currency, width, told.ending);
    case 'finish':
      return finishChart(told.curve, told.currency, width);
    case 'ranges':
      return rangesChart(told.ranges, told.currency, width);
  }
}

/** What makes the picture of a chart. */
export type DrawsChart = (chart: Chart, title: string, id: string) => string;

/** The picture of a chart at one size. */
export function chartDrawn(told: ChartTold, size: ChartSize, draw: DrawsChart): string {
  return draw(chartOf(told, size), told.title, `${told.id}-${size}`);
}

/** The same, with the name it is found by: what `chartPicture` takes as it is. */
export function drawnOfChart(told: ChartTold, draw: DrawsChart): [name: string, picture: string][] {
  return CHART_SIZES.map((size) => [drawnName(WHAT[size], told), chartDrawn(told, size, draw)]);
}

/** Whether a chart is among results at both sizes. */
export function isChartDrawn(told: ChartTold, results: ReadonlyMap<string, unknown>): boolean {
  return CHART_SIZES.every((size) => results.has(drawnName(WHAT[size], told)));
}

/** The picture as it was drawn for the record before, or on another core; else `drawing` is loaded, which takes a while. */
export function chartPicture(
  told: ChartTold,
  size: ChartSize,
  record: CarRecord,
  drawing: () => Promise<DrawsChart>,
): Promise<string> {
  return awaitedOnce(record, WHAT[size], told, async () => chartDrawn(told, size, await drawing()));
}

const WHAT = { wide: 'wide chart', narrow: 'narrow chart' };
