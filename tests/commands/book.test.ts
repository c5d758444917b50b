import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wordsOf } from '../handover/pdf.ts';
import { emptyFolder, npmRun } from './run.ts';

describe('npm run book', () => {
  it('prints the demo with every part of it and its plates', async () => {
    const file = join(await emptyFolder(), 'book.pdf');
    const { code, out, err } = await npmRun('book', [file]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(`The book is in ${file}. This edition is made to be kept (PDF/A-2a, ISO 19005-2).\n`);
    const { words } = await wordsOf(await readFile(file));
    const index = words.slice(words.lastIndexOf('Index of parts'));
    for (const part of ['Cowl', 'Left rear fender', 'Right main sill', 'Wire wheels'])
      expect(index).toContain(`${part}, `);
    expect(words).toContain('Plate 1');
    // The demo's private words: contacts of the owner, of a person and of a vendor, and what was agreed.
    for (const secret of ['or the bench phone', 'extension 1', 'ask for the cutting yard', '84,500']) {
      expect(words).not.toContain(secret);
    }
  });

  it('leaves a file that is no PDF as it is', async () => {
    const file = join(await emptyFolder(), 'notes.pdf');
    await writeFile(file, 'not a book');
    const { code, err } = await npmRun('book', [file]);
    expect({ code, err }).toEqual({
      code: 1,
      err: `${file} is there already and is no PDF: it stays as it is.\n`,
    });
    expect(await readFile(file, 'utf8')).toBe('not a book');
  });

  it('ends with 2 when it isn’t told where, or which edition', async () => {
    expect(await npmRun('book')).toMatchObject({ code: 2, out: '' });
    expect(await npmRun('book', ['book.txt'])).toMatchObject({ code: 2, out: '' });
    const { code, err } = await npmRun('book', ['book.pdf', '--edition', 'large']);
    expect({ code, first: err.split('\n')[0] }).toEqual({ code: 2, first: '`large` is no edition.' });
  });
});
