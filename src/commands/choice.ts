// `npm run choice -- <choice> <file.pdf>`: prints a choice for the owner, open ones as one sheet to sign. Exit 0, 1 when
// there is no such choice, the record has errors or the file can't be written, 2 for wrong use.
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { printChoice } from '../handover/print-choice.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked } from './asked.ts';
import { ended } from './ended.ts';
import { notPrinted, printAsked, printed } from './printed.ts';

const USE = `Use: npm run choice -- <choice> <file.pdf> [--edition archive]. The record is RECORD or content.
The choice is its file's name in choices/, without .md. An open one is a sheet to sign; a decided one says why.
The edition is archive (PDF/A-2a, to be kept) or reading (PDF/UA-1, to be read aloud); archive unless named.`;

async function choice(): Promise<number> {
  const words = asked(USE, { edition: { type: 'string' }, help: { type: 'boolean' } }, (named) => {
    if (named.length > 2) throw new Error('One choice and one file');
  });
  if (!words) return 2;
  if (words.values.help) {
    console.log(USE);
    return 0;
  }
  const [id, file] = words.positionals;
  if (id === undefined) return refuse(USE, 2);
  const print = printAsked('choice', file, words.values.edition);
  if (typeof print === 'string') return refuse(`${print}\n${USE}`, 2);
  const why = await notPrinted(print);
  if (why !== undefined) return refuse(why, 1);
  const { record, problems, read, folder } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) return refuse(problemsText(errors, read), 1);
  const press = { edition: print.edition, made: dayHere(new Date()) };
  const { printed: pdf, refused } = await printChoice({ whole: record, folder }, id, press);
  return pdf ? printed(print, pdf) : refuse(refused, 1);
}

function refuse(why: string, code: number): number {
  console.error(why);
  return code;
}

process.exitCode = await ended(choice);
