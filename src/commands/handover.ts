// `npm run handover -- <folder>`: everything of the record in one folder that needs this program no more, as a bag
// (BagIt 1.0). Exit 0, 1 when it can't be made, 2 for wrong use.
import { join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { readFolder } from '../disk/folder.ts';
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { openBag } from '../handover/bag.ts';
import { sizeText } from '../handover/bag-said.ts';
import { handedPhotos } from '../handover/contents.ts';
import { handOver } from '../handover/hand-over.ts';
import { Stopped } from '../handover/stopped.ts';
import { type Carried, cameraCarries } from '../photos/camera-carries.ts';
import { makePhotos } from '../photos/make.ts';
import { inWorkFolder } from '../photos/work-folder.ts';
import { forAudience } from '../record/audience.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { beforeHandOver } from '../views/before-hand-over.ts';
import { identifierOf } from '../views/hand-over.ts';
import { problemsText, problemText } from '../views/problem-text.ts';
import { asked } from './asked.ts';
import { buildSite } from './build-site.ts';
import { ended } from './ended.ts';

const USE = `Use: npm run handover -- <folder> [--costs] [--originals [--yes]]. The record is RECORD or content.
The folder is empty, not there yet, or a hand-over of the same car: one that was interrupted goes on.
It holds what a later owner may see: no contacts, rates, prices, payments, or words for the shop alone.
With --costs the book, the pages and a table say what the work came to. With --originals the photographs go as the cameras wrote them.`;

const OPTIONS = {
  costs: { type: 'boolean' },
  originals: { type: 'boolean' },
  yes: { type: 'boolean' },
  help: { type: 'boolean' },
} as const;

async function handover(): Promise<number> {
  const words = asked(USE, OPTIONS, (folders) => {
    if (folders.length > 1) throw new Error('One folder at most');
  });
  if (!words) return 2;
  const { costs = false, originals = false, yes = false, help } = words.values;
  const [to] = words.positionals;
  if (help) {
    console.log(USE);
    return 0;
  }
  if (to === undefined) return refuse(USE, 2);
  const { record: whole, problems, read, folder } = await openFolder(recordFolder());
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!whole || errors.length > 0) return refuse(problemsText(errors, read), 1);
  const rollup = rollUp(whole);
  for (const told of [...problems.map(problemText), ...beforeHandOver(whole, rollup)]) console.error(told);
  const record = forAudience(whole, 'history');
  const { photos } = await makePhotos(folder, record.photos);
  if (originals && !(await agreed(await cameraCarries(folder, handedPhotos(record, photos, true)), yes)))
    return 1;
  const make = async (work: string): Promise<number> => {
    const site = join(work, 'pages');
    const bag = await openBag(to, identifierOf(record));
    // Told only where the pages can't be built: what the record says was told above, unless it changed since.
    const told: string[] = [];
    if (!(await buildSite(site, (text) => told.push(text), 'history', costs)))
      return refuse(told.join('\n'), 1);
    const { files } = await readFolder(folder);
    const came = costs ? rollup : undefined;
    const source = { whole, record, folder, files, photos, site, originals, came };
    const made = dayHere(new Date());
    const handed = await handOver(bag, source, { made, screen: process.stderr });
    if (handed.missing.length > 0)
      console.error(`The book’s type has no ${handed.missing.join(' ')}: printed as numbers in brackets.`);
    console.log(
      `The hand-over is in ${to}: ${handed.files} files, ${sizeText(handed.octets)}. Begin with START-HERE.html.\nThe sum on the book’s cover is ${handed.sum}.\nCheck it with: npm run verify -- ${to}`,
    );
    return 0;
  };
  try {
    return await inWorkFolder('.cache', make);
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    return refuse(error.message, 1);
  }
}

/** Says what the camera files carry; goes on when a person says so, or said so before. */
async function agreed(carried: Carried, yes: boolean): Promise<boolean> {
  console.error(carriedText(carried));
  if (yes || carried.length === 0) return true;
  if (!process.stdin.isTTY) {
    console.error('Say --yes to hand them over so, or leave --originals out.');
    return false;
  }
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  const answer = await lines.question('Hand them over so? (yes or no) ');
  lines.close();
  return /^y(?:es)?$/i.test(answer.trim());
}

function carriedText(carried: Carried): string {
  if (carried.length === 0)
    return 'The photographs go as the cameras wrote them. None carries anything but its picture.';
  const list = carried.map(({ what, files }) => `  ${files} ${files === 1 ? 'carries' : 'carry'} ${what}`);
  return `The photographs go as the cameras wrote them. Of these,\n${list.join('\n')}.`;
}

function refuse(why: string, code: number): number {
  console.error(why);
  return code;
}

process.exitCode = await ended(handover);
