// What the other thread of a build does; `ahead.ts` begins it.
import { parentPort } from 'node:worker_threads';
import type { DrawsAhead } from '../../disk/handed.ts';
import { chartSvg } from '../../drawing/charts.ts';
import { drawnOfChoice } from '../../rollup/ahead/choice-draws.ts';
import { finishFigures } from '../../rollup/ahead/finish-draws.ts';
import { drawnOfChart } from '../../views/chart-told.ts';
import type { Told } from './ahead.ts';

parentPort?.on('message', ({ choices, finishes, charts }: DrawsAhead) => {
  const told: Told = {
    drawn: [
      ...choices.flatMap(drawnOfChoice),
      ...finishes.map((draws): [string, unknown] => [draws.name, finishFigures(draws)]),
      ...charts.flatMap((chart) => drawnOfChart(chart, chartSvg)),
    ],
  };
  parentPort?.postMessage(told);
});
