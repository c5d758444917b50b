// Built sites as the tests read them: the demo's, shared by all of a run, and those of other records.
import { readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Audience } from '../../src/views/audience.ts';
import { npmRun } from '../commands/run.ts';
import { shared } from './shared.ts';

/** A site in its folder. `pages` and `files` are paths within it, sorted; `url` is that of a page opened from there. */
export type Site = {
  folder: string;
  pages: string[];
  files: string[];
  url: (page: string) => string;
};

export type Built = Site & { remove: () => Promise<void> };

/** The demo's site for an audience, built once for all tests of a run: it may be read, and not written to. */
export async function demoSite(audience: Audience = 'shop'): Promise<Site> {
  return siteIn(await shared(audience));
}

/** Builds the site of a record into a folder of its own, for the shop unless said. */
export async function buildSite(record: string, audience: Audience = 'shop'): Promise<Built> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-site-'));
  const { code, out, err } = await npmRun('build', ['--for', audience, '--out', folder], record);
  if (code !== 0) throw new Error(`The build ended with ${code}.\n${out}${err}`);
  return { ...siteIn(folder), remove: () => rm(folder, { recursive: true, force: true }) };
}

function siteIn(folder: string): Site {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    .map(({ parentPath, name }) =>
      join(parentPath, name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();
  return {
    folder,
    files,
    pages: files.filter((file) => file.endsWith('.html')),
    url: (page) => pathToFileURL(join(folder, page)).href,
  };
}
