import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wordsOf } from '../handover/pdf.ts';
import { demoCopy, emptyFolder, npmRun } from './run.ts';

describe('npm run choice', () => {
  it('sets an open choice of the demo in type, on one sheet to sign', async () => {
    const file = join(await emptyFolder(), 'fender.pdf');
    expect(await npmRun('choice', ['rear-fender-right', file])).toEqual({
      code: 0,
      out: `The choice sheet is in ${file}. This edition is made to be kept (PDF/A-2a, ISO 19005-2).\n`,
      err: '',
    });
    const { pages, words } = await wordsOf(await readFile(file));
    expect(pages).toBe(1);
    expect(words).toContain('Asked of the owner. One of these three ways, by December 5, 2025.');
    // The demo's private words: contacts of the owner, of a person and of a vendor.
    for (const secret of ['or the bench phone', 'extension 1', 'ask for the cutting yard'])
      expect(words).not.toContain(secret);
  });

  it('says which choice is nearest, and writes nothing', async () => {
    const file = join(await emptyFolder(), 'fender.pdf');
    expect(await npmRun('choice', ['rear-fender-rigth', file])).toEqual({
      code: 1,
      out: '',
      err: 'There is no choice `rear-fender-rigth`. Did you mean `rear-fender-right`?\n',
    });
    await expect(readFile(file)).rejects.toThrow('ENOENT');
  });

  it('prints nothing of a record with errors, and says them', async () => {
    const record = await demoCopy();
    const choice = join(record, 'choices/top-cloth.md');
    await writeFile(choice, (await readFile(choice, 'utf8')).replace('part: top-cloth', 'part: top-clot'));
    const file = join(record, 'cloth.pdf');
    const { code, out, err } = await npmRun('choice', ['top-cloth', file], record);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('choices/top-cloth.md:3:');
    await expect(readFile(file)).rejects.toThrow('ENOENT');
  });

  it('ends with 2 when it isn’t told which, where, or in which edition that there is', async () => {
    const none = await npmRun('choice', ['wheels']);
    expect([none.code, none.err.split('\n')[0]]).toEqual([
      2,
      'The choice sheet is a file whose name ends in `.pdf`.',
    ]);
    const { code, err } = await npmRun('choice', ['wheels', 'wheels.pdf', '--edition', 'large']);
    expect([code, err.split('\n')[0]]).toEqual([2, '`large` is no edition.']);
  });
});
