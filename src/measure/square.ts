// Whether an opening is square, from its sides and diagonals. Millimeters and degrees.
import { type Answer, answer, noAnswer } from './answer.ts';
import { type Corner, canClose, cornerOff } from './corners.ts';
import { type Figure, figureFrom, keeps, type Pull, type Verdict } from './figure.ts';

/**
 * Going round: a, b, a2 (across from a), b2 (across from b). d1 runs from the start of a to the end of b, d2 from the
 * end of a to the end of a2. `within` says how far apart the diagonals, or two sides across from each other, may be.
 */
export type Opening = {
  a: Figure;
  b: Figure;
  a2?: Figure;
  b2?: Figure;
  d1: Figure;
  d2: Figure;
  within?: number;
};

/** Two lengths that should be one: how much longer the first is, and whether that is near enough. */
export type Pair = { off: Figure; verdict: Verdict };

/**
 * `outOfSquare` in degrees, above zero when d1 is the longer. `rack` in millimeters: how far one end of a side has gone
 * along the other, over b and over a. `corners`, with all four sides known, says how far each is from 90 degrees, in
 * the order ab, b a2, a2 b2, b2 a. `amiss` is how much longer the diagonals are together than such sides allow.
 * `square` is `not known` while opposite sides are not given, since a trapezoid has equal diagonals too, and `readings
 * disagree` where equal sides and equal diagonals don't belong to one flat shape: misread, or twisted.
 */
export type Square = {
  outOfSquare: Figure;
  rack: { overA: Figure; overB: Figure };
  diagonals: Pair;
  sides: { a?: Pair; b?: Pair };
  corners?: Figure[];
  amiss: Figure;
  square: 'square' | 'not square' | 'too close to tell' | 'not known' | 'readings disagree';
};

/**
 * sin e = (d1^2 - d2^2) / (4ab), from the cosine rule: exact for the lines that join the middles of opposite sides of
 * any four corners. The mean of two opposite sides stands for the length of such a line, right to second order.
 */
export function squareOf(opening: Opening): Answer<Square> {
  const { a, b, a2, b2, d1, d2, within } = opening;
  const lengths = [a, b, d1, d2, ...(a2 ? [a2] : []), ...(b2 ? [b2] : [])];
  if (!lengths.every(({ value }) => value > 0))
    return noAnswer('Sides and diagonals are longer than nothing.');
  const corners = cornersOf(opening);
  const across = sideFrom(a, a2);
  const along = sideFrom(b, b2);
  const sine = (d1.value ** 2 - d2.value ** 2) / (4 * across.value * along.value);
  if (!(corners.every(canClose) && Math.abs(sine) < 1)) {
    return noAnswer('These sides and diagonals can’t close: one of them is longer than the way round it.');
  }
  const diagonals = pairOf(d1, d2, within);
  const sides = { ...(a2 && { a: pairOf(a, a2, within) }), ...(b2 && { b: pairOf(b, b2, within) }) };
  const amiss = amissOf(opening, across, along);
  return answer({
    outOfSquare: outOfSquare(opening, across, along, sine),
    rack: { overA: rackOver(opening, along), overB: rackOver(opening, across) },
    diagonals,
    sides,
    ...(a2 && b2 && { corners: corners.map(cornerOff) }),
    amiss,
    square: squareFrom([diagonals, sides.a, sides.b], amiss, within),
  });
}

/** Two sides across from each other as one: their mean, and how each pulls on it. */
type Side = { value: number; pulls: Pull[] };

function sideFrom(first: Figure, second: Figure | undefined): Side {
  if (!second) return { value: first.value, pulls: [{ reading: first, slope: 1 }] };
  return {
    value: (first.value + second.value) / 2,
    pulls: [first, second].map((reading) => ({ reading, slope: 0.5 })),
  };
}

const times = (pulls: readonly Pull[], by: number): Pull[] =>
  pulls.map(({ reading, slope }) => ({ reading, slope: slope * by }));

function outOfSquare({ d1, d2 }: Opening, across: Side, along: Side, sine: number): Figure {
  const turn = 180 / Math.PI / Math.sqrt(1 - sine ** 2);
  const area = 2 * across.value * along.value;
  const pulls = [
    { reading: d1, slope: d1.value / area },
    { reading: d2, slope: -d2.value / area },
    ...times(across.pulls, -sine / across.value),
    ...times(along.pulls, -sine / along.value),
  ];
  return figureFrom((Math.asin(sine) * 180) / Math.PI, times(pulls, turn));
}

/** (d1^2 - d2^2) / (4 side): how far the end of the other side has gone along this one. */
function rackOver({ d1, d2 }: Opening, side: Side): Figure {
  const value = (d1.value ** 2 - d2.value ** 2) / (4 * side.value);
  return figureFrom(value, [
    { reading: d1, slope: d1.value / (2 * side.value) },
    { reading: d2, slope: -d2.value / (2 * side.value) },
    ...times(side.pulls, -value / side.value),
  ]);
}

/** The parallelogram law d1^2 + d2^2 = 2(a^2 + b^2), as lengths: the diagonals' root mean square less what is due. */
function amissOf({ d1, d2 }: Opening, across: Side, along: Side): Figure {
  const read = Math.hypot(d1.value, d2.value) / Math.SQRT2;
  const due = Math.hypot(across.value, along.value);
  return figureFrom(read - due, [
    { reading: d1, slope: d1.value / (2 * read) },
    { reading: d2, slope: d2.value / (2 * read) },
    ...times(across.pulls, -across.value / due),
    ...times(along.pulls, -along.value / due),
  ]);
}

function pairOf(first: Figure, second: Figure, within: number | undefined): Pair {
  const off = figureFrom(first.value - second.value, [
    { reading: first, slope: 1 },
    { reading: second, slope: -1 },
  ]);
  if (within !== undefined) return { off, verdict: keeps(off, within) };
  // Nothing said: as near as the readings themselves are, and the same where they don't say.
  return { off, verdict: keeps({ value: off.value }, off.plusMinus ?? 0) };
}

function squareFrom(
  pairs: readonly (Pair | undefined)[],
  amiss: Figure,
  within = amiss.plusMinus,
): Square['square'] {
  const verdicts = pairs.map((pair) => pair?.verdict);
  if (verdicts.includes('not within')) return 'not square';
  if (verdicts.includes(undefined)) return 'not known';
  if (within !== undefined && keeps(amiss, within) === 'not within') return 'readings disagree';
  return verdicts.includes('too close to tell') ? 'too close to tell' : 'square';
}

/** The corners whose sides are both known, going round from that of a and b; without opposite sides, only that one. */
function cornersOf({ a, b, a2, b2, d1, d2 }: Opening): Corner[] {
  return [
    { sides: [a, b], across: d1 },
    ...(a2 ? [{ sides: [b, a2], across: d2 } as const] : []),
    ...(a2 && b2 ? [{ sides: [a2, b2], across: d1 } as const] : []),
    ...(b2 ? [{ sides: [b2, a], across: d2 } as const] : []),
  ];
}
