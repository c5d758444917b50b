// Angles as a level gives them: degrees, or the rise over a run.
import { readLength } from './lengths.ts';
import { type Reading, read, unread } from './reading.ts';

/** An angle in degrees, with the writing that gave it. A rise over a run is its arctangent. */
export type Angle = { degrees: number; written: string };

/** Reads `1.5 deg`, `1.5°`, `26 mm/m` or `5/16 in/ft`; `+` and `-` say up and down. */
export function readAngle(text: string): Reading<Angle> {
  const written = text.trim();
  const bare = written.replace(/^−/, '-').replace(/^\+\s*/, '');
  const degrees = /^(-?\d+(?:\.\d+)?|-?\.\d+)\s*(?:°|deg|degrees?)$/.exec(bare);
  if (degrees) return read({ degrees: Number(degrees[1]), written });
  const metric = /^(.+?)\s*mm\s*\/\s*m$/.exec(bare);
  const rise = metric ? rung(`${metric[1]} mm`, 1000) : rung(/^(.+?)\s*\/\s*ft$/.exec(bare)?.[1], 12);
  return rise === undefined
    ? unread('an angle such as `1.5°`, `1.5 deg`, `26 mm/m` or `5/16 in/ft`')
    : read({ degrees: rise, written });
}

function rung(rise: string | undefined, run: number): number | undefined {
  const length = rise === undefined ? undefined : readLength(rise);
  if (!length?.ok || length.value.unit !== (run === 12 ? 'in' : 'mm')) return undefined;
  return (Math.atan2(length.value.n, length.value.d * run) * 180) / Math.PI;
}
