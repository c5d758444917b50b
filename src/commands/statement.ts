// `npm run statement`: prints the owner's account over a period; --pdf sets it in type, --issue freezes it. Exit 0, 1 when it can't be had or
// the record has errors, 2 for wrong use.
import { join } from 'node:path';
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { writeNewText } from '../disk/write-text.ts';
import { isDay } from '../figures/days.ts';
import { type Find, printStatement } from '../handover/print-statement.ts';
import type { CarRecord } from '../record/record.ts';
import { problemsText } from '../views/problem-text.ts';
import { dueSentence, statementPage } from '../views/statement.ts';
import {
  numberAfter,
  type Period,
  statementNumbered,
  statementOf,
  statementToIssue,
} from '../views/statement-asked.ts';
import { statementFile } from '../views/statement-file.ts';
import { statementText } from '../views/statement-text.ts';
import { visible } from '../views/visible.ts';
import { asked, oneFolder } from './asked.ts';
import { ended } from './ended.ts';
import { notPrinted, type Print, printAsked, printed } from './printed.ts';

const USE = `Use: npm run --silent statement -- [--from 2025-03-01] [--to 2025-03-31] [folder]. The folder is the record; RECORD or content unless named.
It begins where the last issued one ended, and ends with the last entry, unless named.
With --number 003 it is the issued one of that number.
With --pdf <file.pdf> it is printed for the owner: [--edition archive] (PDF/A-2a, to be kept) or reading (PDF/UA-1, to be read aloud).
With --issue it is kept in statements/<number>.md: [--number 003] [--on 2025-04-02].`;

async function statement(): Promise<number> {
  const words = asked(
    USE,
    {
      from: { type: 'string' },
      to: { type: 'string' },
      issue: { type: 'boolean' },
      number: { type: 'string' },
      on: { type: 'string' },
      pdf: { type: 'string' },
      edition: { type: 'string' },
      help: { type: 'boolean' },
    },
    oneFolder,
  );
  if (!words) return 2;
  const { from, to, issue, number, on, pdf, edition, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  const odd = [from, to, on].find((day) => day !== undefined && !isDay(day));
  if (odd !== undefined) return wrongUse(`\`${odd}\` is no day such as \`2025-04-16\`.`);
  if (!issue && on !== undefined) return wrongUse('A day of issue goes with --issue.');
  if (!issue && number !== undefined && (from ?? to) !== undefined)
    return wrongUse('A number says the period already: name one of them.');
  if (issue && to === undefined) return wrongUse('A statement that is issued needs its last day, --to.');
  if (issue && pdf !== undefined)
    return wrongUse('Issue it first; --number and --pdf then print what was issued.');
  if (pdf === undefined && edition !== undefined) return wrongUse('An edition goes with --pdf.');
  const print = pdf === undefined ? undefined : printAsked('statement', pdf, edition);
  if (typeof print === 'string') return wrongUse(print);
  const why = print && (await notPrinted(print));
  if (why !== undefined) return refuse(why);
  const { record, problems, read, folder } = await openFolder(words.positionals[0] ?? recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) {
    console.error(problemsText(errors, read));
    return 1;
  }
  if (issue) return issueOne(record, folder, { from, to }, number ?? numberAfter(record), on);
  const find = (of: CarRecord) =>
    number === undefined ? statementOf(of, { from, to }) : statementNumbered(of, number);
  if (print) return printOne(record, find, print);
  const { statement: found, refused } = find(record);
  if (!found) return refuse(refused);
  process.stdout.write(visible(statementText(statementPage(found, record))));
  return 0;
}

async function printOne(record: CarRecord, find: Find, print: Print): Promise<number> {
  const press = { edition: print.edition, made: dayHere(new Date()) };
  const { printed: pdf, refused } = await printStatement(record, find, press);
  return pdf ? printed(print, pdf) : refuse(refused);
}

async function issueOne(
  record: CarRecord,
  folder: string,
  period: Period,
  number: string,
  on: string | undefined,
): Promise<number> {
  const issue = { number, issued: on ?? dayHere(new Date()) };
  const { statement: found, refused } = statementToIssue(record, period, issue);
  if (!found) return refuse(refused);
  const { file, text } = statementFile(found, issue, record);
  if (!(await writeNewText(join(folder, file), text)))
    return refuse(`There is a file ${file} already, and it stays as it is.`);
  console.log(`Issued as ${file}, ${found.from} to ${found.to}. ${dueSentence(found.sums.balance, record)}`);
  return 0;
}

function refuse(why: string): number {
  console.error(why);
  return 1;
}

function wrongUse(why: string): number {
  console.error(`${why}\n${USE}`);
  return 2;
}

// A reader such as `head` may stop before the end; that is no fault of the record.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await ended(statement);
