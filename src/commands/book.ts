// `npm run book -- <file.pdf>`: prints the record as a book. Exit 0, 1 when the record has errors or the file can't be
// written, 2 for wrong use.
import { open, rename, rm, writeFile } from 'node:fs/promises';
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { EDITIONS, type Edition } from '../handover/book.ts';
import { makeBook } from '../handover/make-book.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked } from './asked.ts';

const USE = `Use: npm run book -- <file.pdf> [--costs] [--edition archive]. The record is RECORD or content.
The edition is archive (PDF/A-2a, to be kept) or reading (PDF/UA-1, to be read aloud); archive unless named.`;

async function book(): Promise<number> {
  const words = asked(
    USE,
    { costs: { type: 'boolean' }, edition: { type: 'string' }, help: { type: 'boolean' } },
    (files) => {
      if (files.length > 1) throw new Error('One file at most');
    },
  );
  if (!words) return 2;
  const { costs = false, edition = 'archive', help } = words.values;
  const [file] = words.positionals;
  if (help) {
    console.log(USE);
    return 0;
  }
  if (!isEdition(edition)) return refuse(`\`${edition}\` is no edition.\n${USE}`, 2);
  if (!file?.endsWith('.pdf')) return refuse(`The book is a file whose name ends in \`.pdf\`.\n${USE}`, 2);
  if (!(await mayBeWritten(file)))
    return refuse(`${file} is there already and is no PDF: it stays as it is.`, 1);
  const { record, problems, read, folder } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) return refuse(problemsText(errors, read), 1);
  const printed = (await makeBook(record, folder, [edition], { made: dayHere(new Date()), costs })).get(
    edition,
  );
  if (!printed) return 1;
  if (printed.missing.length > 0) console.error(missingText(printed.missing));
  const written = await put(file, printed.pdf);
  if (written !== undefined) return refuse(`${file} can’t be written (${written}).`, 1);
  console.log(`The book is in ${file}. ${EDITIONS[edition].says}`);
  return 0;
}

const isEdition = (word: string): word is Edition => Object.hasOwn(EDITIONS, word);

function refuse(why: string, code: number): number {
  console.error(why);
  return code;
}

function missingText(missing: readonly string[]): string {
  return `The book’s type has no ${missing.map((letter) => `\`${letter}\``).join(', ')}: printed as numbers in brackets.`;
}

/** A PDF is written over; another file may have got its name by mistake. */
async function mayBeWritten(file: string): Promise<boolean> {
  const before = await open(file).catch(() => undefined);
  if (!before) return true;
  const { buffer } = await before.read(Buffer.alloc(5), 0, 5, 0);
  await before.close();
  return buffer.toString('latin1') === '%PDF-';
}

/** Puts the file in place when it is whole; says the disk's word for what went wrong. */
async function put(file: string, bytes: Buffer): Promise<string | undefined> {
  const writing = `${file}.${process.pid}`;
  try {
    await writeFile(writing, bytes);
    await rename(writing, file);
    return undefined;
  } catch (error) {
    await rm(writing, { force: true });
    return (error as NodeJS.ErrnoException).code ?? 'unknown';
  }
}

process.exitCode = await book();
