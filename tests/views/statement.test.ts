// A statement in words: expected figures are worked by hand beside each check.
import { describe, expect, it } from 'vitest';
import { addDays } from '../../src/figures/days.ts';
import type { CarRecord } from '../../src/record/record.ts';
import { nextFrom, statementFor } from '../../src/rollup/statement.ts';
import { cssText } from '../../src/views/css-text.ts';
import type { FigureTable } from '../../src/views/figure-table.ts';
import { markdownTable } from '../../src/views/markdown-table.ts';
import { taxLetters } from '../../src/views/statement/words.ts';
import { dueSentence, type StatementPage } from '../../src/views/statement.ts';
import { statementFile } from '../../src/views/statement-file.ts';
import { statementAt, statementKeys, statementsPage } from '../../src/views/statements.ts';
import { recordOf, shopText } from '../rollup/records.ts';
import { cents, minutes, sum } from './records.ts';

const TEXTS = {
  'shop.md': shopText(`handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
materials:
  - { from: 2025-01-01, per-hour: 3.50 }
step: 15m
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: line }
  - { name: County levy, rate: 0.25%, side: charged, on: [bought], from: 2025-01-01, by: statement, rounding: half-even }
`),
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, work: metal, time: 3h 20m, note: paint off the top }
  - { work: shop, time: 1, no-charge: our own sweeping }
bought:
  - { what: 1/4 in bolts, from: millrace, part: cowl, price: 1.10, count: 7, freight: 2.00, bill: 310 }
  - { what: Nuts, from: millrace, price: 3.00, bill: 310 }
  - { what: Water pump in exchange, from: keld, part: frame, price: 168, deposit: 60.00, bill: 12 }
outside:
  - { what: Plate the rims, from: keld, part: cowl, price: 70, paid-by: owner }
---
`,
  'log/2025-04-07.md': `---
returned:
  - { what: Water pump in exchange, from: keld, deposit: 60.00, bill: 12 }
paid:
  - { amount: 400, how: check }
---
`,
};

function issued(texts: Record<string, string>, to: string, number: string): Record<string, string> {
  const record = recordOf(texts);
  const period = { from: nextFrom(record) ?? to, to };
  const { file, text } = statementFile(
    statementFor(record, period),
    { number, issued: addDays(to, 2) },
    record,
  );
  return { ...texts, [file]: text };
}
const march = issued(TEXTS, '2025-03-31', '001');
const edited = {
  ...march,
  'log/2025-03-03.md': TEXTS['log/2025-03-03.md']
    .replace('price: 3.00', 'price: 5.00')
    .replace('off the top', 'off the sides'),
};
const at = (record: CarRecord, key: string) => statementAt(record, key) as StatementPage;
const table = ({ tables }: StatementPage, caption: string) =>
  tables.find((one) => one.caption.startsWith(caption)) as FigureTable;
const cellsOf = ({ rows }: FigureTable) =>
  rows.map(({ head, cells }) => [head, ...cells.map(({ text }) => text)]);

describe('the owner’s account', () => {
  it('lists what is issued and what isn’t yet, each beginning with the balance of the one before', () => {
    const { lead, table: list } = statementsPage(recordOf(march));
    expect(list?.rows.map(({ head, to, notes }) => [head, to, notes])).toEqual([
      ['March 3, 2025 to March 31, 2025', 'statement/001.html', ['statement 001, issued April 2, 2025']],
      ['April 1, 2025 to April 7, 2025', 'statement/open.html', ['not issued yet']],
    ]);
    const [first = [], second = []] =
      list?.rows.map(({ cells }) => cells.map(({ text }) => cents(text))) ?? [];
    expect(second[0]).toBe(first[3]);
    for (const [forward = 0, charged = 0, paid = 0, balance = 0] of [first, second]) {
      expect(forward + charged - paid).toBe(balance);
    }
    // 582.77 - 60.00 - 400.00
    expect(lead).toBe('$122.77 is due. That counts what isn’t on a statement yet.');
  });

  it('has an address for each, and none for others', () => {
    expect(statementKeys(recordOf(march))).toEqual(['001', 'open']);
    expect(statementAt(recordOf(march), '002')).toBeUndefined();
  });

  it('of an empty log is empty', () => {
    expect(statementsPage(recordOf({}))).toEqual({
      lead: 'Nothing has been charged or paid yet.',
      table: undefined,
    });
  });

  it.each([
    [120450, '$1,204.50 is due.'],
    [0, 'Nothing is due.'],
    [-279559, 'Nothing is due: $2,795.59 has been paid ahead.'],
  ])('of %i says what is due', (balance, said) => {
    expect(dueSentence(balance, recordOf({}))).toBe(said);
  });
});

describe('a statement', () => {
  const told = at(recordOf(march), '001');

  it('comes to its balance, row by row', () => {
    const { rows, foot } = told.summary;
    expect(rows.map(({ head, cells }) => [head, cells[0]?.text])).toEqual([
      ['Brought forward', '0.00'],
      // 3 h 20 m are charged as 3 h 30 m: 3.5 x 85.00
      ['Labor', '297.50'],
      // 3.5 x 3.50
      ['Shop materials', '12.25'],
      // (7 x 1.10 + 2.00) x 1.1 = 10.67; 3.00 x 1.1; 168.00 x 1.1
      ['Bills, with handling', '198.77'],
      ['Deposits, out and back', '60.00'],
      // 7% of 8.47, of 3.30 and of 184.80: 0.59 + 0.23 + 12.94; 0.25% of 196.57: 0.49
      ['Tax', '14.25'],
    ]);
    expect([foot?.head, foot?.cells[0]?.text]).toEqual(['Balance due', '582.77']);
    expect(sum(rows.map(({ cells }) => cents(cells[0]?.text ?? '')))).toBe(58277);
  });

  it('sums each table to its foot, days and bills as well as lines', () => {
    for (const caption of ['Labor, by day', 'Bills, with handling', 'Deposits', 'Payments']) {
      const found = table(told, caption) ?? table(at(recordOf(march), 'open'), caption);
      const top = found.rows.filter(({ within }) => !within);
      const lines = found.rows.filter((row, i) => row.within || !found.rows[i + 1]?.within);
      found.columns.forEach(({ head }, i) => {
        const read = head === 'Time' ? minutes : cents;
        const column = (rows: typeof top) => sum(rows.map(({ cells }) => read(cells[i]?.text ?? '')));
        if (head === 'Rate') return;
        expect([caption, head, column(top)]).toEqual([caption, head, read(found.foot?.cells[i]?.text ?? '')]);
        expect([caption, head, column(lines)]).toEqual([caption, head, column(top)]);
      });
    }
  });

  it('says by day what was done, what is charged of it, and why something isn’t', () => {
    const { rows } = table(told, 'Labor');
    expect(rows.map(({ head, notes, begins, to }) => [head, notes, begins ?? false, to])).toEqual([
      ['March 3', undefined, true, 'day/2025-03-03.html'],
      ['paint off the top', ['Cowl, metal, Tobias Reeve', 'worked 3 h 20 m'], false, undefined],
      ['shop', ['Tobias Reeve', 'worked 1 h 00 m', 'no charge: our own sweeping'], false, undefined],
    ]);
  });

  it('keeps the lines of a bill under it, and lists what the owner paid', () => {
    const { rows } = table(told, 'Bills');
    expect(rows.map(({ head, notes }) => [head, notes])).toEqual([
      ['March 3: Millrace Metals, bill 310', undefined],
      ['1/4 in bolts', ['Cowl, tax A, B']],
      ['Nuts', ['tax A, B']],
      ['March 3: Water pump in exchange', ['Keld Fasteners, bill 12; Frame, tax A, B']],
      [
        'March 3: Plate the rims ($70.00 paid by the owner)',
        ['Keld Fasteners; Cowl; the owner’s own bill, charged nothing'],
      ],
    ]);
  });

  it('names each tax with its rate, what it is on, and how it was rounded; and says who decides', () => {
    expect(table(told, 'Tax').rows).toEqual([
      {
        head: 'A  Sales tax 7%',
        notes: ['rounded half up, on each line'],
        cells: [{ text: '196.57' }, { text: '13.76' }],
      },
      {
        head: 'B  County levy 0.25%',
        notes: ['rounded half to even, once on the sum of this statement'],
        cells: [{ text: '196.57' }, { text: '0.49' }],
      },
    ]);
    expect(told.fine).toBe(
      'Amounts in USD. Tax is by the rules that the shop has written, as they stand above. Which tax is owed, and how it is rounded, is for local tax law to decide.',
    );
    expect(at(recordOf(march), 'open').fine).toBe(
      'Amounts in USD. No tax is charged here. Which tax is owed is for local tax law to decide.',
    );
  });

  it('shows a deposit that came back as an amount below zero, and no bill for it', () => {
    const april = at(recordOf(march), 'open');
    expect(cellsOf(table(april, 'Deposits'))).toEqual([
      ['April 7: Deposit back: Water pump in exchange', '−60.00'],
    ]);
    expect(april.tables.map(({ caption }) => caption)).toEqual([
      'Deposits, out and back',
      'Payments received',
    ]);
  });
});

describe('a statement after an edit', () => {
  it('names the entry, what the line was and is, and the difference; words alone come to nothing', () => {
    const april = at(recordOf(edited), 'open');
    // 5.50 - 3.30; 7%: 0.385 - 0.231 is 0.39 - 0.23
    expect(
      table(april, 'Corrections').rows.map(({ head, notes, cells }) => [
        head,
        notes,
        cells.map(({ text }) => text),
      ]),
    ).toEqual([
      ['2025-03-03: paint off the sides', ['was “paint off the top”'], ['309.75', '309.75', '0.00']],
      ['2025-03-03: Nuts', ['its tax was 0.23, now 0.39'], ['3.30', '5.50', '2.20']],
    ]);
  });

  it('shows the issued one as it was', () => {
    expect(at(recordOf(edited), '001')).toEqual(at(recordOf(march), '001'));
  });

  it('says that a line is gone, or has come since', () => {
    const { 'log/2025-03-03.md': moved = '', ...others } = march;
    const gone = at(recordOf(others), 'open');
    expect(table(gone, 'Corrections').rows[0]).toMatchObject({
      notes: ['no longer there'],
      cells: [{ text: '309.75' }, { text: 'none' }, { text: '−309.75' }],
    });
    const come = at(recordOf({ ...march, 'log/2025-03-05.md': moved }), 'open');
    expect(table(come, 'Corrections').rows[0]).toMatchObject({
      head: '2025-03-05: paint off the top',
      notes: ['written since the statement of its day'],
      cells: [{ text: 'none' }, { text: '309.75' }, { text: '309.75' }],
    });
  });
});

describe('the letters of taxes', () => {
  it('go on after Z', () => {
    const taxes = Array.from({ length: 28 }, (_, i) => ({
      rule: { name: `Tax ${i}`, rate: '0.07', by: 'line' as const, rounding: 'down' as const },
    }));
    expect(
      [taxes[0], taxes[25], taxes[26], taxes[27]].map((tax) =>
        taxLetters(taxes)(tax as (typeof taxes)[number]),
      ),
    ).toEqual(['A', 'Z', 'AA', 'AB']);
  });
});

describe('words of the record in another writing', () => {
  it('stay words in Markdown', () => {
    const odd = {
      caption: 'A|B',
      head: '',
      columns: [{ head: 'C' }],
      rows: [{ head: '<b>_x_</b> | *y*', cells: [{ text: '1' }] }],
    };
    expect(markdownTable(odd)).toBe(
      '## A\\|B\n\n|  | C |\n| --- | ---: |\n| \\<b\\>\\_x\\_\\</b\\> \\| \\*y\\* | 1 |',
    );
  });

  it('can’t end the style sheet that prints them', () => {
    expect(cssText('Statement 1, </style>"\\')).toBe('"Statement 1, \\3c \\2f style\\3e \\22 \\5c "');
  });
});
