// The one rounding rule of the project: an exact decimal becomes a whole number of minor units, once.
import Big from 'big.js';

export type Rounding = 'half-up' | 'half-even' | 'down';

/** An exact decimal written out, such as `0.0725`: plain text, so that it passes between rooms unchanged. */
export type Decimal = string;

/**
 * Rounds an exact decimal to a whole number. `half-up` and `down` work on the size, so that a refund rounds
 * as the sale did; `half-even` is roundTiesToEven of IEEE 754-2019.
 */
export function roundWhole(exact: Big, rule: Rounding = 'half-up'): number {
  return exact.round(0, RULES[rule]).toNumber() + 0; // -0 becomes 0
}

const RULES = { down: 0, 'half-up': 1, 'half-even': 2 } as const;

// Division is only ever needed for tax contained in a price; forty places keep every tie exact.
export const Exact = Big();
Exact.DP = 40;
