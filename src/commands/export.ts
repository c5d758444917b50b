// `npm run export -- <folder>`: writes hours, bills and statement lines as CSV, with a Data Package descriptor. Exit 0,
// 1 for errors in the record or a folder that can't be written, 2 for wrong use.
import { join } from 'node:path';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { writeText } from '../disk/write-text.ts';
import { exportFiles } from '../views/export/files.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked } from './asked.ts';
import { ended } from './ended.ts';

const USE =
  'Use: npm run export -- <folder>. The folder is made if it isn’t there; files of an earlier export in it are written anew. The record is RECORD or content.';

async function exported(): Promise<number> {
  const words = asked(USE, {}, (folders) => {
    if (folders.length !== 1) throw new Error('Name one folder');
  });
  if (!words) return 2;
  const [folder = ''] = words.positionals;
  const { record, problems, read } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) {
    console.error(problemsText(errors, read));
    return 1;
  }
  const files = exportFiles(record);
  for (const { file, text } of files) await writeText(join(folder, file), text);
  const said = files.map(({ file, rows }) => (rows === undefined ? file : `${file} (${rows} rows)`));
  console.log(`Written in ${folder}: ${said.join(', ')}.`);
  return 0;
}

process.exitCode = await ended(exported);
