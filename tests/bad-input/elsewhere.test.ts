// Where a record's words go beside the pages: the book, the tables, the ledger, the terminal. In each of them words stay words.
import { describe, expect, it } from 'vitest';
import { printBook } from '../../src/handover/book.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { bookData } from '../../src/views/book.ts';
import { csvText } from '../../src/views/csv.ts';
import { journalText } from '../../src/views/journal.ts';
import { visible } from '../../src/views/visible.ts';
import { wordsOf } from '../handover/pdf.ts';
import { pictures, planted } from '../handover/planted.ts';
import { openSmall, SMALL } from '../record/small.ts';
import { MARKUP } from './markup.ts';

/** What the book’s printer would run, read or set otherwise, if it took words for its own language (typst.app/docs). */
const OF_THE_PRINTER = [
  ...[
    '#read("/etc/passwd")',
    '#panic("stop")',
    '#import "x.typ"',
    '#let x = 1',
    '#sys.inputs',
    '$ x^2 $',
    '$ sum_(i=1)',
  ],
  ...[
    '*strong*',
    '_emph_',
    '@mark',
    'see <mark>',
    '= Heading',
    '// gone',
    '/* gone */',
    '\\u{41}',
    '--- --',
    "it's 'so'",
  ],
  ...['`raw`', '[cell]', '#{1+1}', '~', '...'],
];

describe('the book', () => {
  it('prints what its printer would take for code as it is written', async () => {
    const texts = OF_THE_PRINTER.map((words) => `( ${words} )`).join(' ');
    const { record, rollup, photos } = planted({
      'parts/radiator.md': `---\n${JSON.stringify({ name: texts, group: 'Mechanical', found: { on: '2025-02-11', condition: 'worn', note: texts }, fabric: 'unknown' })}\n---\n\n${OF_THE_PRINTER.slice(
        0,
        5,
      )
        .map((words) => `Words: ${words}`)
        .join('\n\n')}\n`,
    });
    const data = bookData(record, rollup, photos, { made: '2026-05-29' });
    const { pdf } = await printBook(data, pictures(), { edition: 'reading', units: 'inch' });
    const plain = (text: string) => text.replace(/[\s\u00ad-]+/g, '');
    const words = plain((await wordsOf(pdf)).words);
    expect(OF_THE_PRINTER.filter((one) => !words.includes(plain(`( ${one} )`)))).toEqual([]);
    expect(words).not.toContain('root:');
  });
});

describe('a table', () => {
  // RFC 4180 knows no formulas: a cell is its text. A sign put before it would be a word that nobody wrote, and a negative
  // amount would no longer be a number; the README says how to import such a table.
  it('holds a cell that begins like a formula sign for sign', () => {
    const cells = ['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("https://planted.invalid","x")', '\t=1'];
    const [, line] = csvText(['a', 'b', 'c', 'd', 'e', 'f'], [cells]).split('\r\n');
    expect(line).toBe('=1+1,+1,-1,@SUM(A1),"=HYPERLINK(""https://planted.invalid"",""x"")",\t=1');
  });

  it('has a row for a row, whatever stands in its cells', () => {
    const text = csvText(
      ['a', 'b'],
      MARKUP.map((words) => [`${words}\r\n`, words]),
    );
    const bare = text.replace(/"(?:[^"]|"")*"/g, '""');
    expect(bare.split('\r\n')).toHaveLength(MARKUP.length + 2);
  });
});

describe('the ledger', () => {
  it('has no posting and no entry that a note put there', () => {
    const notes = [
      'x\n    assets:cash  100 USD',
      'x\n\n2025-01-01 planted\n    a  1 USD\n    b',
      'x  ; tag: value, date:2020-01-01 [2020-01-01]',
      'x\r    assets:cash  1',
      'x\u2028    assets:cash  1',
      'include /etc/passwd',
      '\u001b[31mred \u202ednuora',
      ...MARKUP,
    ];
    const { record, problems } = openSmall({
      'car.md': SMALL['car.md'].replace(
        'name: Aldermere Fourteen',
        `name: ${JSON.stringify(notes.join(' '))}`,
      ),
      'log/2025-03-04.md': `---\n${JSON.stringify({
        hours: notes.map((note) => ({ part: 'cowl', work: 'metal', time: '1m', note })),
        bought: notes.map((what, i) => ({ what, from: 'millrace', part: 'cowl', price: '1', bill: `${i}` })),
        paid: notes.map((how) => ({ amount: '1', how })),
      })}\n---\n`,
    });
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    if (!record) throw new Error('the record opens');
    const lines = journalText(rollUp(record), record).split('\n');
    // hledger’s journal format: a transaction is a day and a title, a posting is indented, two spaces part account and amount.
    const amount = '-?\\d+(?:\\.\\d+)? USD';
    const known = new RegExp(
      `^(?:; .*|decimal-mark \\.|2025-03-0[34] log/2025-03-0[34]\\.md| {4}(?:cost|charged|balance|paid)[a-z:-]*  ${amount}(?:  ; .*)?|)$`,
    );
    expect(lines.filter((line) => !known.test(line))).toEqual([]);
    const comments = lines
      .filter((line) => line.startsWith(' '))
      .flatMap((line) => line.split('  ; ').slice(1));
    expect(comments.length).toBeGreaterThan(3 * notes.length);
    // A tag of hledger is a word with a colon, a date of a posting stands in brackets.
    expect(comments.filter((words) => /\S:|\[/.test(words))).toEqual([]);
    expect(lines.filter((line) => /\p{Cc}/u.test(line))).toEqual([]);
  });
});

describe('a terminal', () => {
  it('is shown signs that it would act on, or that can’t be seen, by their numbers', () => {
    // ECMA-48 (escape and control sequences); Unicode 16, 23.2 (directional formatting).
    expect(visible('\u001b[2J')).toBe('\\u{1b}[2J');
    expect(visible('a\u0007b\u009bc\rd')).toBe('a\\u{7}b\\u{9b}c\\u{d}d');
    expect(visible('\u202eabc\u202c\u2066\u200f')).toBe('\\u{202e}abc\\u{202c}\\u{2066}\\u{200f}');
    expect(visible('a\u200bb\ufeff\u00ad\ud800')).toBe('a\\u{200b}b\\u{feff}\\u{ad}\\u{d800}');
    expect(visible('line\nline')).toBe('line\nline');
  });

  it('is shown pictures of several signs, and other scripts, as they are', () => {
    for (const words of ['👩🏽‍🔧 🇩🇪 ❤️', 'הצבע הוסר', 'Café, Größe', '½ in × 3″'])
      expect(visible(words)).toBe(words);
  });
});
