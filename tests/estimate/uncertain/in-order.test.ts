import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawsInOrder } from '../../../src/estimate/uncertain/in-order.ts';
import { fillNormals } from '../../../src/estimate/uncertain/normals.ts';
import { streamFor } from '../../../src/estimate/uncertain/stream.ts';

const bits = (values: Float64Array) => Array.from(new BigUint64Array(values.buffer));

// The engine's own sort is the source of what is expected.
describe('draws in order', () => {
  it('stand as a sort puts them, to the last bit, whatever they are', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true }), { maxLength: 200 }), (values) => {
        expect(bits(drawsInOrder(values))).toEqual(bits(Float64Array.from(values).sort()));
      }),
    );
    const odd = [0, -0, 5e-324, -5e-324, Infinity, -Infinity, 1, -1, 0, -0, 1 + Number.EPSILON];
    expect(bits(drawsInOrder(odd))).toEqual(bits(Float64Array.from(odd).sort()));
  });

  it('stand so where their upper halves are alike', () => {
    const draws = new Float64Array(20_000);
    fillNormals(draws, streamFor('s', 'alike'));
    for (const scale of [1e-9, 1e-6]) {
      const near = draws.map((draw) => 5000 + scale * draw);
      expect(new Set(new Uint32Array(near.buffer).filter((_, w) => w % 2 === 1)).size).toBeLessThan(200);
      expect(bits(drawsInOrder(near))).toEqual(bits(near.slice().sort()));
      const below = near.map((draw) => -draw);
      expect(bits(drawsInOrder(below))).toEqual(bits(below.slice().sort()));
    }
    const few = draws.map((draw) => Math.round(draw));
    expect(bits(drawsInOrder(few))).toEqual(bits(few.slice().sort()));
  });

  it('are a copy, and so for twenty thousand', () => {
    const draws = new Float64Array(20_000);
    fillNormals(draws, streamFor('s', 'order'));
    const before = draws.slice();
    const sorted = drawsInOrder(draws);
    expect(draws).toEqual(before);
    expect(bits(sorted)).toEqual(bits(before.sort()));
  });
});
