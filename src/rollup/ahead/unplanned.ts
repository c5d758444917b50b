// Work that nobody had planned: it is what estimates usually miss.
import type { CostLine, Rollup, Total } from '../cost-lines.ts';
import { totalOf } from '../tables.ts';

/**
 * Lines that name neither a planned line nor a choice. `share` is theirs of all that was charged, `perPlanned` what
 * came unplanned for each unit of money that was charged on planned work. Deposits come back and tax on the
 * statement's sum belongs to no line, so that neither counts.
 */
export type Unplanned = {
  total: Total;
  share: number;
  perPlanned: number;
  parts: { part: string | undefined; total: Total }[];
};

/** Parts in order of what was charged, the largest first. */
export function unplannedOf({ lines }: Rollup): Unplanned {
  const work = lines.filter(({ kind, entry }) => kind !== 'deposit' && entry !== undefined);
  const unplanned = work.filter(({ line, choice }) => line === undefined && choice === undefined);
  const total = totalOf(unplanned);
  const all = totalOf(work).charged;
  const parts = [...Map.groupBy(unplanned, ({ part }: CostLine) => part)].map(([part, own]) => ({
    part,
    total: totalOf(own),
  }));
  return {
    total,
    share: all > 0 ? total.charged / all : 0,
    perPlanned: all > total.charged ? total.charged / (all - total.charged) : 0,
    parts: parts.sort(
      (a, b) => b.total.charged - a.total.charged || ((a.part ?? '') < (b.part ?? '') ? -1 : 1),
    ),
  };
}
