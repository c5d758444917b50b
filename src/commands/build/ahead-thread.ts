// What the other thread of a build does; `ahead.ts` begins it.
import { parentPort, workerData } from 'node:worker_threads';
import type { DrawsAhead } from '../../disk/handed.ts';
import { drawnOfChoice } from '../../rollup/ahead/choice-draws.ts';
import { finishFigures } from '../../rollup/ahead/finish-draws.ts';
import type { Told } from './ahead.ts';

const { choices, finishes } = workerData as DrawsAhead;
const told: Told = {
  drawn: [
    ...choices.flatMap(drawnOfChoice),
    ...finishes.map((draws): [string, unknown] => [draws.name, finishFigures(draws)]),
  ],
};
parentPort?.postMessage(told);
