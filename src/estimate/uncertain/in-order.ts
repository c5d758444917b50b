// Puts draws in order by their bits: a reader who moves figures waits for nine such sorts, and this takes a quarter
// of the time of comparing.

/**
 * A copy in rising order, -0 before 0, as `sort` of a Float64Array has it; no value is NaN. Radix sort (Knuth, The Art
 * of Computer Programming 3, 5.2.5) over the four 16-bit words of each value, the lowest first.
 */
export function drawsInOrder(values: ArrayLike<number>): Float64Array {
  let from = Float64Array.from(values);
  let to = new Float64Array(from.length);
  const places = new Uint32Array(VALUES);
  for (let word = 0; word < WORDS; word++) {
    const words = new Uint16Array(from.buffer);
    const first = LOW_WORD_FIRST ? word : WORDS - 1 - word;
    countPlaces(places, words, first);
    for (let d = 0; d < from.length; d++) {
      const key = words[WORDS * d + first] as number;
      const place = places[key] as number;
      to[place] = from[d] as number;
      places[key] = place + 1;
    }
    [from, to] = [to, from];
  }
  return belowZeroFirst(from, to);
}

const WORDS = 4;
const VALUES = 2 ** 16;
const LOW_WORD_FIRST = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;

/** Where the draws with each value of one word begin. */
function countPlaces(places: Uint32Array, words: Uint16Array, first: number): void {
  places.fill(0);
  for (let w = first; w < words.length; w += WORDS)
    places[words[w] as number] = (places[words[w] as number] as number) + 1;
  let before = 0;
  for (let key = 0; key < VALUES; key++) {
    const count = places[key] as number;
    places[key] = before;
    before += count;
  }
}

/** By their bits, values below zero come last and in falling order: turns them about and puts them first. */
function belowZeroFirst(draws: Float64Array, into: Float64Array): Float64Array {
  const last = draws.length - 1;
  const below = (d: number) => d >= 0 && ((draws[d] as number) < 0 || Object.is(draws[d], -0));
  if (!below(last)) return draws;
  let first = last;
  while (below(first - 1)) first--;
  into.set(draws.subarray(first).reverse(), 0);
  into.set(draws.subarray(0, first), last + 1 - first);
  return into;
}
