// Draws the choices, the forecast and the charts of a large record on another core while their pages wait for the others.
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { DrawsAhead } from '../../disk/handed.ts';
import { optionsName } from '../../rollup/ahead/choice-draws.ts';
import type { DrawnBefore } from '../../rollup/ahead/drawn-before.ts';
import { isChartDrawn } from '../../views/chart-told.ts';

/** What the other thread says: results by name, or why there are none. */
export type Told = { drawn: [name: string, result: unknown][] } | { failed: string };

/**
 * `begin` is told what to draw, and resolves when it is drawn; nothing where it is left to who asks for it. `done` waits
 * until all of it is drawn, and `rest` ends it wherever it is.
 */
export type Ahead = {
  begin: (draws: DrawsAhead) => Promise<void> | undefined;
  done: () => Promise<void>;
  rest: () => Promise<void>;
};

/** Choices, and lines of a forecast, from which on another thread is worth its start. */
const MANY = { choices: 12, lines: 60 };

/** What the thread runs where it isn't bundled. */
const THREAD = join('src', 'commands', 'build', 'ahead-thread.ts');

/** Puts results among those that were drawn `before`; few of them, or with one core, are drawn where they are asked for. */
export function drawsAhead(
  { before }: DrawnBefore,
  { many = MANY, cores = availableParallelism(), script = THREAD } = {},
): Ahead {
  let thread: { worker: Worker; answer: () => Promise<Told> } | undefined;
  const begun: Promise<void>[] = [];
  return {
    begin: ({ choices, finishes, charts }) => {
      const fresh: DrawsAhead = {
        choices: choices.filter((choice) => !before.has(optionsName(choice))),
        finishes,
        charts: charts.filter((chart) => !isChartDrawn(chart, before)),
      };
      const lines = fresh.finishes.reduce((sum, { items }) => sum + items.length, 0);
      const isWorth = cores > 1 && (fresh.choices.length >= many.choices || lines >= many.lines);
      if (!thread && !isWorth) return undefined;
      thread ??= threadOf(script);
      thread.worker.postMessage(fresh);
      const drawn = thread.answer().then((told) => {
        if ('failed' in told) throw new Error(`What lies ahead can’t be drawn.\n${told.failed}`);
        for (const [name, result] of told.drawn) before.set(name, result);
      });
      // It is told to who waits until all is done.
      drawn.catch(() => {});
      begun.push(drawn);
      return drawn;
    },
    done: async () => {
      await Promise.all(begun);
    },
    rest: async () => {
      await thread?.worker.terminate();
    },
  };
}

/** A thread that answers what it is told in turn. */
function threadOf(script: string) {
  const worker = new Worker(resolve(script));
  const waiting: ((told: Told) => void)[] = [];
  let ended: Told | undefined;
  const end = (failed: string) => {
    ended ??= { failed };
    for (const done of waiting.splice(0)) done(ended);
  };
  worker.on('message', (told: Told) => waiting.shift()?.(told));
  worker.once('error', (error) => end(String(error)));
  worker.once('exit', () => end('The thread that drew it ended.'));
  const answer = () => new Promise<Told>((done) => (ended ? done(ended) : waiting.push(done)));
  return { worker, answer };
}
