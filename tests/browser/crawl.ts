// Opens many pages, two at a time, in one window of a browser.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { troubles } from './chromium.ts';

type Look = (page: Page, path: string) => Promise<string[]>;

/**
 * Opens every page below the address `root`, and resolves to what went wrong on any of them: errors, what is missing, and what
 * is asked for beyond `root`.
 */
export const crawl = (browser: Browser, root: string, pages: readonly string[]): Promise<string[]> =>
  openEach(browser, root, pages, {}, (page) => troubles(page, root));

/** Opens every page below the address `root`, and resolves to what `look` finds on them. */
export const lookAtEach = (
  browser: Browser,
  root: string,
  pages: readonly string[],
  look: Look,
  kind: BrowserContextOptions,
): Promise<string[]> => openEach(browser, root, pages, kind, () => [], look);

async function openEach(
  browser: Browser,
  root: string,
  pages: readonly string[],
  kind: BrowserContextOptions,
  heardOn: (page: Page) => string[],
  look: Look = async () => [],
): Promise<string[]> {
  const context = await browser.newContext(kind);
  const left = [...pages];
  const inOneTab = async () => {
    const page = await context.newPage();
    const found = heardOn(page);
    for (let path = left.shift(); path !== undefined; path = left.shift()) {
      await page.goto(new URL(encodeURI(path), root).href, { waitUntil: 'load' });
      found.push(...(await look(page, path)));
    }
    return found;
  };
  const found = await Promise.all([inOneTab(), inOneTab()]);
  await context.close();
  return found.flat();
}
