// Standard normal numbers from a stream: most of the time of a sample goes here, so most draws cost one product.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

/**
 * Fills an array with standard normal numbers by the ziggurat of Marsaglia and Tsang (2000) with 128 layers, the layer
 * and the place in it taken from separate numbers as Doornik (2005) advises.
 */
export function fillNormals(out: Float64Array, from: RandomGenerator): void {
  for (let d = 0; d < out.length; d++) {
    const side = from.next() * TO_ONE;
    const layer = from.next() >>> 25;
    out[d] =
      Math.abs(side) < (inner[layer] as number) ? side * (edge[layer] as number) : slow(side, layer, from);
  }
}

const TO_ONE = 2 ** -31;
const LAYERS = 128;
/** Where the tail begins and the area of each layer, for 128 layers (Marsaglia and Tsang 2000). */
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;

/** Right edge of each layer, and the share of it that lies wholly under the curve. */
const edge = new Float64Array(LAYERS + 1);
const inner = new Float64Array(LAYERS);
layOut();

function layOut(): void {
  edge[0] = AREA / height(TAIL);
  edge[1] = TAIL;
  for (let i = 2; i < LAYERS; i++) {
    const outer = edge[i - 1] as number;
    edge[i] = Math.sqrt(-2 * Math.log(AREA / outer + height(outer)));
  }
  for (let i = 0; i < LAYERS; i++) inner[i] = (edge[i + 1] as number) / (edge[i] as number);
}

function height(x: number): number {
  return Math.exp(-0.5 * x * x);
}

/** One draw in about forty falls on the rim of a layer or into the tail. */
function slow(firstSide: number, firstLayer: number, from: RandomGenerator): number {
  let side = firstSide;
  let layer = firstLayer;
  for (;;) {
    const x = side * (edge[layer] as number);
    if (Math.abs(side) < (inner[layer] as number)) return x;
    if (layer === 0) return side < 0 ? -beyond(from) : beyond(from);
    const low = height(edge[layer] as number);
    const high = height(edge[layer + 1] as number);
    if (low + uniformFloat64(from) * (high - low) < height(x)) return x;
    side = from.next() * TO_ONE;
    layer = from.next() >>> 25;
  }
}

/** A normal number given that it is beyond the last edge (Marsaglia 1964). */
function beyond(from: RandomGenerator): number {
  for (;;) {
    const over = -Math.log1p(-uniformFloat64(from)) / TAIL;
    if (-2 * Math.log1p(-uniformFloat64(from)) >= over * over) return TAIL + over;
  }
}
