// `npm run verify -- <folder>`: checks a hand-over, file by file. Exit 0, 1 when something is wrong, 2 for wrong use.
import { stat } from 'node:fs/promises';
import { checkBag } from '../handover/bag-check.ts';
import { checkedText } from '../handover/bag-said.ts';
import { fileProgress } from '../handover/progress.ts';
import { visible } from '../views/visible.ts';
import { asked } from './asked.ts';

const USE = 'Use: npm run verify -- <folder>. The folder is a hand-over, or any bag (BagIt 1.0).';

async function verify(): Promise<number> {
  const words = asked(USE, { help: { type: 'boolean' } }, (folders) => {
    if (folders.length > 1) throw new Error('One folder at most');
  });
  if (!words) return 2;
  const [folder] = words.positionals;
  if (words.values.help) {
    console.log(USE);
    return 0;
  }
  if (folder === undefined) {
    console.error(USE);
    return 2;
  }
  const there = await stat(folder).catch(() => undefined);
  if (!there?.isDirectory()) {
    console.error(`There is no folder \`${folder}\`.`);
    return 2;
  }
  const bar = fileProgress(process.stderr);
  const checked = await checkBag(folder, bar.step);
  bar.end();
  console.log(visible(checkedText(checked)));
  return checked.faults.length > 0 ? 1 : 0;
}

process.exitCode = await verify();
