import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DESK, frameOf, rowsOf } from '../../src/views/rows.ts';

const pictures = (ratios: readonly number[]) => ratios.map((ratio, i) => ({ ratio, i }));
const widthOf = ({ framed, height }: ReturnType<typeof rowsOf>[number]) =>
  framed.reduce((width, { frame }) => width + frame * height, 0) + DESK.gap * (framed.length - 1);
/** From a strip held upright to a panorama, and mostly what cameras make. */
const ratios = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(4 / 3, 3 / 4, 3 / 2, 2 / 3, 16 / 9, 1) },
    { weight: 1, arbitrary: fc.double({ min: 0.1, max: 8, noNaN: true }) },
  ),
  { maxLength: 60 },
);

describe('rows of pictures', () => {
  it('keep the order and leave none out', () => {
    fc.assert(
      fc.property(ratios, (given) => {
        const laid = rowsOf(pictures(given)).flatMap(({ framed }) => framed.map(({ item }) => item.i));
        expect(laid).toEqual(given.map((_, i) => i));
      }),
    );
  });

  it('fill the column but for the last, and none runs over it', () => {
    fc.assert(
      fc.property(ratios, (given) => {
        const rows = rowsOf(pictures(given));
        for (const row of rows.slice(0, -1)) expect(row.rest).toBe(0);
        for (const row of rows) {
          expect(widthOf(row) + row.rest * row.height).toBeCloseTo(DESK.width, 9);
        }
      }),
    );
  });

  it('are of even height: none above 1.15 times the wanted one, none below half of it', () => {
    fc.assert(
      fc.property(ratios, (given) => {
        for (const { height } of rowsOf(pictures(given))) {
          expect(height).toBeLessThanOrEqual(DESK.height * 1.15);
          expect(height).toBeGreaterThanOrEqual(DESK.height * 0.5);
        }
      }),
    );
  });

  it('stay within a third of the wanted height for what cameras make, a month of it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(4 / 3, 3 / 4, 3 / 2), { minLength: 20, maxLength: 60 }),
        (given) => {
          const heights = rowsOf(pictures(given)).map(({ height }) => height);
          for (const height of heights) expect(height).toBeGreaterThan((DESK.height * 2) / 3);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('don’t stretch a picture that is alone on the last', () => {
    const [row, ...others] = rowsOf(pictures([4 / 3]));
    expect(others).toEqual([]);
    // Worked by hand: 58 rem / 15 rem − 4/3 = 38/15.
    expect(row?.height).toBe(DESK.height);
    expect(row?.rest).toBeCloseTo(38 / 15, 9);
    // Beside rows of 14 rem, as worked out below, it is of 14 rem too.
    const last = rowsOf(pictures(Array.from({ length: 10 }, () => 4 / 3))).at(-1);
    expect(last?.framed.length).toBe(1);
    expect(last?.height).toBeCloseTo(14, 9);
  });

  it('lay three of 4 to 3 in a row, as high as they fill it', () => {
    // Worked by hand: (58 rem − 2 gaps of 1) / (3 × 4/3) = 14 rem.
    const rows = rowsOf(pictures(Array.from({ length: 9 }, () => 4 / 3)));
    expect(rows.map(({ framed, height }) => [framed.length, Number(height.toFixed(9))])).toEqual([
      [3, 14],
      [3, 14],
      [3, 14],
    ]);
  });

  it('frame a strip and a panorama so that they don’t upset a row', () => {
    expect([0.1, 0.6, 1, 3, 8].map(frameOf)).toEqual([0.6, 0.6, 1, 3, 3]);
  });
});
