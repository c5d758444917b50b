// `npm run check`: reads the record and prints every problem. Exit 0, 1 for errors, 2 for wrong use.
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked, oneFolder } from './asked.ts';

const USE =
  'Use: npm run check -- [--json] [folder]. The folder is the record; RECORD or content unless named.';

async function check(): Promise<number> {
  const words = asked(USE, { json: { type: 'boolean' }, help: { type: 'boolean' } }, oneFolder);
  if (!words) return 2;
  if (words.values.help) {
    console.log(USE);
    return 0;
  }
  const { problems, read } = await openFolder(words.positionals[0] ?? recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  console.log(words.values.json ? JSON.stringify({ problems, read }, null, 2) : problemsText(problems, read));
  return errors > 0 ? 1 : 0;
}

process.exitCode = await check();
