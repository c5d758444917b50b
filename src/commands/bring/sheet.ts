// Reads a sheet: CSV as RFC 4180 has it, with the sign between cells that its heading uses.
import { readFile, stat } from 'node:fs/promises';
import { CsvError, parse } from 'csv-parse/sync';
import type { Row } from '../../record/writing/sheet/rows.ts';

/** The heading and the rows; a sentence when the sheet can’t be read. */
export type Sheet = { headings: string[]; rows: Row[] };

const MOST_BYTES = 20_000_000;
/** Years of a shop’s lines; each is read by the record’s own rules, and all of them once more together. */
const MOST_ROWS = 20_000;

export async function readSheet(path: string): Promise<Sheet | string> {
  const size = (await stat(path).catch(() => undefined))?.size;
  if (size === undefined) return `There is no file \`${path}\`.`;
  if (size > MOST_BYTES)
    return `\`${path}\` is ${(size / 1e6).toFixed(0)} MB: too large for a sheet of lines.`;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await readFile(path));
    return sheetOf(text, path);
  } catch (error) {
    if (error instanceof TypeError) return `\`${path}\` isn’t UTF-8 text. Save the sheet as “CSV UTF-8”.`;
    return `\`${path}\` can’t be opened (${(error as NodeJS.ErrnoException).code ?? 'unknown'}).`;
  }
}

/** The sheet in a text. */
export function sheetOf(text: string, path: string): Sheet | string {
  const nul = text.indexOf('\0');
  if (nul >= 0) {
    const line = text.slice(0, nul).split(/\r\n?|\n/).length;
    return `\`${path}\` holds a NUL byte in line ${line}, which no sheet has. Save it again as “CSV UTF-8”.`;
  }
  try {
    const records = parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      // A sheet that was put together from two may end its lines in two ways.
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
    });
    const [headings, ...rows] = records;
    if (!headings) return `\`${path}\` is empty.`;
    if (rows.length > MOST_ROWS) {
      return `\`${path}\` has ${rows.length.toLocaleString('en-US')} rows, and ${MOST_ROWS.toLocaleString('en-US')} are brought at a time. Divide the sheet, by years for instance.`;
    }
    return {
      headings: headings.map((heading) => heading.trim()),
      rows: rows.map((cells, i) => ({ row: i + 2, cells })),
    };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error.lines === 'number' ? ` in line ${error.lines}` : '';
    return `\`${path}\` can’t be read as CSV${line}: a quote stands in the middle of a cell, or is opened and never closed. Quotes within a quoted cell are written twice.`;
  }
}

/** Comma, semicolon or tab: what the heading has most of, outside quotes. */
function delimiterOf(text: string): string {
  const [heading = ''] = text.replace(/"[^"]*"/g, '').split(/\r?\n/);
  const count = (sign: string) => heading.split(sign).length;
  return [',', ';', '\t'].reduce((most, sign) => (count(sign) > count(most) ? sign : most));
}
