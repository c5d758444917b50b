// Seeded random numbers: one stream for each name, so that a figure keeps its draws when others come or go.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

/** The generator that belongs to a seed and a name: the same in every run, on every machine. */
export function streamFor(seed: string, name: string): RandomGenerator {
  const text = `${name}\u0000${seed}`;
  const first = fnv(text, 0x811c9dc5);
  const second = fnv(text, mixed(first ^ 0x9e3779b9));
  return xoroshiro128plusFromState([
    mixed(first),
    mixed(second),
    mixed(first + 0x9e3779b9),
    mixed(second + 0x9e3779b9) | 1,
  ]);
}

/** Uniform numbers from 0 up to 1. */
export function uniforms(draws: number, from: RandomGenerator): Float64Array {
  const out = new Float64Array(draws);
  for (let i = 0; i < draws; i++) out[i] = uniformFloat64(from);
  return out;
}

/** FNV-1a over UTF-16 units, 32 bits (Fowler, Noll, Vo). */
function fnv(text: string, start: number): number {
  let hash = start;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash;
}

/** The closing mix of MurmurHash3 (Appleby): texts that differ by one letter get states that differ everywhere. */
function mixed(bits: number): number {
  let hash = bits | 0;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}
