// `npm run check`: reads the record and prints every problem. Exit 0, 1 for errors, 2 for wrong use.
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { watchFolder } from '../disk/watch-folder.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked, oneFolder } from './asked.ts';

const USE =
  'Use: npm run check -- [--json] [--watch] [folder]. The folder is the record; RECORD or content unless named. With --watch it checks again whenever a file is saved.';

async function check(): Promise<number> {
  const words = asked(
    USE,
    { json: { type: 'boolean' }, watch: { type: 'boolean' }, help: { type: 'boolean' } },
    oneFolder,
  );
  if (!words) return 2;
  const { json = false, watch = false, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  const folder = words.positionals[0] ?? recordFolder();
  return watch ? checkAgain(folder, json) : checkOnce(folder, json);
}

async function checkOnce(folder: string, json: boolean): Promise<number> {
  const { problems, read } = await openFolder(folder);
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  console.log(json ? JSON.stringify({ problems, read }, null, 2) : problemsText(problems, read));
  return errors > 0 ? 1 : 0;
}

/** Each check begins with a line of its own, so that an editor knows which problems are of now. */
async function checkAgain(folder: string, json: boolean): Promise<number> {
  const ended = new AbortController();
  process.once('SIGINT', () => ended.abort()).once('SIGTERM', () => ended.abort());
  let code = 0;
  const once = async () => {
    if (!json) console.log('Checking. Ctrl-C stops it.');
    code = await checkOnce(folder, json);
  };
  await watchFolder(folder, once, ended.signal);
  return code;
}

process.exitCode = await check();
