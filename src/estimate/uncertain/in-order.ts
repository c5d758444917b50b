// Puts draws in order by their bits: a reader who moves figures waits for nine such sorts, and this takes less than half
// the time of comparing.

/**
 * A copy in rising order, -0 before 0, as `sort` of a Float64Array has it; no value is NaN. Radix sort over the upper half
 * of each value, sign, exponent and 20 bits, the lowest digit first; what few are left out of order by the lower half are
 * put right by straight insertion, as MacLaren proposed (Knuth, The Art of Computer Programming 3, 5.2.5). Where they
 * aren't few the lower half is gone through as well.
 */
export function drawsInOrder(values: ArrayLike<number>): Float64Array {
  const draws = Float64Array.from(values);
  const upper = byDigits(draws, UPPER);
  const sorted = inserted(upper) ? upper : byDigits(byDigits(draws, LOWER), UPPER);
  return belowZeroFirst(sorted);
}

const LOW_WORD_FIRST = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;
/** Where the halves of a value lie, in words of 32 bits. */
const LOWER = LOW_WORD_FIRST ? 0 : 1;
const UPPER = 1 - LOWER;
/** Three digits of 11 bits, the last of 10, count 32 in all. */
const DIGITS = 3;
const BITS = 11;
const VALUES = 2 ** BITS;

/** Sorts by the digits of one half of each value; equal ones stay in their order. */
function byDigits(draws: Float64Array, half: number): Float64Array {
  const places = countDigits(draws, half);
  let from = draws.slice();
  let to = new Float64Array(draws.length);
  for (let digit = 0; digit < DIGITS; digit++) {
    if (!begin(places, digit * VALUES, draws.length)) continue;
    const words = new Uint32Array(from.buffer);
    for (let d = 0; d < from.length; d++) {
      const key = digit * VALUES + (((words[2 * d + half] as number) >>> (digit * BITS)) & (VALUES - 1));
      const place = places[key] as number;
      to[place] = from[d] as number;
      places[key] = place + 1;
    }
    [from, to] = [to, from];
  }
  return from;
}

/** How many values have each digit, one digit after the other. */
function countDigits(draws: Float64Array, half: number): Uint32Array {
  const words = new Uint32Array(draws.buffer);
  const counts = new Uint32Array(DIGITS * VALUES);
  for (let w = half; w < words.length; w += 2) {
    const word = words[w] as number;
    for (let digit = 0; digit < DIGITS; digit++) {
      const key = digit * VALUES + ((word >>> (digit * BITS)) & (VALUES - 1));
      counts[key] = (counts[key] as number) + 1;
    }
  }
  return counts;
}

/** Turns the counts of one digit into where the values with each begin; false where all have the same. */
function begin(counts: Uint32Array, first: number, all: number): boolean {
  let before = 0;
  for (let key = first; key < first + VALUES; key++) {
    const count = counts[key] as number;
    if (count === all) return false;
    counts[key] = before;
    before += count;
  }
  return true;
}

/**
 * Straight insertion by the bits of whole values that are in order by their upper halves; false, and some order, where it
 * would take too many steps.
 */
function inserted(draws: Float64Array): boolean {
  const words = new Uint32Array(draws.buffer);
  let steps = 4 * draws.length;
  for (let d = 1; d < draws.length; d++) {
    const upper = words[2 * d + UPPER] as number;
    if (upper !== words[2 * d - 2 + UPPER]) continue;
    const value = draws[d] as number;
    const lower = words[2 * d + LOWER] as number;
    let place = d;
    while (
      place > 0 &&
      words[2 * place - 2 + UPPER] === upper &&
      (words[2 * place - 2 + LOWER] as number) > lower
    ) {
      draws[place] = draws[place - 1] as number;
      place--;
      if (--steps < 0) return false;
    }
    draws[place] = value;
  }
  return true;
}

/** By their bits, values below zero come last and in falling order: turns them about and puts them first. */
function belowZeroFirst(draws: Float64Array): Float64Array {
  const last = draws.length - 1;
  const below = (d: number) => d >= 0 && ((draws[d] as number) < 0 || Object.is(draws[d], -0));
  if (!below(last)) return draws;
  let first = last;
  while (below(first - 1)) first--;
  const into = new Float64Array(draws.length);
  into.set(draws.subarray(first).reverse(), 0);
  into.set(draws.subarray(0, first), last + 1 - first);
  return into;
}
