// The parts of a statement as tables of figures.
import type { CarRecord } from '../../record/record.ts';
import type { Statement } from '../../rollup/issued.ts';
import type { FigureRow, FigureTable } from '../figure-table.ts';
import { billTable } from './bill-table.ts';
import { labourTable } from './labour-table.ts';
import { changedTable, depositTable, paidTable, taxTable } from './other-tables.ts';

/** The tables in which anything stands, in the order in which a statement has them. */
export function statementTables(statement: Statement, record: CarRecord): FigureTable[] {
  return [
    labourTable(statement, record),
    billTable(statement, record),
    depositTable(statement, record),
    changedTable(statement, record),
    taxTable(statement, record),
    paidTable(statement, record),
  ]
    .filter(({ rows }) => rows.length > 0)
    .map(withoutEmpty);
}

/** Without columns in which nothing stands. */
function withoutEmpty({ columns, rows, foot, ...table }: FigureTable): FigureTable {
  const all = foot ? [...rows, foot] : rows;
  const kept = (_: unknown, i: number) => all.some(({ cells }) => cells[i]?.text !== '');
  const row = (each: FigureRow): FigureRow => ({ ...each, cells: each.cells.filter(kept) });
  return {
    ...table,
    columns: columns.filter(kept),
    rows: rows.map(row),
    ...(foot && { foot: row(foot) }),
  };
}
