// Sheets for `npm run bring`: broken by hand and at random. Each row is written, there already, or refused in a sentence,
// and what is written is read again without a mistake.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { broughtText } from '../../src/commands/bring/said.ts';
import { readSheet, sheetOf } from '../../src/commands/bring/sheet.ts';
import { openRecord } from '../../src/record/open.ts';
import { withoutThere } from '../../src/record/writing/sheet/already-there.ts';
import { bringPlan } from '../../src/record/writing/sheet/bring-plan.ts';
import { readColumns } from '../../src/record/writing/sheet/columns.ts';
import { linesFromRows } from '../../src/record/writing/sheet/rows.ts';
import { emptyFolder } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { PATIENCE, tries } from './size.ts';

const files = Object.entries(SMALL).map(([file, text]) => ({ file, text }));
const lying = { files, photos: [], today: '2025-12-31' };
const opened = openRecord(lying);
const { record } = opened;
if (!record) throw new Error('the small record opens');

/** What bringing a sheet comes to, without writing: the sentence that refuses all of it, or what becomes of its rows. */
function brought(text: string) {
  const sheet = sheetOf(text, 'a.csv');
  if (typeof sheet === 'string') return { whole: sheet };
  const columns = readColumns(sheet.headings, new Map());
  if (typeof columns === 'string') return { whole: columns };
  const { lines, refused } = linesFromRows(sheet.rows, columns, record as never, { today: '2025-12-31' });
  const { fresh, there } = withoutThere(lines, record as never);
  const plan = bringPlan(lying, opened, fresh);
  const all = [...refused, ...plan.refused];
  const said = broughtText({
    days: plan.days,
    there: there.length,
    refused: all,
    leftOut: columns.leftOut,
    dryRun: true,
  });
  const full = sheet.rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  return { plan, there, refused: all, said, rows: full.map(({ row }) => row) };
}

/** What is wrong with the way in which a sheet is answered; nothing when it is as it should be. */
function wrongWith(text: string): string[] {
  const is = brought(text);
  const unseen = /(?!\n)[\p{Cc}\u202a-\u202e\u2066-\u2069]/u;
  if (is.whole !== undefined)
    return is.whole.length < 3000 && /[.”…]$/.test(is.whole) ? [] : [is.whole.slice(0, 300)];
  const { plan, there, refused, said, rows } = is;
  const told = [
    ...plan.days.flatMap(({ lines }) => lines.map(({ row }) => row)),
    ...there.map(({ row }) => row),
    ...refused.map(({ row }) => row),
  ].sort((a, b) => a - b);
  const after = new Map([
    ...files.map(({ file, text: was }) => [file, was] as const),
    ...plan.days.map(({ plan: { file, text: now } }) => [file, now] as const),
  ]);
  const again = openRecord({ ...lying, files: [...after].map(([file, words]) => ({ file, text: words })) });
  return [
    ...(JSON.stringify(told) === JSON.stringify(rows) ? [] : [`rows ${rows} were told as ${told}`]),
    ...refused
      .filter(({ why }) => why.length > 1500 || !/[.?…]$/.test(why))
      .map(({ why }) => `no sentence: ${why.slice(0, 200)}`),
    ...(unseen.test(said) ? [`a terminal would act on ${JSON.stringify(said.slice(0, 300))}`] : []),
    ...again.problems
      .filter(({ severity }) => severity === 'error')
      .map(({ reason }) => `written wrong: ${reason}`),
    ...(again.read.bills + (again.record?.entries.flatMap(({ hours = [] }) => hours).length ?? 0) ===
    2 + plan.days.reduce((sum, { lines }) => sum + lines.length, 0)
      ? []
      : ['what was written isn’t what is read']),
  ];
}

const HEAD = 'date,work,time,note\n';
const row = (note: string) => `${HEAD}2025-03-04,metal,2h,${note}\n`;

const SHEETS: [what: string, text: string][] = [
  ['nothing', ''],
  ['line ends alone', '\n\n\n'],
  ['a heading alone', HEAD],
  [
    'rows of fewer and of more cells',
    `${HEAD}2025-03-04,metal\n2025-03-04,metal,2h,x,y,z\n2025-03-04,metal,2h,x\n`,
  ],
  ['a quote that is open at the end', row('"never closed')],
  ['a quote in the middle of a cell', row('the "left" one')],
  ['quotes doubled as they should be', row('"the ""left"" one"')],
  ['semicolons', `${HEAD.replaceAll(',', ';')}2025-03-04;metal;2,5;x\n`],
  ['tabs', `${HEAD}2025-03-04,metal,2h,x\n`.replaceAll(',', '\t')],
  ['bars, which no sheet here has', `${HEAD}2025-03-04,metal,2h,x\n`.replaceAll(',', '|')],
  ['a line that names its separator', `sep=;\n${HEAD}`],
  ['decimal commas', `${HEAD}2025-03-04,metal,"2,5",x\n`],
  ['a mark of the byte order', `\ufeff${row('x')}`],
  ['line ends of three kinds', `date,work,time,note\r\n2025-03-04,metal,2h,x\r2025-03-04,metal,3h,y\n`],
  [
    'formulas',
    ['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("x")']
      .map((f) => `2025-03-04,metal,2h,"${f.replaceAll('"', '""')}"\n`)
      .reduce((all, one) => all + one, HEAD),
  ],
  ['a line end within a cell', row('"two\nlines"')],
  [
    'marks of YAML',
    [
      '- a',
      '# b',
      '&c',
      '*d',
      '!e',
      '|',
      '>',
      '%',
      '@',
      '`',
      '{',
      '}',
      '"',
      "'",
      '? ',
      ': ',
      'a: b',
      'null',
      '~',
      '---',
    ]
      .map((f) => `2025-03-04,metal,2h,"${f.replaceAll('"', '""')}"\n`)
      .reduce((all, one) => all + one, HEAD),
  ],
  ['a NUL byte', row('x\0y')],
  ['orders to a terminal', row('\u001b[2J\u001b]0;x\u0007')],
  ['signs that turn the writing round', `${HEAD}2025-03-04,\u202elatem,2h,x\n`],
  ['a cell of a megabyte', row('x'.repeat(1_000_000))],
  ['a wrong cell of a megabyte', `${HEAD}2025-03-04,${'x'.repeat(1_000_000)},2h,x\n`],
  ['a heading of a megabyte', `${'x'.repeat(1_000_000)},b\n1,2\n`],
  ['a thousand columns', `${Array.from({ length: 1000 }, (_, i) => `c${i}`)}\n`],
  ['the same column twice', 'date,date,work,time\n'],
  ['columns of hours and of bills', 'date,work,time,price\n'],
  [
    'days no calendar has',
    `${HEAD}2025-02-30,metal,2h,x\n0000-00-00,metal,2h,x\n45720,metal,2h,x\n04/03/2025,metal,2h,x\n`,
  ],
  ['days before and after all', `${HEAD}1900-01-01,metal,2h,x\n2999-01-01,metal,2h,x\n`],
  [
    'numbers of no use',
    ['1e400', '-0', '-2h', '0x10', 'NaN', '99999999999h', '.5.5']
      .map((t) => `2025-03-04,metal,${t},x\n`)
      .reduce((all, one) => all + one, HEAD),
  ],
  ['a hundred thousand rows', HEAD + '2025-03-04,metal,1m,x\n'.repeat(100_000)],
];

describe('a sheet as people break it', () => {
  it.each(SHEETS)('%s', (_, text) => {
    const before = process.cpuUsage();
    expect(wrongWith(text)).toEqual([]);
    expect(process.cpuUsage(before).user / 1000).toBeLessThan(20_000);
  });

  it.each([
    [
      'UTF-16',
      Buffer.from(`\ufeff${row('x')}`, 'utf16le'),
      'isn’t UTF-8 text. Save the sheet as “CSV UTF-8”.',
    ],
    [
      'UTF-16 without its mark',
      Buffer.from(row('x'), 'utf16le'),
      'holds a NUL byte in line 1, which no sheet has. Save it again as “CSV UTF-8”.',
    ],
    ['Latin-1', Buffer.from(row('Coup\u00e9'), 'latin1'), 'isn’t UTF-8 text. Save the sheet as “CSV UTF-8”.'],
  ])('saved as %s is told', async (_, bytes, says) => {
    const path = join(await emptyFolder(), 'a.csv');
    await writeFile(path, bytes);
    expect(await readSheet(path)).toBe(`\`${path}\` ${says}`);
  });
});

describe('a sheet at random', () => {
  it(
    'is written, there, or refused, row by row',
    () => {
      const odd = fc.oneof(
        fc.constantFrom(
          '',
          ' ',
          '"',
          ',',
          '\n',
          '=1',
          '2h',
          'metal',
          'cowl',
          '2025-03-04',
          '-',
          '#',
          ': ',
          '\u001b[31m',
          '\u202e',
          '\ufeff',
          '\u2028',
        ),
        fc.string({ unit: 'binary', maxLength: 12 }),
      );
      const quoted = odd.map((words) => `"${words.replaceAll('"', '""')}"`);
      const cell = fc.oneof({ weight: 3, arbitrary: quoted }, odd);
      const right = (at: number) => fc.constant(['2025-03-05', 'metal', '2h', 'cowl', 'words'][at] ?? '');
      const cells = fc.tuple(
        ...[0, 1, 2, 3, 4].map((at) => fc.oneof({ weight: 4, arbitrary: right(at) }, cell)),
      );
      const sheet = fc.tuple(
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.array(fc.oneof({ weight: 6, arbitrary: cells }, fc.array(cell, { maxLength: 7 })), {
          maxLength: 6,
        }),
      );
      fc.assert(
        fc.property(sheet, ([sign, end, rows]) => {
          const text = [['date', 'work', 'time', 'part', 'note'], ...rows]
            .map((one) => one.join(sign))
            .join(end);
          expect(wrongWith(text)).toEqual([]);
        }),
        tries(0.1),
      );
    },
    PATIENCE,
  );
});
