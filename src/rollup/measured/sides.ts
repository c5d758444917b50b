// Gaps of one side of the car held against the same gap of the other.
import { type Answer, noAnswer } from '../../measure/answer.ts';
import { leftAgainstRight, type Sides } from '../../measure/gaps.ts';
import type { MeasuredOf, Thing } from '../measured.ts';
import { figureIn } from './results.ts';

type GapThing = Thing<MeasuredOf<'gaps'>>;

/** The two of a pair; `sides` compares what was read last on each, left less right. */
export type GapPair = { left: GapThing; right: GapThing; sides: Answer<Sides> };

/**
 * Gaps that are the same but for left and right, in the name of the part (`door-left`) or of the gap (`rear edge to
 * cowl, left`).
 */
export function gapPairs(things: readonly Thing[]): GapPair[] {
  const gaps = things.filter((thing): thing is GapThing => thing.kind === 'gaps');
  const at = new Map(gaps.map((thing) => [keyOf(thing), thing]));
  return gaps.flatMap((left) => {
    if (!LEFT.test(keyOf(left))) return [];
    const right = at.get(keyOf(left).replaceAll(LEFTS, 'right'));
    return right ? [{ left, right, sides: compared(left, right) }] : [];
  });
}

const LEFT = /\bleft\b/;
const LEFTS = /\bleft\b/g;

const keyOf = ({ part, name }: GapThing) => `${part}/${name.trim().toLowerCase()}`;

function compared(left: GapThing, right: GapThing): Answer<Sides> {
  if (left.last.state !== right.last.state) {
    return noAnswer('Left and right were last read at different stages of the work.');
  }
  const figures = ({ reading }: MeasuredOf<'gaps'>) => reading.readings.map(figureIn(reading));
  return leftAgainstRight(figures(left.last), figures(right.last));
}
