// Draws the choices and the forecast of a large record on another core while their pages wait for the others.
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { DrawsAhead } from '../../disk/handed.ts';
import { optionsName } from '../../rollup/ahead/choice-draws.ts';
import type { DrawnBefore } from '../../rollup/ahead/drawn-before.ts';

/** What the other thread says: results by name, or why there are none. */
export type Told = { drawn: [name: string, result: unknown][] } | { failed: string };

/** `begin` is told what to draw, `done` waits until it is drawn, and `rest` ends it wherever it is. */
export type Ahead = {
  begin: (draws: DrawsAhead) => void;
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
  let thread: Worker | undefined;
  let told: Promise<Told> | undefined;
  return {
    begin: ({ choices, finishes }) => {
      if (thread || cores < 2) return;
      const fresh: DrawsAhead = {
        choices: choices.filter((choice) => !before.has(optionsName(choice))),
        finishes,
      };
      const lines = fresh.finishes.reduce((sum, { items }) => sum + items.length, 0);
      if (fresh.choices.length < many.choices && lines < many.lines) return;
      thread = new Worker(resolve(script), { workerData: fresh });
      told = toldBy(thread);
    },
    done: async () => {
      const end = await told;
      if (!end) return;
      if ('failed' in end) throw new Error(`What lies ahead can’t be drawn.\n${end.failed}`);
      for (const [name, result] of end.drawn) before.set(name, result);
    },
    rest: async () => {
      await thread?.terminate();
    },
  };
}

function toldBy(thread: Worker): Promise<Told> {
  return new Promise((done) => {
    thread.once('message', done);
    thread.once('error', (error) => done({ failed: String(error) }));
    thread.once('exit', () => done({ failed: 'The thread that drew it ended.' }));
  });
}
