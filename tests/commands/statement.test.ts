import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wordsOf } from '../handover/pdf.ts';
import { emptyFolder, npmRun } from './run.ts';

const TEXTS = {
  'car.md': `---
name: Aldermere Fourteen
built: "1934"
owner: { name: Miriam Castell }
opened: 2025-02-03
units: inch
currency: USD
---
`,
  'shop.md': `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve }
rates:
  - { from: 2025-01-01, rate: 80 }
vendors:
  - { id: millrace, name: Millrace Metals }
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: statement }
---
`,
  'parts/cowl.md': `---
name: Cowl
group: Body panels
---
`,
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, work: metal, time: 2h, note: paint off the top }
  - { part: cowl, work: metal, time: 30m, note: the same again, no-charge: our own mistake }
bought:
  - { what: "Wire, soft", from: millrace, part: cowl, price: 10.00, bill: "20817" }
paid:
  - { amount: 100, how: check }
---
`,
  'log/2025-04-07.md': `---
hours:
  - { part: cowl, work: metal, time: 1h, note: filed }
---
`,
};

async function record(): Promise<string> {
  const folder = await emptyFolder();
  for (const [file, text] of Object.entries(TEXTS)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
  return folder;
}
const statement = (folder: string, ...words: string[]) => npmRun('statement', words, folder);
const MARCH = ['--from', '2025-03-01', '--to', '2025-03-31'];

// 2 h at 80.00; 10.00 x 1.1 = 11.00; 7% of it 0.77; 160.00 + 11.00 + 0.77 - 100.00
const PRINTED = `Statement, not issued yet: Aldermere Fourteen
=============================================

From Harrow Bend Coachworks to Miriam Castell. March 1, 2025 to March 31, 2025.

$71.77 is due.

The account

                          USD
-----------------------------
Brought forward          0.00
Labor                  160.00
Bills, with handling    11.00
Tax                      0.77
Payments received     −100.00
-----------------------------
Balance due             71.77

Labor, by day

Day, and what was done              Time   Rate   Labor
-------------------------------------------------------
March 3                         2 h 00 m         160.00
  paint off the top             2 h 00 m  80.00  160.00
    Cowl, metal, Tobias Reeve
  the same again                                   0.00
    Cowl, metal, Tobias Reeve
    worked 0 h 30 m
    no charge: our own mistake
-------------------------------------------------------
Labor                           2 h 00 m         160.00

Bills, with handling

Bill, and what was bought                   Price  Handling  Charged
--------------------------------------------------------------------
March 3: Wire, soft                         10.00      1.00    11.00
  Millrace Metals, bill 20817; Cowl, tax A
--------------------------------------------------------------------
Bills, with handling                        10.00      1.00    11.00

Tax

Tax                                                      On   Tax
-----------------------------------------------------------------
A Sales tax 7%                                        11.00  0.77
  rounded half up, once on the sum of this statement
-----------------------------------------------------------------
Tax added                                                    0.77

Payments received

Day, and how         Paid
-------------------------
March 3, check     100.00
-------------------------
Payments received  100.00

Amounts in USD. Tax is by the rules that the shop has written, as they stand
above. Which tax is owed, and how it is rounded, is for local tax law to decide.
`;

describe('npm run statement', () => {
  it('prints the account of a period', async () => {
    const folder = await record();
    expect(await statement(folder, ...MARCH)).toEqual({ code: 0, out: PRINTED, err: '' });
    expect(await readdir(folder)).not.toContain('statements');
  });

  it('keeps it when it is issued, whole, once, and for good', async () => {
    const folder = await record();
    const issued = await statement(folder, ...MARCH, '--issue', '--on', '2025-04-02');
    expect(issued).toEqual({
      code: 0,
      out: 'Issued as statements/001.md, 2025-03-01 to 2025-03-31. $71.77 is due.\n',
      err: '',
    });
    expect(await readdir(join(folder, 'statements'))).toEqual(['001.md']);
    const text = await readFile(join(folder, 'statements/001.md'), 'utf8');
    expect(text).toContain('issued: 2025-04-02\nbrought-forward: 0.00\n');
    expect(text).toContain('\n| **Balance due** | **71.77** |\n');

    const again = await statement(folder, ...MARCH, '--issue', '--on', '2025-04-03');
    expect(again).toEqual({ code: 1, out: '', err: 'That period is issued already, as statement 001.\n' });
    const named = await statement(folder, '--to', '2025-04-30', '--issue', '--number', '001');
    expect(named).toEqual({ code: 1, out: '', err: 'There is a statement 001 already.\n' });
    expect(await readFile(join(folder, 'statements/001.md'), 'utf8')).toBe(text);

    // The same as before it was issued, under its number.
    const shown = await statement(folder, ...MARCH);
    const [, ...after] = PRINTED.split('March 31, 2025.');
    expect(shown.out).toContain('Statement 001: Aldermere Fourteen\n');
    expect(shown.out).toContain(after.join(''));
  });

  it('sets an issued one in type by its number, over an older print and over nothing else', async () => {
    const folder = await record();
    await statement(folder, ...MARCH, '--issue', '--on', '2025-04-02');
    const file = join(folder, 'march.pdf');
    const said = {
      code: 0,
      out: `The statement is in ${file}. This edition is made to be kept (PDF/A-2a, ISO 19005-2).\n`,
      err: '',
    };
    expect(await statement(folder, '--number', '001', '--pdf', file)).toEqual(said);
    const { words } = await wordsOf(await readFile(file));
    expect(words).toContain('Statement 001 $71.77 is due.');
    expect(words).toContain(
      'the same again Cowl, metal, Tobias Reeve worked 0 h 30 m no charge: our own mistake',
    );
    // What isn't issued yet goes over it, to be read aloud.
    const open = await statement(folder, '--pdf', file, '--edition', 'reading');
    expect(open.out).toContain('PDF/UA-1');
    expect((await wordsOf(await readFile(file))).words).toContain(
      'Statement, not issued yet $151.77 is due.',
    );
    await writeFile(file, 'a letter');
    expect(await statement(folder, '--number', '001', '--pdf', file)).toEqual({
      code: 1,
      out: '',
      err: `${file} is there already and is no PDF: it stays as it is.\n`,
    });
    expect(await readFile(file, 'utf8')).toBe('a letter');
    expect((await statement(folder, '--number', '1', '--pdf', join(folder, 'a.pdf'))).err).toBe(
      'There is no statement 1. Did you mean `001`?\n',
    );
  });

  it('goes on from the last one, and shows what was changed since', async () => {
    const folder = await record();
    await statement(folder, ...MARCH, '--issue', '--on', '2025-04-02');
    const march = TEXTS['log/2025-03-03.md'].replace('price: 10.00', 'price: 13.00');
    await writeFile(join(folder, 'log/2025-03-03.md'), march);
    const { out } = await statement(folder);
    const flat = out.replaceAll(/ +/g, ' ');
    expect(flat).toContain('April 1, 2025 to April 7, 2025.');
    expect(flat).toContain('\nBrought forward 71.77\n');
    // 14.30 - 11.00; 7% of 3.30 is 0.231; 71.77 + 80.00 + 3.30 + 0.23
    expect(flat).toContain('\n2025-03-03: Wire, soft 11.00 14.30 3.30\n');
    expect(flat).toContain('\nBalance due 155.30\n');
  });

  it('says of a file changed by hand that it was, and shows nothing', async () => {
    const folder = await record();
    await statement(folder, ...MARCH, '--issue', '--on', '2025-04-02');
    const file = join(folder, 'statements/001.md');
    await writeFile(file, (await readFile(file, 'utf8')).replace('**71.77**', '**17.77**'));
    const { code, out, err } = await statement(folder);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('Statement `001` was changed by hand after it was issued. Put back the file');
  });
});

describe('npm run statement, when it can’t be had', () => {
  it.each([
    [['--from', '2025-03-05', '--to', '2025-03-31', '--issue'], 'The log begins on 2025-03-03, so'],
    [['--from', '2025-04-30', '--to', '2025-03-01'], 'A statement can’t begin on 2025-04-30 and end on'],
    [[...MARCH, '--issue', '--on', '2025-03-30'], 'before its period ends on 2025-03-31.'],
    [[...MARCH, '--issue', '--number', 'open'], '`open` is no number such as `003`'],
  ])('says why: %j', async (words, why) => {
    const folder = await record();
    const { code, out, err } = await statement(folder, ...words);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(why);
    expect(await readdir(folder)).not.toContain('statements');
  });

  it('names the statement that a period runs into, or that must come first', async () => {
    const folder = await record();
    await statement(folder, ...MARCH, '--issue', '--on', '2025-04-02');
    expect((await statement(folder, '--from', '2025-03-10', '--to', '2025-04-10')).err).toBe(
      '2025-03-10 to 2025-04-10 runs into statement 001, of 2025-03-01 to 2025-03-31. What isn’t issued yet begins on 2025-04-01.\n',
    );
    expect((await statement(folder, '--from', '2025-04-05', '--to', '2025-04-30', '--issue')).err).toBe(
      'Statement 001 ends on 2025-03-31, so the next one begins on 2025-04-01.\n',
    );
    expect((await statement(folder, '--to', '2025-03-20')).err).toBe(
      'Statement 001 goes up to 2025-03-31. What isn’t issued yet begins on 2025-04-01.\n',
    );
  });

  it.each([
    [['--from', '2025-02-30'], '`2025-02-30` is no day'],
    [['--on', '2025-04-02'], 'goes with --issue'],
    [['--number', '001', '--to', '2025-03-31'], 'A number says the period already'],
    [['--edition', 'reading'], 'An edition goes with --pdf.'],
    [['--issue'], 'needs its last day, --to'],
    [['--form', '2025-03-01'], 'Use: npm run --silent statement'],
  ])('says how it is used when asked %j', async (words, why) => {
    const { code, out, err } = await npmRun('statement', words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(why);
    expect(err).toContain('Use: npm run --silent statement');
  });
});
