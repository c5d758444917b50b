// A statement as a file: every line and figure in its front matter, the same to be read below, and the digest of both.
import { splitFrontMatter } from '../record/front-matter.ts';
import type { CarRecord, WrittenFile } from '../record/record.ts';
import { inRecord } from '../record/schema/fields.ts';
import { statementSheet } from '../record/schema/statement.ts';
import { statementDigest } from '../record/statement-digest.ts';
import type { Statement } from '../rollup/issued.ts';
import { markdownTable, plain } from './markdown-table.ts';
import { type Issue, keysOf } from './statement/keys.ts';
import { type StatementPage, statementPage } from './statement.ts';

/** The file of a statement that is issued now. */
export function statementFile(statement: Statement, issue: Issue, record: CarRecord): WrittenFile {
  const body = bodyOf(statementPage({ ...statement, ...issue }, record));
  const keys = keysOf(statement, issue, record);
  const file = `statements/${issue.number}.md`;
  const digest = digestOf(file, [...keys, `digest: ${'0'.repeat(64)}`], body, record);
  return { file, text: textOf([...keys, `digest: ${digest}`], body) };
}

const textOf = (keys: readonly string[], body: string) => `---\n${keys.join('\n')}\n---\n\n${body}\n`;

/** Read back as the record will read it, so that the digest is of what will be read. */
function digestOf(file: string, keys: readonly string[], body: string, record: CarRecord): string {
  const split = splitFrontMatter(file, textOf(keys, body));
  const sheet = statementSheet(inRecord(record.currency, record.units)).parse(split.values);
  return statementDigest({ ...sheet, body: split.body });
}

function bodyOf({
  title,
  car,
  period,
  issued,
  shop,
  owner,
  lead,
  summary,
  tables,
  fine,
}: StatementPage): string {
  return [
    `# ${plain(`${title}: ${car}`)}`,
    plain(`From ${shop}${owner ? ` to ${owner}` : ''}. ${period}, issued ${issued}. ${lead}`),
    ...[summary, ...tables].map(markdownTable),
    plain(fine),
  ].join('\n\n');
}
