// The shop's consumables, charged with the labor that uses them.
import type { Day } from '../figures/days.ts';
import { type Minor, overMinutes, shareOf } from '../figures/money.ts';
import type { Decimal } from '../figures/rounding.ts';
import { type Dated, inForce } from './rules.ts';

/** An amount for each charged hour, or a share of the labor, up to a cap over all lines under this rule. */
export type MaterialsRule = Dated & {
  'per-hour'?: Minor | undefined;
  'of-labour'?: Decimal | undefined;
  cap?: Minor | undefined;
};

/** The materials of each line of labor. Lines stand in order of day, since a cap is used up in that order. */
export function materialsOf(
  labour: readonly { day: Day; charged: Minor; chargedMinutes: number }[],
  rules: readonly MaterialsRule[],
): Minor[] {
  const used = new Map<MaterialsRule, Minor>();
  return labour.map((line) => {
    const rule = inForce(rules, line.day);
    if (!rule) return 0;
    const full =
      overMinutes(rule['per-hour'] ?? 0, line.chargedMinutes) +
      shareOf(line.charged, rule['of-labour'] ?? '0');
    const before = used.get(rule) ?? 0;
    const amount = rule.cap === undefined ? full : Math.max(0, Math.min(full, rule.cap - before));
    used.set(rule, before + amount);
    return amount;
  });
}
