// Draws the choices of a large record on another core while their pages wait for the others.
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type ChoiceDraws, optionsName } from '../../rollup/ahead/choice-draws.ts';
import type { DrawnBefore } from '../../rollup/ahead/drawn-before.ts';

/** What the other thread says: results by name, or why there are none. */
export type Told = { drawn: [name: string, result: unknown][] } | { failed: string };

/** `begin` is told what to draw, `done` waits until it is drawn, and `rest` ends it wherever it is. */
export type Ahead = {
  begin: (choices: readonly ChoiceDraws[]) => void;
  done: () => Promise<void>;
  rest: () => Promise<void>;
};

/** Choices from which on another thread is worth its start. */
const MANY = 12;

/** Puts results among those that were drawn `before`; of few choices, or with one core, they are drawn where they are asked for. */
export function drawsAhead(
  { before }: DrawnBefore,
  { many = MANY, cores = availableParallelism() } = {},
): Ahead {
  let thread: Worker | undefined;
  let told: Promise<Told> | undefined;
  return {
    begin: (choices) => {
      const fresh = choices.filter((choice) => !before.has(optionsName(choice)));
      if (thread || fresh.length < many || cores < 2) return;
      thread = new Worker(new URL('ahead-thread.ts', import.meta.url), { workerData: fresh });
      told = toldBy(thread);
    },
    done: async () => {
      const end = await told;
      if (!end) return;
      if ('failed' in end) throw new Error(`The choices can’t be drawn.\n${end.failed}`);
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
    thread.once('exit', () => done({ failed: 'The thread that drew them ended.' }));
  });
}
