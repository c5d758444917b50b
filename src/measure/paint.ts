// How far a paint goes: the area that it covers at a film thickness.

/**
 * `solids` is the share of the volume that stays on the metal, `lost` the share of the paint that misses it or stays in
 * the pot.
 */
export type Coat = { solids: number; lost?: number };

/**
 * Square meters from a liter, for a dry film in micrometers: a liter spread one micrometer thick covers 1000 square
 * meters.
 */
export function squareMetersFromLiter({ solids, lost = 0 }: Coat, micrometers: number): number {
  return (1000 * solids * (1 - lost)) / micrometers;
}

/**
 * Square feet from a US gallon, for a dry film in mils: a gallon of 231 cubic inches covers 9625/6 square feet a mil
 * thick.
 */
export function squareFeetFromGallon({ solids, lost = 0 }: Coat, mils: number): number {
  return ((9625 / 6) * solids * (1 - lost)) / mils;
}
