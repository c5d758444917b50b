// Every build opens from a folder, below a path of a web host and at its root: the same bytes, and nothing from elsewhere.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSite, type Site } from './built.ts';
import { openBrowser } from './chromium.ts';
import { crawl } from './crawl.ts';
import { hosted } from './host.ts';
import { everyKind, type Read, readSite } from './read-pages.ts';
import {
  filesNamed,
  filesNamedInStyle,
  there,
  wouldBreak,
  wouldBreakInScript,
  wouldBreakInStyle,
} from './would-break.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

/** The licenses of the fonts go where the fonts go. */
const KNOWN = ['style/fonts/OFL-Besley.txt', 'style/fonts/OFL-SourceSans3.txt'];

describe.each(['shop', 'owner', 'history'] as const)('the build for the %s', (audience) => {
  let site: Site;
  let pages: Map<string, Read>;
  beforeAll(async () => {
    site = await demoSite(audience);
    pages = await readSite(browser, site);
  });

  const text = (file: string) => readFileSync(join(site.folder, file), 'utf8');

  it('names nothing that would break elsewhere, and every link leads to a file and a place that are there', () => {
    const all = there(site.files, pages);
    const found = site.files.flatMap((file) => {
      const page = pages.get(file);
      if (page) return wouldBreak(file, page, all);
      if (file.endsWith('.css')) return wouldBreakInStyle(file, text(file), all);
      return file.endsWith('.js') ? wouldBreakInScript(file, text(file)) : [];
    });
    expect(found).toEqual([]);
  });

  it('holds nothing that can’t be come to from its first page', () => {
    const reached = new Set(['index.html']);
    for (const file of reached) {
      const page = pages.get(file);
      if (page) for (const to of filesNamed(file, page)) reached.add(to);
      if (file.endsWith('.css')) for (const to of filesNamedInStyle(file, text(file))) reached.add(to);
    }
    expect(site.files.filter((file) => !reached.has(file) && !KNOWN.includes(file))).toEqual([]);
  });

  it('is read page by page from its folder, in silence', async () => {
    expect(await crawl(browser, new URL('.', site.url('index.html')).href, site.pages)).toEqual([]);
  });

  it.each(['/x/y/', '/'])('is read from %s of a web host, in silence', async (below) => {
    // The history is what is put on a host, below a path as a rule: of it, every page.
    const read = audience === 'history' && below !== '/' ? site.pages : everyKind(pages);
    expect(await hosted(below, site.folder, (root) => crawl(browser, root, read))).toEqual([]);
  });
});
