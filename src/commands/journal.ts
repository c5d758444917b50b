// `npm run journal`: prints the record as a plain-text ledger. Exit 0, 1 for errors in the record, 2 for wrong use.
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { journalText } from '../views/journal.ts';
import { problemsText } from '../views/problem-text.ts';
import { visible } from '../views/visible.ts';
import { asked, oneFolder } from './asked.ts';

const USE =
  'Use: npm run --silent journal -- [folder]. The folder is the record; RECORD or content unless named.';

async function journal(): Promise<number> {
  const words = asked(USE, { help: { type: 'boolean' } }, oneFolder);
  if (!words) return 2;
  if (words.values.help) {
    console.log(USE);
    return 0;
  }
  const { record, problems, read } = await openFolder(words.positionals[0] ?? recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!record || errors.length > 0) {
    console.error(problemsText(errors, read));
    return 1;
  }
  process.stdout.write(visible(journalText(rollUp(record), record)));
  return 0;
}

// A reader such as `head` may stop before the end; that is no fault of the record.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await journal();
