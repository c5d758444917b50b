import { extractText, getDocumentProxy } from 'unpdf';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { printStatement } from '../../src/handover/print-statement.ts';
import type { CarRecord } from '../../src/record/record.ts';
import type { FigureRow, FigureTable } from '../../src/views/figure-table.ts';
import { type StatementPage, statementPage } from '../../src/views/statement.ts';
import { statementNumbered, statementOf } from '../../src/views/statement-asked.ts';
import { statementText } from '../../src/views/statement-text.ts';
import { aboutOf, openedUp } from './pdf.ts';

const MADE = '2026-05-29';

type Sheet = string[];
type Print = { page: StatementPage; pdf: Buffer; sheets: Sheet[] };

let whole: CarRecord;
/** Every issued statement and what isn't issued yet on Letter, then two of them on A4. */
let prints: Print[];

const find = (number: string | undefined) => (record: CarRecord) =>
  number === undefined ? statementOf(record, {}) : statementNumbered(record, number);

async function print(of: CarRecord, number: string | undefined, edition: 'archive' | 'reading' = 'archive') {
  const { printed, refused } = await printStatement(of, find(number), { edition, made: MADE });
  const { statement } = find(number)(of);
  if (!printed || !statement) throw new Error(refused);
  expect(printed.missing).toEqual([]);
  const document = await getDocumentProxy(new Uint8Array(printed.pdf));
  const { text } = await extractText(document, { mergePages: false });
  const sheets = text.map((sheet) => sheet.split('\n').map((line) => line.replace(/\s+/g, ' ').trim()));
  return { page: statementPage(statement, of), pdf: printed.pdf, sheets };
}

beforeAll(async () => {
  const { record } = await openFolder('content');
  if (!record) throw new Error('The demo can’t be opened.');
  whole = record;
  const numbers = [...record.statements.map(({ number }) => number), undefined];
  prints = [];
  for (const number of numbers) prints.push(await print(record, number));
  for (const number of ['003', undefined]) prints.push(await print({ ...record, units: 'mm' }, number));
});

const wordsOf = ({ sheets }: Print) => sheets.flat().join(' ');
const rowsOf = ({ rows, foot }: FigureTable): FigureRow[] => [...rows, ...(foot ? [foot] : [])];
const flat = (text: string) => text.replace(/\s+/g, ' ').trim();
const rowText = ({ head, notes = [], cells }: FigureRow) =>
  flat([head, ...notes, ...cells.map(({ text }) => text)].join(' '));

describe('statements in print', () => {
  it('say every row of their page, with all its figures, in its order', () => {
    expect(prints.length).toBeGreaterThan(10);
    for (const each of prints) {
      const { title, lead, period, owner = '', summary, tables, fine } = each.page;
      const words = wordsOf(each);
      let at = 0;
      const rows = [summary, ...tables].flatMap((table) => [table.caption, ...rowsOf(table).map(rowText)]);
      for (const text of [title, lead, owner, period, ...rows, flat(fine)]) {
        const found = words.indexOf(text, at);
        expect([title, text, found >= at]).toEqual([title, text, true]);
        at = found + text.length;
      }
    }
  });

  it('hold the amounts of `npm run statement`, none more and none less', () => {
    const amounts = (text: string) => text.match(/−?[\d,]+\.\d\d/g) ?? [];
    for (const each of prints) {
      const printed = amounts(wordsOf(each));
      expect(printed.length).toBeGreaterThan(10);
      // The command says notes below their row, print before its figures.
      expect(printed.toSorted()).toEqual(amounts(statementText(each.page)).toSorted());
    }
  });

  it('are on numbered sheets of Letter or A4', () => {
    // In points: US Letter 8.5 by 11 in; A4 210 by 297 mm (ISO 216).
    const letter = prints.length - 2;
    prints.forEach(({ page, pdf, sheets }, i) => {
      expect(openedUp(pdf)).toMatch(i < letter ? /\/MediaBox ?\[0 0 612 792\]/ : /595\.27\d* 841\.88/);
      sheets.forEach((sheet, at) => {
        const words = sheet.join(' ');
        expect(words).toContain(`${page.title}, Aldermere Fourteen`);
        expect(words).toContain(`${at + 1} of ${sheets.length}`);
      });
    });
  });

  it('tear nothing from what it belongs to', () => {
    let continued = 0;
    for (const { page, sheets } of prints) {
      const captions = page.tables.map(({ caption }) => caption);
      const heads = page.tables.map(({ head, columns }) =>
        flat([head, ...columns.map((one) => one.head)].join(' ')),
      );
      const begins = page.tables.flatMap(({ rows }) => rows.filter((row) => row.begins).map(rowText));
      const sums = page.tables.flatMap(({ foot }) => (foot ? [rowText(foot)] : []));
      sheets.forEach((sheet, at) => {
        const lines = sheet.filter((line) => !/Aldermere Fourteen( \d+ of \d+)?$|^\d+ of \d+$/.test(line));
        const where = `${page.title}, sheet ${at + 1}`;
        const [first = '', second = ''] = lines;
        const last = lines.at(-1) ?? '';
        if (at > 0) {
          expect([where, first, [...captions, ...heads].includes(first)]).toEqual([where, first, true]);
          if (heads.includes(first)) {
            continued += 1;
            expect([where, second, sums.includes(second)]).toEqual([where, second, false]);
          }
        }
        const torn = [...captions, ...heads, ...begins].includes(last);
        expect([where, last, torn]).toEqual([where, last, false]);
      });
    }
    expect(continued).toBeGreaterThan(10);
  });

  it.each([
    // ISO 19005-2, 6.6.4; ISO 14289-1, 5. The printer throws at the first thing that the standard doesn’t allow.
    ['archive', ['<pdfaid:part>2</pdfaid:part>', '<pdfaid:conformance>A<', '/StructTreeRoot']],
    ['reading', ['<pdfuaid:part>1<', '/DisplayDocTitle true', '/StructTreeRoot']],
  ] as const)(
    'follow their standard in the %s edition, and are the same when printed again',
    async (edition, claims) => {
      const { pdf } = await print(whole, '003', edition);
      for (const claim of claims) expect(openedUp(pdf)).toContain(claim);
      expect(await aboutOf(pdf)).toMatchObject({
        Title: 'Statement 003: Aldermere Fourteen',
        Author: 'Harrow Bend Coachworks, Harrow Bend',
        CreationDate: expect.stringContaining('20260529'),
      });
      expect((await print(whole, '003', edition)).pdf.equals(pdf)).toBe(true);
    },
  );

  it('are refused under a number that isn’t issued, with the nearest or with all', async () => {
    const none = (number: string, of = whole) =>
      printStatement(of, find(number), { edition: 'archive', made: MADE });
    expect(await none('3')).toEqual({ refused: 'There is no statement 3. Did you mean `003`?' });
    expect(await none('2025-03')).toEqual({
      refused: 'There is no statement 2025-03. Issued are 001, 002, 003, 004, 005, 006, 007, 008.',
    });
    expect(await none('001', { ...whole, statements: [] })).toEqual({
      refused: 'There is no statement 001. None is issued yet.',
    });
  });
});
