// What an hour that is left will cost the owner, with the materials that go with it.
import type { CarRecord } from '../../record/record.ts';
import type { CostLine } from '../cost-lines.ts';
import { type Charges, chargesOn } from './charges.ts';
import { lastDay } from './compared.ts';
import { usualRate, workedSoFar } from './hours.ts';

/** Prices at the rules of the last day written. */
export type Prices = {
  charges: Charges;
  /** Minor units an hour by who usually does the work; nothing for a kind of work without a rate. */
  rate: (work: string) => number | undefined;
  /** Materials expected with an hour, before a cap cuts them; tax on them included. */
  materials: (work: string) => number;
};

export function pricesOf(record: CarRecord, lines: readonly CostLine[]): Prices {
  const day = lastDay(record);
  const charges = chargesOn(record, lines, day);
  const worked = workedSoFar(lines);
  const rates = new Map<string, number | undefined>();
  const rate = (work: string) => {
    if (!rates.has(work)) rates.set(work, usualRate(record, worked, work, day));
    return rates.get(work);
  };
  const { hour, share } = charges.materials;
  const materials = (work: string) => {
    const known = rate(work);
    return known === undefined ? 0 : hour + share * known;
  };
  return { charges, rate, materials };
}

/** The same prices once it is known how much is expected to be charged for materials. */
export function capped(prices: Prices, expected: number): Prices & { share: number } {
  const share = materialsShare(prices.charges, expected);
  return {
    share,
    rate: prices.rate,
    charges: withMaterials(prices.charges, share),
    materials: (work) => share * prices.materials(work),
  };
}

/**
 * The share of the materials expected that a cap still lets pass: 1 without one. It is settled on what is expected,
 * not draw by draw, so that each line keeps a price of its own.
 */
function materialsShare({ materialsLeft }: Charges, expected: number): number {
  return expected > materialsLeft ? materialsLeft / expected : 1;
}

/** The same charges with that share of the materials. */
export function withMaterials(charges: Charges, share: number): Charges {
  const { hour, share: ofRate } = charges.materials;
  return { ...charges, materials: { hour: hour * share, share: ofRate * share } };
}
