import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSheet, sheetOf } from '../../../src/commands/bring/sheet.ts';

/** Cells as RFC 4180, section 2, writes them: all quoted, quotes doubled, lines ended by CRLF. */
const quoted = (rows: readonly (readonly string[])[]) =>
  rows.map((cells) => cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\r\n');

describe('a sheet', () => {
  it('holds what RFC 4180 says, row by row', () => {
    // RFC 4180, section 2: quoted cells with commas, line ends and quotes; a last line without its end.
    const text = 'date,what,price\r\n2025-03-03,"Wire, 1/8 in",4.90\r\n2025-03-04,"two\r\nlines ""soft""",5';
    expect(sheetOf(text, 's.csv')).toEqual({
      headings: ['date', 'what', 'price'],
      rows: [
        { row: 2, cells: ['2025-03-03', 'Wire, 1/8 in', '4.90'] },
        { row: 3, cells: ['2025-03-04', 'two\r\nlines "soft"', '5'] },
      ],
    });
  });

  it('may be divided by semicolons or tabs, and begin with a mark', () => {
    expect(sheetOf('\uFEFFa;"b,c";d\n1;2,5;3\n', 's.csv')).toEqual({
      headings: ['a', 'b,c', 'd'],
      rows: [{ row: 2, cells: ['1', '2,5', '3'] }],
    });
    expect(sheetOf('a\tb\n1\t2\n', 's.csv')).toMatchObject({ headings: ['a', 'b'] });
  });

  it('gives back any cells', () => {
    const cells = fc.array(fc.string(), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(cells, { maxLength: 6 }), (rows) => {
        const read = sheetOf(quoted([['a', 'b'], ...rows]), 's.csv');
        expect(typeof read === 'string' ? read : read.rows.map((row) => row.cells)).toEqual(rows);
      }),
    );
  });

  it.each([
    [
      'date,what\n2025-03-03,"Wire\n',
      /^`s\.csv` can’t be read as CSV in line \d: a quote stands in the middle/,
    ],
    [
      'date,what\n2025-03-03,Wi"re\n',
      /^`s\.csv` can’t be read as CSV in line 2: a quote stands in the middle/,
    ],
    ['', /^`s\.csv` is empty\.$/],
  ])('that is %j says so', (text, says) => {
    expect(sheetOf(text, 's.csv')).toMatch(says);
  });

  it('that isn’t there says so', async () => {
    expect(await readSheet('tests/nothing.csv')).toBe('There is no file `tests/nothing.csv`.');
    expect(await readSheet('shared/docs/front-page.webp')).toContain(
      'isn’t UTF-8 text. Save the sheet as “CSV UTF-8”.',
    );
  });
});
