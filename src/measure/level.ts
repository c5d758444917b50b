// What a level says: how far off the target, and what that makes over a length. Degrees and millimeters.
import { type Answer, answer, noAnswer } from './answer.ts';
import { type Figure, figureFrom, keeps, type Verdict } from './figure.ts';

/** `target` is level unless given; `over` is the level run that a rise is asked for, not the length along the slope. */
export type LevelReading = { reading: Figure; target?: number; within?: number; over?: Figure };

/**
 * `off` is reading less target, in degrees. `rise` is the height over the length as read, `riseOff` what of it is too
 * much, both in millimeters, up counting above zero. `verdict` only where the reading says how far off is right.
 */
export type Level = { off: Figure; rise?: Figure; riseOff?: Figure; verdict?: Verdict };

/** Rise = tan(angle) x length: the slope's tangent, as a rise over a level run, not its sine. */
export function levelOf({ reading, target = 0, within, over }: LevelReading): Answer<Level> {
  if (!(Math.abs(reading.value) < 90 && Math.abs(target) < 90)) {
    return noAnswer('A slope stays below 90 degrees either way.');
  }
  const off = figureFrom(reading.value - target, [{ reading, slope: 1 }]);
  const rise = over && riseOver(reading, over, 0);
  const riseOff = over && riseOver(reading, over, target);
  return answer({
    off,
    ...(rise && riseOff && { rise, riseOff }),
    ...(within !== undefined && { verdict: keeps(off, within) }),
  });
}

/** One slope in the three ways that levels and rules give it. */
export type Slope = { degrees: number; mmPerMeter: number; inchesPerFoot: number };

export function slopeOf(degrees: number): Slope {
  const tangent = Math.tan(degrees * DEGREE);
  return { degrees, mmPerMeter: 1000 * tangent, inchesPerFoot: 12 * tangent };
}

/** Degrees of a rise over a level run, both in the same unit: the arctangent. */
export function degreesOf(rise: number, run: number): number {
  return Math.atan2(rise, run) / DEGREE;
}

const DEGREE = Math.PI / 180;

function riseOver(reading: Figure, over: Figure, target: number): Figure {
  const tangent = Math.tan(reading.value * DEGREE);
  const more = tangent - Math.tan(target * DEGREE);
  return figureFrom(over.value * more, [
    { reading, slope: over.value * DEGREE * (1 + tangent * tangent) },
    { reading: over, slope: more },
  ]);
}
