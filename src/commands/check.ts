// `npm run check`: reads the record and prints every problem. Exit 0, 1 for errors, 2 for wrong use.
import { parseArgs } from 'node:util';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { problemsText } from '../views/problem-text.ts';

const USE =
  'Use: npm run check -- [--json] [folder]. The folder is the record; RECORD or content unless named.';

async function check(): Promise<number> {
  let asked: { values: { json?: boolean | undefined; help?: boolean | undefined }; positionals: string[] };
  try {
    asked = parseArgs({
      options: { json: { type: 'boolean' }, help: { type: 'boolean' } },
      allowPositionals: true,
    });
    if (asked.positionals.length > 1) throw new Error('one folder at most');
  } catch (error) {
    console.error(`${(error as Error).message.split('. ')[0]}.\n${USE}`);
    return 2;
  }
  if (asked.values.help) {
    console.log(USE);
    return 0;
  }
  const { problems, read } = await openFolder(asked.positionals[0] ?? recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  console.log(asked.values.json ? JSON.stringify({ problems, read }, null, 2) : problemsText(problems, read));
  return errors > 0 ? 1 : 0;
}

process.exitCode = await check();
