// Pictures joined by a writer's word: the state before the work against the state after it.
import { once } from '../record/once.ts';
import { SHOWS } from '../record/words.ts';
import { capital, words } from './parts.ts';
import type { Shot } from './photos.ts';

/** One picture of a pair; `label` says what it shows. */
export type Side = { shot: Shot; label: string };

/**
 * Two pictures to hold against each other. `frame` is the width over the height of one frame in which both stand at
 * the same height. `note` says which two they are when the writer joined more.
 */
export type Pair = {
  name: string;
  title: string;
  parts: string[];
  before: Side;
  after: Side;
  frame: number;
  note: string;
};

/**
 * The pairs of pictures that come in order of time, in the order of their second picture. A word with one picture
 * makes no pair: the check has told of it.
 */
export const pairsOf = once((shots: readonly Shot[]): Pair[] => {
  const joined = Map.groupBy(shots, ({ pair }) => pair);
  joined.delete(undefined);
  return [...joined]
    .flatMap(([name, own]) => {
      const inOrder = byWork(own);
      const [before, after] = [inOrder[0], inOrder.at(-1)];
      if (name === undefined || !before || !after || inOrder.length < 2) return [];
      return [{ ...pairOf(name, before, after, inOrder.length), at: shots.indexOf(after) }];
    })
    .sort((a, b) => a.at - b.at)
    .map(({ at: _, ...pair }) => pair);
});

function pairOf(name: string, before: Shot, after: Shot, count: number): Pair {
  const same = before.shows === after.shows;
  return {
    name,
    title: capital(words(name)),
    parts: [...new Set([before, after].flatMap(({ part }) => (part === undefined ? [] : [part])))],
    before: { shot: before, label: same ? 'Earlier' : capital(before.shows ?? 'earlier') },
    after: { shot: after, label: same ? 'Later' : capital(after.shows ?? 'later') },
    frame: Math.max(before.ratio, after.ratio),
    note: count > 2 ? `The first and the last of ${count} pictures.` : '',
  };
}

/** In the order of the work where every picture says what it shows, else in order of time alone. */
function byWork(shots: readonly Shot[]): Shot[] {
  const said = shots.every(({ shows }) => shows !== undefined);
  const at = ({ shows }: Shot) => SHOWS.indexOf(shows as (typeof SHOWS)[number]);
  return said ? shots.toSorted((a, b) => at(a) - at(b)) : [...shots];
}
