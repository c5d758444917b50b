// The car drawn by what its parts are made of: plain as it was built, hatched where it was repaired, crossed where it is new.
import type { CarRecord } from '../record/record.ts';
import { fabricShares, type Kept } from '../rollup/fabric.ts';

/**
 * How a place is drawn. Where its parts differ it is drawn as repaired, since some of what is there is old and some new;
 * beside old ones, one of no known origin makes the place not known.
 */
export type FabricMark = 'kept' | 'mended' | 'renewed' | 'unsaid';

const DRAWN: { [kept in Kept]: FabricMark } = {
  original: 'kept',
  'original-repaired': 'mended',
  'earlier-repair': 'mended',
  'period-part': 'renewed',
  reproduction: 'renewed',
  'new-made': 'renewed',
  unknown: 'unsaid',
};

const WORDS: [mark: FabricMark, word: string, how: string][] = [
  ['kept', 'As built', 'plain'],
  ['mended', 'Repaired or partly new', 'hatched one way'],
  ['renewed', 'New, or from another car', 'crossed'],
  ['unsaid', 'Not known', 'dotted'],
];

export type FabricDrawn = {
  marks: Record<string, Exclude<FabricMark, 'kept'>>;
  /** What each way of drawing means, with the names of the parts that are drawn so. */
  told: { word: string; how: string; names: string }[];
  /** The same as one text, for who can’t see the drawing. */
  words: string;
};

/** Parts that have a place on the drawings. */
export function fabricDrawn(record: CarRecord): FabricDrawn {
  const drawn = fabricShares(record).flatMap(({ kept, parts }) =>
    parts.flatMap(({ part: { at, name } }) => (at === undefined ? [] : [{ at, name, mark: DRAWN[kept] }])),
  );
  const places = [...Map.groupBy(drawn, ({ at }) => at)].map(([at, parts]) => ({
    at,
    names: parts.map(({ name }) => name.toLowerCase()),
    mark: together(parts.map(({ mark }) => mark)),
  }));
  const told = WORDS.map(([mark, word, how]) => ({
    word,
    how,
    names: places.flatMap((place) => (place.mark === mark ? place.names : [])).join(', '),
  })).filter(({ names }) => names !== '');
  return {
    marks: Object.fromEntries(places.flatMap(({ at, mark }) => (mark === 'kept' ? [] : [[at, mark]]))),
    told,
    words: told.map(({ word, names }) => `${word}: ${names}.`).join(' '),
  };
}

function together(marks: readonly FabricMark[]): FabricMark {
  const [only = 'unsaid', ...more] = new Set(marks);
  if (more.length === 0) return only;
  return marks.every((mark) => mark === 'kept' || mark === 'unsaid') ? 'unsaid' : 'mended';
}
