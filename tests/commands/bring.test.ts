import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { askColumns } from '../../src/commands/bring/ask-columns.ts';
import type { Asker } from '../../src/commands/log/asker.ts';
import { bytesIn } from '../photos/record-of.ts';
import { SMALL } from '../record/small.ts';
import { emptyFolder, npmRun } from './run.ts';

/** The small record, and a sheet beside it. */
async function withSheet(sheet: string) {
  const folder = join(await emptyFolder(), 'record');
  for (const name of ['parts', 'log', 'photos']) await mkdir(join(folder, name), { recursive: true });
  for (const [name, text] of Object.entries(SMALL)) await writeFile(join(folder, name), text);
  const path = join(folder, '../sheet.csv');
  await writeFile(path, sheet);
  return { folder, path };
}

const BILLS = `date,what,from,part,price,count,tax,bill\r
2025-03-03,1/4 in bolts,millrace,cowl,1.10,7,,0310\r
2025-03-03,"Steel sheet, 18 ga",Millrace Metals,Cowl,46.20,,3.23,20790\r
2025-03-05,"Rod, ""soft""",millrace,cowl,"1,084.50",,,20791\r
2025-03-05,Wire,milrace,cowl,4.90,,,20791\r
`;

describe('npm run bring', () => {
  it('turns rows into lines, refuses what it can’t read, and doubles nothing when it runs again', async () => {
    const { folder, path } = await withSheet(BILLS);
    const first = await npmRun('bring', [path], folder);
    expect(first.err).toBe('');
    expect(first.out.trim().split('\n').slice(0, 5)).toEqual([
      '2 rows added to 2 entries, 1 there already, 1 refused.',
      '  log/2025-03-03.md: 1 row.',
      '  log/2025-03-05.md, which is new: 1 row.',
      'Row 5 was refused. `milrace` is no vendor in shop.md. Did you mean `millrace`?',
      'Mend the rows in the sheet and bring it again: what is there already isn’t doubled.',
    ]);
    // 46.20 + 3.23 + 1,084.50
    expect(first.out).toContain('Added 0 h 00 m and $1,133.93 charged.');
    expect(first.code).toBe(1);
    expect(await readFile(join(folder, 'log/2025-03-03.md'), 'utf8')).toBe(
      SMALL['log/2025-03-03.md'].replace(
        'bill: 0310 }\n',
        'bill: 0310 }\n  - { what: "Steel sheet, 18 ga", from: millrace, part: cowl, price: 46.20, tax: 3.23, bill: "20790" }\n',
      ),
    );
    expect(await readFile(join(folder, 'log/2025-03-05.md'), 'utf8')).toBe(
      '---\nbought:\n  - { what: \'Rod, "soft"\', from: millrace, part: cowl, price: "1,084.50", bill: "20791" }\n---\n',
    );

    const before = await bytesIn(folder);
    const again = await npmRun('bring', [path], folder);
    expect(again.out).toContain('0 rows added to 0 entries, 3 there already, 1 refused.');
    expect(await bytesIn(folder)).toEqual(before);

    await writeFile(path, BILLS.replace('milrace', 'millrace'));
    const mended = await npmRun('bring', [path], folder);
    expect(mended.out).toContain('1 row added to 1 entry, 3 there already, 0 refused.');
    expect(mended.code).toBe(0);
  });

  it('takes columns and days as they are said to be', async () => {
    const { folder, path } = await withSheet('Datum;Zeit;work;Wer\n4.3.2025;1:30;shop;x\n');
    const words = ['--columns', 'Datum=date,Zeit=time', '--dates', 'd.m.y', path];
    const dry = await npmRun('bring', ['--dry-run', ...words], folder);
    expect(dry.out.trim().split('\n')).toEqual([
      'With --dry-run nothing is written; this is what would be done.',
      '1 row added to 1 entry, 0 there already, 0 refused.',
      '  log/2025-03-04.md, which is new: 1 row.',
      'Columns left out: `Wer`.',
    ]);
    await expect(readFile(join(folder, 'log/2025-03-04.md'))).rejects.toThrow();
    expect((await npmRun('bring', words, folder)).code).toBe(0);
    expect(await readFile(join(folder, 'log/2025-03-04.md'), 'utf8')).toBe(
      '---\nhours:\n  - { work: shop, time: 1h 30m }\n---\n',
    );
  });

  it.each<[string[], number, string]>([
    [[], 2, 'Name the sheet.'],
    [['a.csv', 'b.csv'], 2, 'one sheet at a time.'],
    [['--dates', 'm/d', 'a.csv'], 2, '`m/d` is no order of days such as `m/d/y`.'],
    [['--columns', 'Datum', 'a.csv'], 2, '`Datum` is no heading with its key, such as `Datum=date`.'],
    [['tests/none.csv'], 1, 'There is no file `tests/none.csv`.'],
  ])('says what it needs when asked %j', async (words, code, says) => {
    const { folder } = await withSheet('');
    const ended = await npmRun('bring', words, folder);
    expect([ended.code, ended.out]).toEqual([code, '']);
    expect(ended.err).toContain(says);
    expect(ended.err).not.toContain('    at ');
  });

  it('names the columns that a sheet lacks', async () => {
    const { folder, path } = await withSheet('Datum,work,time\n');
    expect(await npmRun('bring', [path], folder)).toMatchObject({
      code: 2,
      err: 'A sheet of hours needs a column `date`, and this one has `Datum`, `work`, `time`. Say which it is: --columns "Datum=date".\n',
    });
  });
});

describe('the question what a column is', () => {
  it('is asked of those that don’t say it, with the keys that are left', async () => {
    const heard: [string, string[]][] = [];
    const answers: Record<string, string> = { 'What does': 'hours', Datum: 'date', Zeit: 'time', Wer: '-' };
    const asker = {
      pick: async ({ message, offers }: Parameters<Asker['pick']>[0]) => {
        heard.push([message, offers.map(({ value }) => value)]);
        return Object.entries(answers).find(([about]) => message.includes(about))?.[1] ?? '';
      },
    } as Asker;
    expect([...(await askColumns(asker, ['Datum', 'work', 'Zeit', 'Wer']))]).toEqual([
      ['Datum', 'date'],
      ['Zeit', 'time'],
      ['Wer', '-'],
    ]);
    expect(heard.map(([message]) => message)).toEqual([
      'What does the sheet hold?',
      'What is the column `Datum`?',
      'What is the column `Zeit`?',
      'What is the column `Wer`?',
    ]);
    expect(heard[3]?.[1]).not.toContain('date');
    expect(heard[1]?.[1]).not.toContain('work');
  });
});
