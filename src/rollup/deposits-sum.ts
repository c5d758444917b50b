// What vendors still hold of deposits, as one sum.
import type { Minor } from '../figures/money.ts';
import type { Rollup } from './cost-lines.ts';

/** In whole minor units; zero when everything came back. */
export function depositsSum({ depositsOut }: Pick<Rollup, 'depositsOut'>): Minor {
  return depositsOut.reduce((sum, { amount }) => sum + amount, 0);
}
