// What a build may put itself in place of.
import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { npmRun } from './run.ts';

describe('npm run build -- --out', () => {
  it('leaves a folder alone that holds something else', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'ashframe-out-'));
    await writeFile(join(folder, 'letters.txt'), 'kept for years');
    const { code, err } = await npmRun('build', ['--out', folder]);
    expect([code, err]).toEqual([
      1,
      `${folder} holds something other than a built site. Name an empty folder, or a new one.\n`,
    ]);
    expect(await readdir(folder)).toEqual(['letters.txt']);
    await rm(folder, { recursive: true });
  });
});
