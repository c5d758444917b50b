import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { exportFiles } from '../../src/views/export/files.ts';
import { demoCopy, emptyFolder, npmRun } from './run.ts';

describe('npm run export', () => {
  it('writes the tables and their descriptor, over those of an earlier export, and nothing else', async () => {
    const folder = join(await emptyFolder(), 'out');
    const first = await npmRun('export', [folder]);
    expect([first.code, first.err]).toEqual([0, '']);
    expect(first.out).toMatch(
      /^Written in .+: hours\.csv \(\d+ rows\), bills\.csv \(\d+ rows\), statement-lines\.csv/,
    );
    await writeFile(join(folder, 'hours.csv'), 'old');
    expect((await npmRun('export', [folder])).code).toBe(0);
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo opens');
    const files = exportFiles(record);
    expect((await readdir(folder)).sort()).toEqual(files.map(({ file }) => file).sort());
    for (const { file, text } of files) expect(await readFile(join(folder, file), 'utf8')).toBe(text);
  });

  it('writes nothing of a record with errors, and says what they are', async () => {
    const record = await demoCopy();
    await rm(join(record, 'shop.md'));
    const folder = join(await emptyFolder(), 'out');
    const { code, err } = await npmRun('export', [folder], record);
    expect(code).toBe(1);
    expect(err).toContain('`shop.md` is missing.');
    await expect(readdir(folder)).rejects.toThrow();
  });

  it('says what can’t be written, and how it is used', async () => {
    const file = join(await emptyFolder(), 'file');
    await writeFile(file, '');
    const { code, err } = await npmRun('export', [join(file, 'out')]);
    expect([code, err]).toEqual([1, expect.stringContaining('can’t be written')]);
    expect(await npmRun('export')).toMatchObject({
      code: 2,
      err: expect.stringContaining('Use: npm run export'),
    });
  });
});
