// The demo's site, built once for the tests of a file.
import { readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { npmRun } from '../commands/run.ts';

export type Built = {
  folder: string;
  pages: string[];
  url: (page: string) => string;
  remove: () => Promise<void>;
};

/** Builds the demo, or another record, into a folder of its own, for the shop unless said. `pages` are paths within it, sorted. */
export async function buildDemo(record?: string, audience = 'shop'): Promise<Built> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-site-'));
  const { code, out, err } = await npmRun('build', ['--for', audience, '--out', folder], record);
  if (code !== 0) throw new Error(`The build ended with ${code}.\n${out}${err}`);
  const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.split(sep).join('/'))
    .sort();
  return {
    folder,
    pages,
    url: (page) => pathToFileURL(join(folder, page)).href,
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

/** One page of each kind: those at the top each, and the first of every folder. */
export function oneOfEachKind(pages: readonly string[]): string[] {
  const kinds = new Map<string, string>();
  for (const page of pages) {
    const kind = page.includes('/') ? page.slice(0, page.indexOf('/')) : page;
    if (!kinds.has(kind)) kinds.set(kind, page);
  }
  return [...kinds.values()];
}
