// What `npm run build` does. Exit 0, 1 when the record has errors, 2 for wrong use.
import { audienceNamed } from '../../views/audience.ts';
import { asked } from '../asked.ts';
import { buildSite, type Started, siteFolder } from '../build-site.ts';
import { ended } from '../ended.ts';

const USE = `Use: npm run build -- [--for shop|owner|history] [--costs] [--out folder].
Each audience has a folder of its own: dist, dist-owner and dist-history.
A history holds no amounts; with --costs it says what the work came to, by group and by part.`;

/** Builds as the command line asks, and gives the exit; `started` is what was known before this was loaded. */
export function build(started: Started): Promise<number> {
  return ended(() => asAsked(started));
}

async function asAsked(started: Started): Promise<number> {
  const words = asked(USE, {
    for: { type: 'string' },
    out: { type: 'string' },
    costs: { type: 'boolean' },
  });
  if (!words) return 2;
  const audience = audienceNamed(words.values.for);
  if (!audience) {
    console.error(`Unexpected \`${words.values.for}\`, expected shop, owner or history.\n${USE}`);
    return 2;
  }
  const { costs = false, out = siteFolder(audience) } = words.values;
  if (costs && audience !== 'history') {
    console.error(`--costs goes with --for history: the other pages say what the work costs anyway.\n${USE}`);
    return 2;
  }
  return (await buildSite(out, undefined, audience, costs, started)) ? 0 : 1;
}
