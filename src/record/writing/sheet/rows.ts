// Turns the rows of a sheet into lines of entries. What can’t be read is refused row by row, with a sentence.
import type { Day } from '../../../figures/days.ts';
import { type CarRecord, lineName } from '../../record.ts';
import { shortSentence } from '../../short.ts';
import type { Keys } from '../edit.ts';
import { lineProblems, refersTo } from '../line-problems.ts';
import type { Columns } from './columns.ts';
import { readSheetDay } from './days.ts';

/** A row as a sheet shows it; the heading is row 1. */
export type Row = { row: number; cells: readonly string[] };
export type SheetLine = { row: number; day: Day; list: 'hours' | 'bought' | 'outside'; line: Keys };
export type Refused = { row: number; why: string };

/** What the sheet doesn’t say in its rows. */
export type SaidOnce = { dates?: string | undefined; by?: string | undefined; today: Day };

/** The lines of all rows that can be read, and the others. Rows without any words are passed over. */
export function linesFromRows(
  rows: readonly Row[],
  columns: Columns,
  record: CarRecord,
  once: SaidOnce,
): { lines: SheetLine[]; refused: Refused[] } {
  const lines: SheetLine[] = [];
  const refused: Refused[] = [];
  for (const row of rows) {
    if (row.cells.every((cell) => cell.trim() === '')) continue;
    const read = lineFromRow(row, columns, record, once);
    if ('why' in read) refused.push(read);
    else lines.push(read);
  }
  return { lines, refused };
}

function lineFromRow(
  { row, cells }: Row,
  { kind, keys }: Columns,
  record: CarRecord,
  once: SaidOnce,
): SheetLine | Refused {
  const refuse = (why: string): Refused => ({ row, why: shortSentence(why) });
  if (cells.length !== keys.length) {
    return refuse(
      `It has ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'}, and the heading ${keys.length}. A cell that holds the sign between cells needs quotes round it.`,
    );
  }
  const said = new Map<string, string>();
  for (const [i, key] of keys.entries()) {
    const cell = (cells[i] ?? '').trim().replace(/\s+/g, ' ');
    if (key !== undefined && cell !== '') said.set(key, cell);
  }
  const day = readSheetDay(said.get('date') ?? '', once.dates);
  if (!said.has('date')) return refuse('It has no date.');
  if (!day.ok) return refuse(`Unexpected \`${said.get('date')}\`, expected ${day.expected}.`);
  if (day.value < record.car.opened)
    return refuse(`${day.value} is before the record begins, on ${record.car.opened}.`);
  if (day.value > once.today) return refuse(`${day.value} is still to come.`);
  const as = said.get('as') ?? 'bought';
  if (as !== 'bought' && as !== 'outside')
    return refuse(`Unexpected \`${as}\`, expected \`bought\` or \`outside\`.`);
  const list = kind === 'hours' ? 'hours' : as;
  const fields = [...said].filter(([key]) => key !== 'date' && key !== 'as');
  const named = Object.fromEntries(
    fields.map(([key, cell]) => [key, idOf(cell, refersTo(list, key), record)]),
  );
  const line = { ...named, ...(list === 'hours' && once.by && !named.by ? { by: once.by } : {}) };
  const [wrong] = lineProblems(list, line, record);
  return wrong === undefined ? { row, day: day.value, list, line: shortLine(line) } : refuse(wrong);
}

/** A sheet may name things by their names; the record goes by ids. */
function idOf(cell: string, refers: ReturnType<typeof refersTo>, record: CarRecord): string {
  const among = { part: record.parts, vendor: record.shop.vendors ?? [], person: record.shop.people };
  if (refers !== 'part' && refers !== 'vendor' && refers !== 'person') return cell;
  const found = among[refers].find(
    ({ id, name }) => id === cell || name.toLowerCase() === cell.toLowerCase(),
  );
  return found?.id ?? cell;
}

/** A planned line is named without its part where the part is said beside it. */
function shortLine(line: Readonly<Record<string, string>>): Keys {
  const { part, line: planned } = line;
  if (!part || !planned || lineName(planned, part) !== planned || !planned.startsWith(`${part}/`))
    return line;
  return { ...line, line: planned.slice(part.length + 1) };
}
