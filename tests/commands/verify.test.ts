import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderOf, minimal } from '../handover/bags.ts';
import { npmRun } from './run.ts';

describe('npm run verify', () => {
  it('says that a bag is whole, and ends with 0', async () => {
    const ended = await npmRun('verify', [await folderOf(minimal())]);
    expect(ended).toEqual({
      code: 0,
      out: 'The bag is whole: 1 file, 6 bytes, each checked by sha512.\n',
      err: '',
    });
  });

  it('names the file in which one byte was changed, and ends with 1', async () => {
    const folder = await folderOf(minimal());
    await writeFile(join(folder, 'data', 'hello.txt'), 'hellp\n');
    const { code, out, err } = await npmRun('verify', [folder]);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out.split('\n')).toEqual([
      'changed  data/hello.txt  its sha512 isn’t what was written down.',
      'The bag is not as it was made: 1 fault (1 changed); 1 file, 6 bytes looked at.',
      '',
    ]);
  });

  it('ends with 2 when it isn’t told which folder, or there is none', async () => {
    expect(await npmRun('verify')).toMatchObject({ code: 2, out: '' });
    expect(await npmRun('verify', ['one', 'two'])).toMatchObject({ code: 2, out: '' });
    const { code, err } = await npmRun('verify', ['nowhere/at/all']);
    expect({ code, err }).toEqual({ code: 2, err: 'There is no folder `nowhere/at/all`.\n' });
  });
});
