// What the owner will be charged for an hour, a purchase, freight or outside work on a day: rules, not bills.
import { type HandlingRule, inForce, taxesInForce } from '../../estimate/rules.ts';
import type { Day } from '../../figures/days.ts';
import type { Decimal } from '../../figures/rounding.ts';
import { once } from '../../record/once.ts';
import type { CarRecord } from '../../record/record.ts';
import type { CostLine } from '../cost-lines.ts';
import { handlingRules, taxRules } from '../shop-rules.ts';

/** What a price becomes on its way to the owner: a factor for each kind. */
export type Bill = 'bought' | 'outside' | 'freight';

export type Charges = {
  /**
   * Multiplies a price: (1 + tax paid to the vendor) (1 + handling) (1 + tax charged). `paid` takes the place of the
   * rules for tax paid. Freight is handled as what it brings.
   */
  factor: (kind: Bill, paid?: Decimal) => number;
  /** Multiplies labor: 1 + tax charged on it. */
  labour: number;
  /**
   * Materials that go with an hour, tax charged on them included: minor units for the hour, and a share of its rate.
   * Both are 0 once the cap of the rule is used up.
   */
  materials: { hour: number; share: number };
  /** What the rule may still charge, tax charged on it included; Infinity without a cap. */
  materialsLeft: number;
};

/** The rules of a day. `lines` are what was charged so far: they say how much of a cap on materials is used. */
export function chargesOn(record: CarRecord, lines: readonly CostLine[], day: Day): Charges {
  const tax = (side: 'paid' | 'charged', on: Bill | 'labour' | 'materials') =>
    taxesInForce(taxRules(record.shop), side, day)
      .filter((rule) => rule.on.includes(on) && !rule.included)
      .reduce((sum, { rate }) => sum + Number(rate), 0);
  const handling = (kind: 'bought' | 'outside') => Number(handlingOn(handlingRules(record.shop), kind, day));
  const rule = inForce(record.shop.materials ?? [], day);
  const used = materialsIn(lines)
    .filter((line) => rule && line.day >= rule.from && line.day <= day)
    .reduce((sum, { charged }) => sum + charged, 0);
  const left = rule?.cap === undefined ? Number.POSITIVE_INFINITY : Math.max(0, rule.cap - used);
  const withTax = left > 0 ? 1 + tax('charged', 'materials') : 0;
  return {
    factor: (kind, paid) =>
      (1 + (paid === undefined ? tax('paid', kind) : Number(paid))) *
      (1 + handling(kind === 'outside' ? 'outside' : 'bought')) *
      (1 + tax('charged', kind)),
    labour: 1 + tax('charged', 'labour'),
    materials: {
      hour: (rule?.['per-hour'] ?? 0) * withTax,
      share: Number(rule?.['of-labour'] ?? 0) * withTax,
    },
    materialsLeft: left > 0 ? left * withTax : 0,
  };
}

/** Picked out once: every choice asks. */
const materialsIn = once((lines: readonly CostLine[]) => lines.filter(({ kind }) => kind === 'materials'));

function handlingOn(rules: readonly HandlingRule[], kind: 'bought' | 'outside', day: Day): Decimal {
  return (
    inForce(
      rules.filter((rule) => rule.kind === kind),
      day,
    )?.share ?? '0'
  );
}
