// Checks a record and builds its site.
import { rm } from 'node:fs/promises';
import { build } from 'astro';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { problemsText } from '../views/problem-text.ts';

/** Builds the site of the record. Errors stop it, after all of them are printed; false then. */
export async function buildSite(): Promise<boolean> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  const { problems, read } = await openFolder(recordFolder());
  console.log(problemsText(problems, read));
  if (problems.some(({ severity }) => severity === 'error')) {
    console.error('The site isn’t built while the record has errors.');
    return false;
  }
  const out = siteFolder();
  await rm(out, { recursive: true, force: true });
  await build({ root: '.', logLevel: 'error' });
  console.log(`The site is in ${process.env.ASHFRAME_OUT || 'dist'}: open index.html in it.`);
  return true;
}

/** Where the built site lies. */
export function siteFolder(): string {
  return process.env.ASHFRAME_OUT || 'dist';
}
