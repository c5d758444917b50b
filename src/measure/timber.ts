// How far a piece of timber moves across its width when its moisture changes.
import timber from '../../shared/timber.json' with { type: 'json' };
import { type Answer, answer, noAnswer } from './answer.ts';
import { type Figure, figureFrom } from './figure.ts';

/** Width in millimeters, moisture as a share of the dry weight: 0.12 is 12%. */
export type Piece = {
  species: string;
  width: Figure;
  grain: 'radial' | 'tangential';
  moistureFrom: Figure;
  moistureTo: Figure;
};

/**
 * `change` in millimeters, above zero when the piece swells; `width` is what it comes to. `rule` says whether the
 * table's coefficient was used or, outside its range, the shrinkage, and then `warning` says so in words.
 */
export type Movement = {
  species: string;
  change: Figure;
  width: Figure;
  rule: { by: 'coefficient' | 'shrinkage'; value: number; source: string };
  warning?: string;
};

/**
 * From 6% to 14%: change = width x C x (to - from), moisture in percent (Wood Handbook FPL-GTR-190, equation 13-2).
 * Outside that: change = width x (to - from) / (3000 / S - 30 + from) (equation 13-3), S the shrinkage in percent.
 * Above 30% wood doesn't move, and there is no answer; nor for a species whose figures aren't in the table.
 */
export function movementOf({ species, width, grain, moistureFrom, moistureTo }: Piece): Answer<Movement> {
  const wood = timber.species.find(({ name }) => name.toLowerCase() === species.trim().toLowerCase());
  if (!wood) return noAnswer(unknown(species.trim()));
  const [from, to] = [moistureFrom.value * 100, moistureTo.value * 100];
  if (!(Math.min(from, to) >= 0 && Math.max(from, to) <= 30 + NEAR && width.value > 0)) {
    return noAnswer(
      'Movement is known from 0% to 30% moisture, for a width above zero: wetter wood doesn’t move.',
    );
  }
  const coefficient = wood.coefficient[grain];
  const inRange = Math.min(from, to) >= 6 - NEAR && Math.max(from, to) <= 14 + NEAR;
  const shrinkage = wood.shrinkage?.[grain] ?? shrinkageFrom(coefficient);
  const share = inRange ? (to - from) * coefficient : shareByShrinkage(shrinkage, from, to);
  const base = inRange ? 1 / coefficient : baseOf(shrinkage, from);
  const pulls = (ofWidth: number) => [
    { reading: width, slope: ofWidth },
    { reading: moistureTo, slope: (100 * width.value) / base },
    { reading: moistureFrom, slope: (-100 * width.value * (inRange ? 1 : 1 + share)) / base },
  ];
  return answer({
    species: wood.name,
    change: figureFrom(width.value * share, pulls(share)),
    width: figureFrom(width.value * (1 + share), pulls(1 + share)),
    rule: inRange
      ? { by: 'coefficient', value: coefficient, source: timber.source }
      : { by: 'shrinkage', value: shrinkage, source: timber.source },
    ...(!inRange && { warning: OUTSIDE }),
  });
}

/** The species whose movement is known, as they are written. */
export const knownSpecies: readonly string[] = timber.species.map(({ name }) => name);

/** Equation 13-3 alone: the share of its width that a piece gains from one moisture to another, both in percent. */
export function shareByShrinkage(shrinkage: number, from: number, to: number): number {
  return (to - from) / baseOf(shrinkage, from);
}

/** C = 1 / (3000 / S - 20): the coefficient that a shrinkage of S percent comes to about 10% moisture. */
export function coefficientFrom(shrinkage: number): number {
  return 1 / (3000 / shrinkage - 20);
}

const baseOf = (shrinkage: number, from: number): number => 3000 / shrinkage - 30 + from;

function shrinkageFrom(coefficient: number): number {
  return 3000 / (1 / coefficient + 20);
}

const NEAR = 1e-9;
const OUTSIDE =
  'The coefficient holds from 6% to 14% moisture; this was worked out from the shrinkage and is rougher.';

function unknown(species: string): string {
  const kind = species.toLowerCase().split(/\s+/).at(-1) ?? '';
  const akin = knownSpecies.filter((name) => name.toLowerCase().split(/[\s-]/).includes(kind));
  const list = akin.length > 0 ? ` Known of that kind: ${akin.join(', ')}.` : '';
  return `There are no movement figures for “${species}” here.${list}`;
}
