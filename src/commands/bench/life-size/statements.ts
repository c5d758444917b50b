// The statements of a made-up record, issued as the command issues them.
import { addDays } from '../../../figures/days.ts';
import { openRecord } from '../../../record/open.ts';
import type { CarRecord, WrittenFile } from '../../../record/record.ts';
import { statementToIssue } from '../../../views/statement-asked.ts';
import { statementFile } from '../../../views/statement-file.ts';
import { dayOf } from './calendar.ts';

const MOST = 24;
/** Entries that a short record has for each. */
const EACH = 25;

/** Statements over the record but its last weeks, 24 at most. Throws when the record isn't right. */
export function statementFiles(
  files: readonly WrittenFile[],
  photos: readonly string[],
  entries: number,
): WrittenFile[] {
  const made: WrittenFile[] = [];
  const statements = Math.min(MOST, Math.floor(entries / EACH));
  let record = opened(files, photos);
  for (let i = 1; i <= statements; i++) {
    const to = dayOf(Math.floor((i * entries) / (statements + 1)), entries);
    const issue = { number: String(i).padStart(3, '0'), issued: addDays(to, 2) };
    const { statement, refused } = statementToIssue(record, { to }, issue);
    if (!statement) throw new Error(refused);
    const file = statementFile(statement, issue, record);
    made.push(file);
    // Only the new file is read: the other texts stay as they are.
    const read = opened([...files.slice(0, 2), file], []).statements;
    record = { ...record, statements: [...record.statements, ...read] };
  }
  return made;
}

function opened(files: readonly WrittenFile[], photos: readonly string[]): CarRecord {
  const { record, problems } = openRecord({ files, photos, today: '2026-01-01' });
  const wrong = problems.find(
    ({ severity, rule }) => severity === 'error' && rule !== 'statement-out-of-line',
  );
  if (!record || wrong) throw new Error(`The record made for timing must be right: ${JSON.stringify(wrong)}`);
  return record;
}
