// What a page of lines shows, and what it is compared by.
import type { CarRecord } from '../../record/record.ts';
import type { Grouping, Row } from '../../rollup/cost-lines.ts';
import { fromLines } from '../line-text.ts';
import { type LinesPage, linesPage } from '../lines.ts';
import { page } from '../links.ts';
import type { Compared } from './compared.ts';

export type LinesShown = LinesPage & { path: string; from: string; code: string };

export function linesShown(by: Grouping, row: Row, record: CarRecord): LinesShown {
  return {
    ...linesPage(by, row, record),
    path: page.lines(by, row.key),
    from: fromLines(row.lines.length),
    code: record.currency.code,
  };
}

/** The same with its rows apart, as many as each group counts: a line stands in a table of every grouping. */
export function linesCompared({ groups, ...shown }: LinesShown): Compared {
  return {
    shown: { ...shown, groups: groups.map(({ rows, ...group }) => ({ ...group, count: rows.length })) },
    lines: groups.flatMap(({ rows }) => rows),
  };
}
