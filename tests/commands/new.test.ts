import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openRecord } from '../../src/record/open.ts';
import { blankRecord } from '../../src/views/blank-record.ts';
import { emptyFolder, npmRun } from './run.ts';

describe('npm run new', () => {
  it('lays down a record that check finds nothing wrong with', async () => {
    const folder = join(await emptyFolder(), 'record');
    expect(await npmRun('new', [folder])).toMatchObject({ code: 0, err: '' });
    expect((await readdir(folder)).sort()).toEqual([
      'car.md',
      'choices',
      'log',
      'parts',
      'photos',
      'shop.md',
    ]);
    const checked = await npmRun('check', [folder]);
    expect(checked.out).toContain('0 errors and 0 warnings');
    expect(checked.out).toContain('Read: 1 entry, 1 part, 0 choices');
    expect(checked.code).toBe(0);
  });

  it('refuses a folder that holds anything, and leaves it as it is', async () => {
    const folder = await emptyFolder();
    await writeFile(join(folder, 'car.md'), 'Mine.\n');
    const { code, err } = await npmRun('new', [folder]);
    expect(code).toBe(1);
    expect(err.trim()).toBe(
      `\`${folder}\` holds \`car.md\`, so nothing was written. Name a folder that is new or empty.`,
    );
    expect(await readdir(folder)).toEqual(['car.md']);
    expect(await readFile(join(folder, 'car.md'), 'utf8')).toBe('Mine.\n');
  });

  it('refuses a file', async () => {
    const file = join(await emptyFolder(), 'car.md');
    await writeFile(file, '');
    expect((await npmRun('new', [file])).err).toContain('is a file, so nothing was written');
  });

  it.each([[[]], [['a', 'b']], [['--force', 'a']]])('says how it is used when asked %j', async (words) => {
    const { code, err } = await npmRun('new', words);
    expect(code).toBe(2);
    expect(err).toContain('Use: npm run new -- <folder>.');
    expect(err).not.toContain('    at ');
  });

  it('uses a folder that is there and empty', async () => {
    const folder = join(await emptyFolder(), 'here');
    await mkdir(folder);
    expect((await npmRun('new', [folder])).code).toBe(0);
  });
});

describe('the commented lines of an empty record', () => {
  // The writer takes the # away: what is left must be right as it stands.
  const uncommented = blankRecord('2025-02-03').map(({ file, text }) => ({
    file,
    text: text.replace(/^# {0,1}(?=( *- \{|[a-z-]+:( |$)))/gm, '').replace('on: the day', 'on: 2025-02-04'),
  }));

  it('are right when the number sign is taken away', () => {
    const { problems, read } = openRecord({ files: uncommented, photos: [], today: '2025-02-04' });
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(read).toMatchObject({ entries: 1, parts: 1, vendors: 1, bills: 1 });
  });
});
