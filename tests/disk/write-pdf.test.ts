import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { whyNotPrinted, writePdf } from '../../src/disk/write-pdf.ts';
import { emptyFolder } from '../commands/run.ts';

const KEYWORD = 'Ashframe statement';
const pdf = (keyword: string) => `%PDF-1.7\n<pdf:Keywords>${keyword}</pdf:Keywords>\n`;

describe('where a PDF may be printed', () => {
  it('is where nothing is yet, or an older print of the same kind', async () => {
    const file = join(await emptyFolder(), 'statement.pdf');
    expect(await whyNotPrinted(file, KEYWORD)).toBeUndefined();
    await writeFile(file, pdf(KEYWORD));
    expect(await whyNotPrinted(file, KEYWORD)).toBeUndefined();
    expect(await whyNotPrinted('statement-that-is-not-there.pdf', KEYWORD)).toBeUndefined();
  });

  it.each([
    ['a bill of somebody else', '%PDF-1.4\n', 'another PDF than this command prints'],
    ['another kind of print', pdf('Ashframe book'), 'another PDF than this command prints'],
    ['no PDF', 'not a statement', 'no PDF'],
    ['nothing', '', 'no PDF'],
  ])('isn’t over %s', async (_, text, what) => {
    const file = join(await emptyFolder(), 'statement.pdf');
    await writeFile(file, text);
    expect(await whyNotPrinted(file, KEYWORD)).toBe(
      `${file} is there already and is ${what}: it stays as it is.`,
    );
  });

  it('isn’t in place of a folder, nor below one that isn’t there, nor below a file', async () => {
    const folder = await emptyFolder();
    await mkdir(join(folder, 'folder.pdf'));
    await writeFile(join(folder, 'file'), '');
    expect(await whyNotPrinted(join(folder, 'folder.pdf'), KEYWORD)).toContain('is no PDF');
    for (const none of ['nowhere', 'file'])
      expect(await whyNotPrinted(join(folder, none, 'a.pdf'), KEYWORD)).toBe(
        `There is no folder \`${join(folder, none)}\` to print to.`,
      );
  });
});

describe('a PDF that is written', () => {
  it('stands there whole, and leaves nothing beside it', async () => {
    const folder = await emptyFolder();
    const file = join(folder, 'a.pdf');
    expect(await writePdf(file, Buffer.from('old'))).toBeUndefined();
    expect(await writePdf(file, Buffer.from('new'))).toBeUndefined();
    expect(await readFile(file, 'utf8')).toBe('new');
    expect(await readdir(folder)).toEqual(['a.pdf']);
  });

  it('is told of with the disk’s word where it can’t be', async () => {
    const file = join(await emptyFolder(), 'gone', 'a.pdf');
    // ENOENT: no such file or directory (POSIX.1-2017, errno.h).
    expect(await writePdf(file, Buffer.from('new'))).toBe(`${file} can’t be written (ENOENT).`);
  });
});
