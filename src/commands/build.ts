// `npm run build`: checks the record and builds the site. Exit 0, 1 when the record has errors, 2 for wrong use.
import { parseArgs } from 'node:util';
import { buildSite } from './build-site.ts';

async function build(): Promise<number> {
  try {
    const { values } = parseArgs({ options: { out: { type: 'string' } } });
    if (values.out) process.env.ASHFRAME_OUT = values.out;
  } catch {
    console.error('Use: npm run build -- [--out folder].');
    return 2;
  }
  return (await buildSite()) ? 0 : 1;
}

process.exitCode = await build();
