// `npm run photos -- [folder]`: brings in the pictures of a phone or card, and lists those that no entry names.
// Exit 0, 1 when something is left to be done by hand, 2 for wrong use.
import { dayHere, recordFolder } from '../disk/open-folder.ts';
import { isDay } from '../figures/days.ts';
import { bringIn } from '../photos/coming-in/bring-in.ts';
import { broughtInText } from '../photos/coming-in/said.ts';
import { asked, oneFolder } from './asked.ts';

const USE =
  'Use: npm run photos -- [--dry-run] [--day 2025-04-16] [folder]. The folder is a phone’s or a card’s; without it, pictures that lie in photos/ are listed in their days’ entries. The record is RECORD or content.';

async function photos(): Promise<number> {
  const options = {
    'dry-run': { type: 'boolean' },
    day: { type: 'string' },
    help: { type: 'boolean' },
  } as const;
  const words = asked(USE, options, oneFolder);
  if (!words) return 2;
  const { 'dry-run': dryRun = false, day, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  if (day !== undefined && !isDay(day)) {
    console.error(`\`${day}\` is no day such as \`2025-04-16\`.\n${USE}`);
    return 2;
  }
  const [from] = words.positionals;
  const done = await bringIn(recordFolder(), {
    dryRun,
    today: dayHere(new Date()),
    ...(from === undefined ? {} : { from }),
    ...(day === undefined ? {} : { day }),
  });
  if (typeof done === 'string') {
    console.error(done);
    return 1;
  }
  console.log(broughtInText(done));
  return done.listed.some(({ how }) => how === 'by-hand') || done.refused.length > 0 ? 1 : 0;
}

process.exitCode = await photos();
