// `npm run photos -- [folder]`: brings in the pictures of a phone or card, and lists those that no entry names. With
// --make it makes the web pictures alone, or a share of them. Exit 0, 1 when something is left to be done by hand, 2
// for wrong use.
import { dayHere, openFolder, recordFolder } from '../disk/open-folder.ts';
import { isDay } from '../figures/days.ts';
import { bringIn } from '../photos/coming-in/bring-in.ts';
import { broughtInText } from '../photos/coming-in/said.ts';
import { makePhotos, photoCache } from '../photos/make.ts';
import { type Shard, shardNamed, shardOf } from '../photos/shard.ts';
import { problemText } from '../views/problem-text.ts';
import { asked, oneFolder } from './asked.ts';
import { ended } from './ended.ts';

const USE = `Use: npm run photos -- [--dry-run] [--day 2025-04-16] [folder]
     npm run photos -- --make [--shard 1/2]
The folder is a phone’s or a card’s; without it, pictures that lie in photos/ are listed in their days’ entries.
With --make the web pictures are made and kept, and nothing is brought in; --shard 1/2 makes the first of two shares.
The record is RECORD or content.`;

async function photos(): Promise<number> {
  const options = {
    'dry-run': { type: 'boolean' },
    day: { type: 'string' },
    make: { type: 'boolean' },
    shard: { type: 'string' },
    help: { type: 'boolean' },
  } as const;
  const words = asked(USE, options, oneFolder);
  if (!words) return 2;
  const { 'dry-run': dryRun = false, day, make = false, shard, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  if (day !== undefined && !isDay(day)) {
    console.error(`\`${day}\` is no day such as \`2025-04-16\`.\n${USE}`);
    return 2;
  }
  const [from] = words.positionals;
  if (make || shard !== undefined) {
    const share = shardNamed(shard ?? '1/1');
    if (make && share && from === undefined && !dryRun && day === undefined) return made(share);
    console.error(
      share || shard === undefined
        ? `--make stands alone or with --shard.\n${USE}`
        : `\`${shard}\` is no share such as \`1/2\`.\n${USE}`,
    );
    return 2;
  }
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

/** Makes the web pictures of a share of the record’s, and says how many there were to be made. */
async function made(share: Shard): Promise<number> {
  const { folder, record, problems } = await openFolder(recordFolder());
  if (!record) {
    console.error(problems.map(problemText).join('\n'));
    return 1;
  }
  const files = shardOf(record.photos, share);
  const { made: fresh, problems: bad } = await makePhotos(folder, files);
  if (bad.length > 0) console.error(bad.map(problemText).join('\n'));
  const of = share.of > 1 ? `, share ${share.nth} of ${share.of}` : '';
  console.log(
    `${files.length} of ${record.photos.length} pictures looked at${of}: ${fresh} made. They are kept in ${photoCache}.`,
  );
  return bad.length > 0 ? 1 : 0;
}

process.exitCode = await ended(photos);
