// `npm run build`: checks the record and builds the site. Exit 0, 1 when the record has errors, 2 for wrong use.
import { asked } from './asked.ts';
import { buildSite } from './build-site.ts';

async function build(): Promise<number> {
  const words = asked('Use: npm run build -- [--out folder].', { out: { type: 'string' } });
  if (!words) return 2;
  return (await buildSite(words.values.out)) ? 0 : 1;
}

process.exitCode = await build();
