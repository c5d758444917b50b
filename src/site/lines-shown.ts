// What a page of lines shows, with its rows as they are printed.
import type { CarRecord } from '../record/record.ts';
import type { Grouping, Row } from '../rollup/cost-lines.ts';
import type { Sees } from '../views/audience.ts';
import { fromLines } from '../views/line-text.ts';
import { type LineGroup, type LinesPage, linesPage } from '../views/lines.ts';
import { page } from '../views/links.ts';
import { type LineColumns, lineRows } from './line-rows.ts';

/** `rows` of a group are HTML. */
export type LinesShown = Omit<LinesPage, 'groups'> & {
  path: string;
  from: string;
  code: string;
  groups: (Omit<LineGroup, 'rows'> & { rows: string })[];
};

export function linesShown(by: Grouping, row: Row, record: CarRecord, { shop }: Sees): LinesShown {
  const path = page.lines(by, row.key);
  const { groups, ...lines } = linesPage(by, row, record);
  const columns: LineColumns = { parts: lines.parts, timed: lines.timed, shop };
  return {
    ...lines,
    path,
    from: fromLines(row.lines.length),
    code: record.currency.code,
    groups: groups.map(({ rows, ...group }) => ({ ...group, rows: lineRows(rows, columns, path) })),
  };
}
