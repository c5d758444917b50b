// The shop's dated rules as the sums take them. Their words were checked when the file was read.
import type { HandlingRule, TaxRule } from '../estimate/rules.ts';
import type { Place } from '../record/place.ts';
import type { Shop } from '../record/record.ts';

/** A tax rule with its place, since tax on the statement's sum has no other. */
export type PlacedRule = TaxRule & { place: Place };

export function taxRules(shop: Shop): PlacedRule[] {
  return (shop.tax ?? []) as PlacedRule[];
}

export function handlingRules(shop: Shop): HandlingRule[] {
  return (shop.handling ?? []) as HandlingRule[];
}
