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

  it('are a copy, and so for twenty thousand', () => {
    const draws = new Float64Array(20_000);
    fillNormals(draws, streamFor('s', 'order'));
    const before = draws.slice();
    const sorted = drawsInOrder(draws);
    expect(draws).toEqual(before);
    expect(bits(sorted)).toEqual(bits(before.sort()));
  });
});
