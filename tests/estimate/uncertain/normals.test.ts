import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../../src/estimate/uncertain/normal.ts';
import { fillNormals } from '../../../src/estimate/uncertain/normals.ts';
import { streamFor, uniforms } from '../../../src/estimate/uncertain/stream.ts';

const COUNT = 1_000_000;
const drawn = new Float64Array(COUNT);
fillNormals(drawn, streamFor('seed', 'normals'));

describe('normal numbers', () => {
  // Standard errors of the k-th moments of a normal sample: sqrt((E z^2k - (E z^k)^2) / n).
  it.each([
    [1, 0, 1],
    [2, 1, Math.sqrt(2)],
    [3, 0, Math.sqrt(15)],
    [4, 3, Math.sqrt(96)],
  ])('have moment %d at %d', (power, moment, deviation) => {
    const found = drawn.reduce((sum, z) => sum + z ** power, 0) / COUNT;
    expect(Math.abs(found - moment)).toBeLessThan((4 * deviation) / Math.sqrt(COUNT));
  });

  // Kolmogorov's test at one in a thousand: 1.95 / sqrt(n).
  it('follow the normal curve everywhere', () => {
    const sorted = drawn.slice().sort();
    let worst = 0;
    for (let d = 0; d < COUNT; d += 10) {
      worst = Math.max(worst, Math.abs(normalCdf(sorted[d] ?? 0) - (d + 0.5) / COUNT));
    }
    expect(worst).toBeLessThan(1.95 / Math.sqrt(COUNT));
  });

  it('fall into the far tails as often as they should', () => {
    for (const edge of [3.2, 3.442619855899, 3.7, 4]) {
      const expected = 2 * COUNT * normalCdf(-edge);
      const found = drawn.filter((z) => Math.abs(z) > edge).length;
      expect(Math.abs(found - expected), `beyond ${edge}`).toBeLessThan(4 * Math.sqrt(expected));
    }
  });

  it('come from streams that have nothing to do with each other', () => {
    const names = ['a', 'b', 'aa', 'line 1', 'line 2', ''];
    const streams = names.map((name) => uniforms(20_000, streamFor('seed', name)));
    for (const [i, one] of streams.entries()) {
      for (const other of streams.slice(i + 1)) {
        const joint = one.reduce((sum, u, d) => sum + (u - 0.5) * ((other[d] ?? 0) - 0.5), 0) / one.length;
        expect(Math.abs(12 * joint)).toBeLessThan(4 / Math.sqrt(one.length));
      }
    }
  });

  it('keep seed and name apart', () => {
    const first = (seed: string, name: string) => uniforms(1, streamFor(seed, name))[0];
    expect(first('ab', 'c')).not.toBe(first('a', 'bc'));
  });
});
