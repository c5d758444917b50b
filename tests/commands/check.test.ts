import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../src/record/place.ts';
import { problemText } from '../../src/views/problem-text.ts';
import { filesIn } from '../house/files.ts';
import { demoCopy, emptyFolder, npmRun } from './run.ts';

/** The first line of the file that holds `right` is written wrong; `says` stands in the one sentence about it. */
type Mistake = { file: string; right: string; wrong: string; says: string };

const APRIL = 'log/2025-04/2025-04-16.md';
const MAY = 'log/2025-05/2025-05-05.md';
const JULY = 'log/2025-07/2025-07-08.md';
const DOOR = 'parts/door-left.md';
const MISTAKES: readonly Mistake[] = [
  { file: 'car.md', right: 'ask-above: 1,200', wrong: 'ask-above: 1,20', says: 'Unexpected `1,20`' },
  { file: 'car.md', right: 'aim: ', wrong: 'aimed: ', says: 'Unknown key `aimed`' },
  { file: 'shop.md', right: 'step: 15m', wrong: 'step: 15 mins', says: 'Unexpected `15 mins`' },
  { file: DOOR, right: 'condition: damaged', wrong: 'condition: bad', says: 'Unexpected `bad`' },
  { file: DOOR, right: '[6, 10, 16]', wrong: '[16, 10, 6]', says: 'Unexpected `[16, 10, 6]`' },
  {
    file: 'choices/rear-fender-left.md',
    right: 'needed-by: 2025-06-20',
    wrong: 'needed-by: 2025-06-31',
    says: 'Unexpected `2025-06-31`',
  },
  { file: APRIL, right: 'time: 2h 30m', wrong: 'time: 2.5x', says: 'Unexpected `2.5x`' },
  { file: APRIL, right: 'from: millrace', wrong: 'from: milrace', says: '`milrace`' },
  { file: MAY, right: 'by: ines', wrong: 'by: inse', says: '`inse`' },
  { file: JULY, right: 'reading: 1.5 deg', wrong: 'reading: level', says: 'Unexpected `level`' },
  { file: JULY, right: 'They kept the freight.', wrong: 'They kept the freight.<br>', says: 'HTML `<br>`' },
  {
    file: 'log/2025-09/2025-09-15.md',
    right: 'note: slings, spreader',
    wrong: 'note: "slings, spreader',
    says: 'quote or a bracket is opened and never closed',
  },
];

/** Writes a mistake into a copy and says in which line. */
async function spoil(folder: string, { file, right, wrong }: Mistake): Promise<number> {
  const path = join(folder, file);
  const lines = (await readFile(path, 'utf8')).split('\n');
  const at = lines.findIndex((line) => line.includes(right));
  expect(at, `${file} holds \`${right}\``).toBeGreaterThanOrEqual(0);
  lines[at] = (lines[at] ?? '').replace(right, wrong);
  await writeFile(path, lines.join('\n'));
  return at + 1;
}

const check = async (words: readonly string[], folder?: string) => {
  const ended = await npmRun('check', ['--json', ...words], folder);
  expect(ended.err).toBe('');
  const said = JSON.parse(ended.out) as { problems: Problem[]; read: Record<string, number> };
  const errors = said.problems.filter(({ severity }) => severity === 'error');
  const warnings = said.problems.filter(({ severity }) => severity === 'warning').map(problemText);
  return { ...ended, ...said, errors, warnings };
};

describe('npm run check on the demo', () => {
  it('finds no error, and says what it read', async () => {
    const { code, out, err } = await npmRun('check');
    // Counted on the disk, not by the reader.
    const files = filesIn('content');
    const count = (start: string, end: RegExp) =>
      files.filter((file) => file.startsWith(`content/${start}/`) && end.test(file)).length;
    const last = out.trim().split('\n').at(-1) ?? '';
    expect(last).toMatch(/^0 errors and \d+ warnings?\. Read: /);
    expect(last).toContain(`${count('log', /\.md$/)} entries, ${count('parts', /\.md$/)} parts`);
    expect(last).toContain(`${count('choices', /\.md$/)} choices`);
    expect(last).toContain(`${count('photos', /\.(jpe?g|png)$/i)} photos`);
    expect(err).toBe('');
    expect(code).toBe(0);
  });

  it('says the same as JSON', async () => {
    const { code, errors, warnings, read } = await check([]);
    const { out } = await npmRun('check');
    expect(errors).toEqual([]);
    expect(out).toContain(`0 errors and ${warnings.length} warning`);
    expect(out).toContain(`${read.bills} bill lines`);
    expect(code).toBe(0);
  });
});

describe('npm run check on a spoiled copy', () => {
  it('finds twelve mistakes in eight files in one run, each at its line, and nothing that follows from them', async () => {
    const folder = await demoCopy();
    const before = await check([], folder);
    const expected: string[] = [];
    for (const mistake of MISTAKES) expected.push(`${mistake.file}:${await spoil(folder, mistake)}`);
    expect(new Set(MISTAKES.map(({ file }) => file)).size).toBe(8);

    const { code, errors, warnings } = await check([], folder);
    expect(errors.map(({ place }) => `${place.file}:${place.line}`).sort()).toEqual(expected.sort());
    for (const { file, says } of MISTAKES) {
      expect(
        errors.filter(({ place, reason }) => place.file === file && reason.includes(says)),
        says,
      ).toHaveLength(1);
    }
    // Warnings that need every entry wait until all can be read; no other is new.
    expect(warnings.filter((warning) => !before.warnings.includes(warning))).toEqual([]);
    expect(code).toBe(1);
  });

  it('prints a line for each and the count last, with no trace of the code', async () => {
    const folder = await demoCopy();
    for (const mistake of MISTAKES) await spoil(folder, mistake);
    const { out, err } = await npmRun('check', [], folder);
    const lines = out.trim().split('\n');
    expect(lines.filter((line) => /^\S+\.md:\d+:\d+ {2}error {2}/.test(line))).toHaveLength(12);
    expect(lines.at(-1)).toMatch(/^12 errors and \d+ warnings?\. Read: /);
    expect(out + err).not.toMatch(/\n {4}at /);
  });
});

describe('npm run check, wrongly used', () => {
  it.each([[['--jsn']], [['one', 'two']]])('says how it is used when asked %j', async (words) => {
    const { code, out, err } = await npmRun('check', words);
    expect(code).toBe(2);
    expect(err).toContain('Use: npm run check -- [--json] [--watch] [folder].');
    expect(err).not.toContain('    at ');
    expect(out).toBe('');
  });

  it('says that there is no such folder, and that a record lacks its two files', async () => {
    const folder = await emptyFolder();
    const gone = await npmRun('check', [join(folder, 'gone')]);
    expect(gone.out).toContain('There is no folder');
    expect(gone.code).toBe(1);
    const empty = await npmRun('check', [folder]);
    expect(empty.out).toContain('`car.md` is missing.');
    expect(empty.out).toContain('`shop.md` is missing.');
    expect(empty.code).toBe(1);
  });
});
