// Opens many pages, two at a time, in one window of a browser.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { troubles } from './chromium.ts';

/**
 * Opens every page below the address `root`, and resolves to what went wrong on any of them: errors, what is missing, and what
 * is asked for beyond `root`. `look` sees each page once it is loaded, and adds what it finds.
 */
export async function crawl(
  browser: Browser,
  root: string,
  pages: readonly string[],
  look: (page: Page, path: string) => Promise<string[]> = async () => [],
  kind: BrowserContextOptions = {},
): Promise<string[]> {
  const context = await browser.newContext(kind);
  const left = [...pages];
  const inOneTab = async () => {
    const page = await context.newPage();
    const found = troubles(page, root);
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
