import { describe, expect, it } from 'vitest';
import { moistureInAir } from '../../src/measure/air.ts';
import { knownSpecies, movementOf, type Piece } from '../../src/measure/timber.ts';
import { answered } from './answered.ts';

const piece = (more: Partial<Piece> = {}): Piece => ({
  species: 'white ash',
  width: { value: 100 },
  grain: 'tangential',
  moistureFrom: { value: 0.12 },
  moistureTo: { value: 0.08 },
  ...more,
});

describe('movement', () => {
  it('names its coefficient and where that is from', () => {
    const { rule, species } = answered(movementOf(piece({ species: ' White Ash ' })));
    expect(species).toBe('white ash');
    expect(rule).toMatchObject({ by: 'coefficient', value: 0.00274 });
    expect(rule.source).toContain('Wood Handbook');
  });

  it.each([
    [0.06, 0.14, 'coefficient'],
    [0.14, 0.06, 'coefficient'],
    [0.05, 0.14, 'shrinkage'],
    [0.06, 0.15, 'shrinkage'],
  ])('from %f to %f goes by the %s', (from, to, by) => {
    const movement = answered(
      movementOf(piece({ moistureFrom: { value: from }, moistureTo: { value: to } })),
    );
    expect(movement.rule.by).toBe(by);
    expect(movement.warning === undefined).toBe(by === 'coefficient');
  });

  it('is refused for wood wetter than 30%', () => {
    expect(movementOf(piece({ moistureFrom: { value: 0.31 } }))).toMatchObject({
      why: expect.stringContaining('from 0% to 30% moisture'),
    });
    expect(movementOf(piece({ moistureFrom: { value: 0.3 } }))).toMatchObject({ ok: true });
  });

  it('is not made up for a species that isn’t in the table', () => {
    expect(movementOf(piece({ species: 'European ash' }))).toEqual({
      ok: false,
      why: 'There are no movement figures for “European ash” here. Known of that kind: black ash, green ash, Oregon ash, pumpkin ash, white ash.',
    });
    expect(movementOf(piece({ species: 'teak' }))).toEqual({
      ok: false,
      why: 'There are no movement figures for “teak” here.',
    });
  });

  it('of a species without a row of shrinkage works it back from the coefficient', () => {
    // Sugar maple: 3000 / (1 / 0.00353 + 20) = 9.8916%, all of it from 30% to 0%.
    const dry = answered(
      movementOf(piece({ species: 'sugar maple', moistureFrom: { value: 0.3 }, moistureTo: { value: 0 } })),
    );
    expect(dry.change.value).toBeCloseTo(-9.8916, 4);
  });

  it('carries the ± of width and moisture', () => {
    // A point of moisture either end: 100 x 0.00274 each, twice over sqrt 3, with no ± on the width.
    const { change, width } = answered(
      movementOf(
        piece({
          width: { value: 100, plusMinus: 0 },
          moistureFrom: { value: 0.12, plusMinus: 0.01 },
          moistureTo: { value: 0.08, plusMinus: 0.01 },
        }),
      ),
    );
    expect(change.plusMinus).toBeCloseTo(2 * 0.274 * Math.sqrt(2 / 3), 9);
    expect(width.plusMinus).toBeCloseTo(change.plusMinus ?? 0, 9);
  });

  it.each(knownSpecies)('%s swells back by as much as it shrank, and less across the rays', (species) => {
    const shrunk = answered(movementOf(piece({ species }))).change.value;
    const swollen = answered(
      movementOf(piece({ species, moistureFrom: { value: 0.08 }, moistureTo: { value: 0.12 } })),
    ).change.value;
    expect(swollen).toBeCloseTo(-shrunk, 12);
    const radial = answered(movementOf(piece({ species, grain: 'radial' }))).change.value;
    expect(Math.abs(radial)).toBeLessThan(Math.abs(shrunk));
  });
});

describe('moisture in the air', () => {
  it('rises with the humidity', () => {
    const steps = Array.from({ length: 21 }, (_, i) => answered(moistureInAir(15, i / 20)));
    expect(steps).toEqual(steps.toSorted((one, other) => one - other));
    expect(steps[0]).toBe(0);
  });

  it('has no answer outside what its figures hold for', () => {
    expect(moistureInAir(20, 1.1)).toMatchObject({ ok: false });
    expect(moistureInAir(140, 0.5)).toMatchObject({ ok: false });
  });
});
