// `npm run book -- <file.pdf>`: prints the record as a book. Exit 0, 1 when the record has errors or the file can't be
// written, 2 for wrong use.
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { makeBook } from '../handover/make-book.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked } from './asked.ts';
import { ended } from './ended.ts';
import { notPrinted, printAsked, printed } from './printed.ts';

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
  const { costs = false, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  const print = printAsked('book', words.positionals[0], words.values.edition);
  if (typeof print === 'string') return refuse(`${print}\n${USE}`, 2);
  const why = await notPrinted(print);
  if (why) return refuse(why, 1);
  const { record, problems, read, folder } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) return refuse(problemsText(errors, read), 1);
  const { edition } = print;
  const books = await makeBook(record, folder, [edition], { made: dayHere(new Date()), costs });
  const book = books.get(edition);
  return book ? printed(print, book) : 1;
}

function refuse(why: string, code: number): number {
  console.error(why);
  return code;
}

process.exitCode = await ended(book);
