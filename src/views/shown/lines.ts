// What a page of lines shows, and what it is compared by.
import type { CarRecord } from '../../record/record.ts';
import type { Grouping, Row } from '../../rollup/cost-lines.ts';
import { fromLines } from '../line-text.ts';
import { type LinesPage, linesOfYear, linesPage } from '../lines.ts';
import { page } from '../links.ts';
import type { Compared } from './compared.ts';

/** `all` is the page of all years, where this is that of one. */
export type LinesShown = LinesPage & { path: string; from: string; code: string; all?: string };

/** The page of a row, or of one year of it. */
export function linesShown(by: Grouping, row: Row, record: CarRecord, year?: string): LinesShown {
  const all = page.lines(by, row.key);
  const lines =
    year === undefined
      ? { ...linesPage(by, row, record), path: all }
      : { ...linesOfYear(by, row, year, record), path: page.linesOfYear(by, row.key, year), all };
  const count = lines.groups.reduce((sum, group) => sum + group.count, 0);
  return { ...lines, from: fromLines(count), code: record.currency.code };
}

/** The same with its rows apart: a line stands in a table of every grouping. */
export function linesCompared({ groups, ...shown }: LinesShown): Compared {
  return {
    // As many rows as a group counts, or none.
    shown: { ...shown, groups: groups.map(({ rows, ...group }) => group) },
    shared: groups.flatMap(({ rows }) => rows),
  };
}
