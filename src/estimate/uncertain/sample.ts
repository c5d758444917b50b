// Draws the total of uncertain lines. Ranges never add end to end: only draws do.
import { type Curve, PER_UNIT, PIECES, REACH } from './curve.ts';
import { type KeptDraws, keptOrDrawn } from './kept-draws.ts';
import { fillNormals } from './normals.ts';
import { streamFor, uniforms } from './stream.ts';

/** `id` names the draws: two lines of one id move as one. */
export type Line = { id: string; curve: Curve };

/** How often a total is drawn unless told otherwise. */
export const DRAWS = 20_000;
/**
 * How much lines share a cause unless told otherwise: the middle of what cost handbooks advise when nothing is known
 * (0.2 to 0.3), because sums taken as independent are far too sure.
 */
export const CORRELATION = 0.25;

/**
 * `seed` comes from the record. `correlation` is the parameter of the normal copula with one common cause. `kept` holds
 * numbers from call to call, for who draws the same names again; figures are the same with and without.
 */
export type Sampling = { seed: string; draws?: number; correlation?: number; kept?: KeptDraws };

/** Draws of every line, in the order given, and of their sum. */
export type Sampled = { draws: number; lines: { id: string; values: Float64Array }[]; totals: Float64Array };

/**
 * Line i at draw d is its curve at z = sqrt(r) common + sqrt(1-r) own: the one-factor Gaussian copula.
 * Neither the order of the lines nor the presence of others changes what a line draws.
 * @throws RangeError when the correlation is outside 0…1 or the draws are not a whole number above zero.
 */
export function sampleLines(lines: readonly Line[], sampling: Sampling): Sampled {
  const drawer = drawerFor(sampling);
  const drawn = lines.map(({ id, curve }) => ({ id, values: drawer.draw(id, curve) }));
  const totals = new Float64Array(drawer.draws);
  // Summed in the order of the names: the last digit of a sum depends on the order of its parts.
  for (const { values } of [...drawn].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))) {
    for (let d = 0; d < totals.length; d++) totals[d] = (totals[d] as number) + (values[d] as number);
  }
  return { draws: drawer.draws, lines: drawn, totals };
}

export type Drawer = {
  draws: number;
  /** Draws that share the common cause. */
  draw: (id: string, curve: Curve) => Float64Array;
  /** Draws on their own: what has nothing to do with how the work goes, such as a rate. */
  drawAlone: (id: string, curve: Curve) => Float64Array;
  /** Uniform numbers from 0 up to 1, for what happens or does not; to be read only. */
  drawChances: (id: string) => Float64Array;
};

/** @throws RangeError as `sampleLines` does. */
export function drawerFor({ seed, draws = DRAWS, correlation = CORRELATION, kept }: Sampling): Drawer {
  if (!(correlation >= 0 && correlation <= 1)) {
    throw new RangeError(`a correlation lies between 0 and 1, not ${correlation}`);
  }
  if (!(Number.isInteger(draws) && draws > 0)) {
    throw new RangeError(`draws are a whole number above zero, not ${draws}`);
  }
  const normals = (name: string): Float64Array =>
    keptOrDrawn(kept, { seed, name, draws }, () => {
      const out = new Float64Array(draws);
      fillNormals(out, streamFor(seed, name));
      return out;
    });
  const common = normals('common cause');
  const along = (id: string, curve: Curve, shared: number): Float64Array => {
    if (curve.span === 0) return new Float64Array(draws).fill(curve.base);
    return valuesAt(curve, common, normals(`line ${id}`), Math.sqrt(shared), Math.sqrt(1 - shared));
  };
  return {
    draws,
    draw: (id, curve) => along(id, curve, correlation),
    drawAlone: (id, curve) => along(id, curve, 0),
    drawChances: (id) => {
      const name = `chance ${id}`;
      return keptOrDrawn(kept, { seed, name, draws }, () => uniforms(draws, streamFor(seed, name)));
    },
  };
}

/** `valueAt` of `curve.ts`, written out for whole arrays: four million calls are too many. */
function valuesAt(curve: Curve, common: Float64Array, own: Float64Array, share: number, rest: number) {
  const { base, span, pieces } = curve;
  const out = new Float64Array(own.length);
  const [ofCommon, ofOwn] = [share * PER_UNIT, rest * PER_UNIT];
  for (let d = 0; d < out.length; d++) {
    const raw = ofCommon * (common[d] as number) + ofOwn * (own[d] as number) + REACH * PER_UNIT;
    const place = Math.min(Math.max(raw, 0), PIECES);
    const piece = place === PIECES ? PIECES - 1 : place | 0;
    const u = place - piece;
    const c = 4 * piece;
    const cubic = (pieces[c + 3] as number) * u + (pieces[c + 2] as number);
    out[d] = base + span * ((cubic * u + (pieces[c + 1] as number)) * u + (pieces[c] as number));
  }
  return out;
}
