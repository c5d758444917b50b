// What the other thread of a build does; `ahead.ts` begins it.
import { parentPort, workerData } from 'node:worker_threads';
import { type ChoiceDraws, drawnOfChoice } from '../../rollup/ahead/choice-draws.ts';
import type { Told } from './ahead.ts';

const told: Told = { drawn: (workerData as ChoiceDraws[]).flatMap(drawnOfChoice) };
parentPort?.postMessage(told);
