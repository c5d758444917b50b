import { chmod, mkdir, readdir, readFile, readlink, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeText } from '../../src/disk/write-text.ts';
import { emptyFolder } from '../commands/run.ts';

describe('a text', () => {
  it('is written whole, in folders that are made for it, with nothing left beside it', async () => {
    const folder = await emptyFolder();
    await writeText(join(folder, 'log/2025-04/2025-04-16.md'), 'Words.\n');
    await writeText(join(folder, 'log/2025-04/2025-04-16.md'), 'Other words.\n');
    expect(await readFile(join(folder, 'log/2025-04/2025-04-16.md'), 'utf8')).toBe('Other words.\n');
    expect(await readdir(join(folder, 'log/2025-04'))).toEqual(['2025-04-16.md']);
  });

  it('keeps who may read its file, and stays behind a link', async () => {
    const folder = await emptyFolder();
    await writeFile(join(folder, 'kept.md'), 'Words.\n');
    await chmod(join(folder, 'kept.md'), 0o640);
    await symlink('kept.md', join(folder, 'link.md'));
    await writeText(join(folder, 'link.md'), 'Other words.\n');
    expect(await readlink(join(folder, 'link.md'))).toBe('kept.md');
    expect(await readFile(join(folder, 'kept.md'), 'utf8')).toBe('Other words.\n');
    expect((await stat(join(folder, 'kept.md'))).mode & 0o777).toBe(0o640);
  });

  it('leaves nothing behind when it can’t be put in place', async () => {
    const folder = await emptyFolder();
    await mkdir(join(folder, 'taken'));
    await expect(writeText(join(folder, 'taken'), 'Words.\n')).rejects.toThrow();
    expect(await readdir(folder)).toEqual(['taken']);
  });
});
