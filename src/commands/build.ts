// `npm run build`: checks the record and builds the site. Exit 0, 1 when the record has errors, 2 for wrong use.
import { parseArgs } from 'node:util';
import { buildSite } from './build-site.ts';

async function build(): Promise<number> {
  const out = asked();
  if (out === false) {
    console.error('Use: npm run build -- [--out folder].');
    return 2;
  }
  return (await buildSite(out)) ? 0 : 1;
}

/** The folder asked for, nothing when none was, or false for words that aren't understood. */
function asked(): string | undefined | false {
  try {
    return parseArgs({ options: { out: { type: 'string' } } }).values.out;
  } catch {
    return false;
  }
}

process.exitCode = await build();
