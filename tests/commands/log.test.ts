import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { dayAddedText } from '../../src/views/day-added.ts';
import { SMALL } from '../record/small.ts';
import { DAY, FILE, FLAGS, recordBefore, TEXT } from './a-day.ts';
import { emptyFolder, npmRun } from './run.ts';

async function small(changed: Record<string, string> = {}): Promise<string> {
  const folder = await emptyFolder();
  for (const name of ['parts', 'log', 'photos']) await mkdir(join(folder, name));
  for (const [name, text] of Object.entries({ ...SMALL, ...changed }))
    await writeFile(join(folder, name), text);
  return folder;
}
const entry = (folder: string) => readFile(join(folder, 'log/2025-03-03.md'), 'utf8');

describe('npm run log with flags', () => {
  it('writes a full day as a person would have written it, byte for byte, and says what it came to', async () => {
    const folder = await recordBefore();
    const before = (await openFolder(folder)).record;
    const { code, out, err } = await npmRun('log', FLAGS, folder);
    expect(err).toBe('');
    expect(await readFile(join(folder, FILE), 'utf8')).toBe(TEXT);
    const after = (await openFolder(folder)).record;
    if (!before || !after) throw new Error('the demo opens');
    const lines = out.trim().split('\n');
    expect(lines[0]).toBe(`Written: ${FILE}, which is new.`);
    expect(lines[1]).toBe(dayAddedText(before, after));
    // 2 h 30 m and 1 h 30 m.
    expect(rollUp(after).total.minutes - rollUp(before).total.minutes).toBe(240);
    expect(lines[1]).toMatch(/^Added 4 h 00 m and \$\d/);
    expect(lines.at(-1)).toMatch(/^0 errors and \d+ warnings?\. Read: /);
    expect(code).toBe(0);
  });

  it('adds to an entry, and keeps its comments and its order', async () => {
    const text = SMALL['log/2025-03-03.md'].replace(
      '    time: 3h 30m\n',
      '    time: 3h 30m # by the clock\n  # Nothing else.\n',
    );
    const folder = await small({ 'log/2025-03-03.md': text });
    const said = await npmRun(
      'log',
      ['--day', '2025-03-03', '--hours', 'cowl/lead metal 45m', '--words', 'And tinned it.'],
      folder,
    );
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toContain('Added to log/2025-03-03.md.\n');
    // 45 minutes at $80, by SMALL's shop.md.
    expect(said.out).toContain('Added 0 h 45 m and $60.00 charged.');
    expect(await entry(folder)).toBe(
      `${text.replace(
        '  # Nothing else.\n',
        '  # Nothing else.\n  - part: cowl\n    work: metal\n    time: 45m\n    line: lead\n',
      )}\nAnd tinned it.\n`,
    );
  });

  it('shows with --dry-run what it would do', async () => {
    const folder = await small();
    const { code, out } = await npmRun(
      'log',
      ['--dry-run', '--day', '2025-03-03', '--finished', 'cowl/lead'],
      folder,
    );
    expect(out).toBe(
      `With --dry-run nothing is written; this is what log/2025-03-03.md would get:
    - { what: 1/4 in bolts, from: millrace, part: cowl, price: 1.10, count: 007, bill: 0310 }
- finished: [cowl/strip]
+ finished: [cowl/strip, cowl/lead]
  ---
`,
    );
    expect(code).toBe(0);
    expect(await entry(folder)).toBe(SMALL['log/2025-03-03.md']);
  });

  it.each<[string[], string[]]>([
    [
      ['--hours', 'cowll metal 2h'],
      ['--hours: `cowll` is no time, part, kind of work or person. Did you mean `cowl`?'],
    ],
    [
      ['--hours', 'cowl metal 2h', '--hours', 'cowl metal 2x'],
      ['--hours, number 2: Unexpected `2x`, expected a time such as `3h 30m`, `3:30` or `3.5`.'],
    ],
    [
      ['--bought', 'Wire; from milrace; price 4.90'],
      ['--bought: `milrace` is no vendor in shop.md. Did you mean `millrace`?'],
    ],
    [
      ['--bought', 'Wire; from millrace; pice 4.90'],
      [
        '--bought: `pice 4.90` begins with no key of this line. Did you mean `price`? A semicolon that belongs to the words is written `;;`.',
      ],
    ],
    [
      ['--bought', 'Wire; from millrace'],
      [
        '--bought: Missing `price` in this line of `bought`. The price of one. Write it, for example `price: 4.90`.',
      ],
    ],
    [
      ['--finished', 'cowl/stripp'],
      ['--finished: `cowl/stripp` is no planned line of this record. Did you mean `cowl/strip`?'],
    ],
    [['--by', 'ines'], ['--by: `ines` is no person in shop.md. Known: tobias.']],
    [
      ['--finished', 'cowl/strip'],
      ['`cowl/strip` is finished already. Keep the later one if it was done again, else the first.'],
    ],
  ])('refuses %j with a sentence, and writes nothing', async (words, says) => {
    const folder = await small();
    const { code, out, err } = await npmRun(
      'log',
      ['--day', '2025-03-04', '--words', 'A day.', ...words],
      folder,
    );
    expect(err.trim().split('\n')).toEqual(['Nothing was written.', ...says]);
    expect([code, out]).toEqual([1, '']);
    await expect(readFile(join(folder, 'log/2025-03-04.md'))).rejects.toThrow();
  });

  it('leaves an entry alone that can’t be read', async () => {
    const text = '---\nby: "tobias\n---\n';
    const folder = await small({ 'log/2025-03-03.md': text });
    const { code, err } = await npmRun('log', ['--day', '2025-03-03', '--words', 'A day.'], folder);
    expect(code).toBe(1);
    expect(err).toBe(
      'Nothing was written.\nlog/2025-03-03.md is written in a way that can’t be added to safely. See what npm run check says of it, or write in it by hand.\n',
    );
    expect(await entry(folder)).toBe(text);
  });

  it('goes on with a draft, and takes it away when it is written', async () => {
    const folder = await small();
    await mkdir(join(folder, '.draft'));
    const draft = join(folder, '.draft/2025-03-04.md');
    await writeFile(draft, '---\nhours:\n  - { part: cowl, work: metal, time: 2h }\n---\n\nBegun.\n');
    const { code } = await npmRun(
      'log',
      ['--day', '2025-03-04', '--draft', '--finished', 'cowl/lead'],
      folder,
    );
    expect(code).toBe(0);
    expect(await readFile(join(folder, 'log/2025-03-04.md'), 'utf8')).toBe(
      '---\nhours:\n  - { part: cowl, work: metal, time: 2h }\nfinished: [cowl/lead]\n---\n\nBegun.\n',
    );
    await expect(readFile(draft)).rejects.toThrow();
  });
});

describe('npm run log, wrongly used', () => {
  it.each<[string[], string]>([
    [['--hour', 'cowl'], "Unknown option '--hour'"],
    [['--day', '2025-02-30'], '`2025-02-30` is no day such as `2025-04-16`.'],
    [[], 'This is no terminal that could be asked in. Say it with flags.'],
    [['--ask', '--words', 'A day.'], 'This is no terminal that could be asked in. Say it with flags.'],
  ])('says how it is used when asked %j', async (words, says) => {
    const { code, out, err } = await npmRun('log', words, await small());
    expect(err.split('\n')[0]).toContain(says);
    expect(err).toContain('--hours      "cowl metal 2h 30m; left corner cut out"');
    expect([code, out]).toEqual([2, '']);
  });

  it('says what is wrong with a record that can’t be opened', async () => {
    const { code, err } = await npmRun('log', ['--words', 'A day.'], await emptyFolder());
    expect(code).toBe(1);
    expect(err).toContain('`car.md` is missing.');
  });
});

it('the day of the file is the day of the flags', () => {
  expect(FILE).toContain(DAY);
});
