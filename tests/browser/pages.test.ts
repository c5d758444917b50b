import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { HtmlValidate } from 'html-validate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { moneyText } from '../../src/figures/money-text.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { demoSite, oneOfEachKind, type Site } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';

let built: Site;
let browser: Browser;

beforeAll(async () => {
  [built, browser] = await Promise.all([demoSite(), openBrowser()]);
}, 180_000);
afterAll(() => browser?.close());

/** What stands on a page that the rules below are about. */
const read = (page: Page) =>
  page.evaluate(() => ({
    headings: document.querySelectorAll('h1').length,
    lang: document.documentElement.lang,
    title: document.title,
    links: [...document.querySelectorAll('a[href]')].map(
      (link) => new URL(link.getAttribute('href') ?? '', document.baseURI).href,
    ),
    ids: [...document.querySelectorAll('[id]')].map(({ id }) => id),
  }));

describe('the built site, opened from its folder', () => {
  it('has a page for each day, part and choice of the record', async () => {
    const { record } = await openFolder('content');
    const ids = [...(record?.entries ?? []), ...(record?.parts ?? []), ...(record?.choices ?? [])];
    expect(ids.length).toBeGreaterThan(200);
    const named = new Set(built.pages.map((page) => page.replace(/^.*\//, '').replace(/\.html$/, '')));
    expect(ids.filter(({ id }) => !named.has(id))).toEqual([]);
  });

  it('opens every page in silence, each with one heading, and every link leads somewhere', async () => {
    const page = await browser.newPage();
    const found = troubles(page, pathToFileURL(built.folder).href);
    const seen = new Map<string, Awaited<ReturnType<typeof read>>>();
    for (const path of built.pages) {
      await page.goto(built.url(path), { waitUntil: 'load' });
      seen.set(built.url(path), await read(page));
    }
    await page.close();
    expect(found).toEqual([]);
    const odd = [...seen].filter(([, { headings, lang, title }]) => headings !== 1 || !lang || !title);
    expect(odd.map(([url]) => url)).toEqual([]);
    const dead = [...seen].flatMap(([url, { links }]) =>
      links.filter((link) => !leads(link, seen)).map((link) => `${url} → ${link}`),
    );
    expect(dead).toEqual([]);
  }, 180_000);
});

/** True when a link's file is there and, on one of our pages, so is the place after `#`. */
function leads(link: string, seen: ReadonlyMap<string, { ids: string[] }>): boolean {
  const { protocol, hash } = new URL(link);
  if (protocol !== 'file:') return protocol === 'https:' || protocol === 'mailto:';
  const url = link.slice(0, link.length - hash.length);
  if (!existsSync(fileURLToPath(url)) || url.endsWith('/')) return false;
  return (
    hash === '' || hash === '#' || (seen.get(url)?.ids.includes(decodeURIComponent(hash.slice(1))) ?? false)
  );
}

describe('one page of each kind', () => {
  const each = async (width: number, look: (page: Page, path: string) => Promise<string[]>) => {
    const context = await browser.newContext({ viewport: { width, height: 800 }, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const found: string[] = [];
    for (const path of oneOfEachKind(built.pages)) {
      await page.goto(built.url(path));
      found.push(...(await look(page, path)));
    }
    await context.close();
    return found;
  };

  it.each([360, 1440])(
    'can be used by everybody at %i px',
    async (width) => {
      const found = await each(width, async (page, path) => {
        const { violations } = await new AxeBuilder({ page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
          .analyze();
        return violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html }) => `${path} ${id} ${html.slice(0, 160)}`),
        );
      });
      expect(found).toEqual([]);
    },
    180_000,
  );

  it.each([320, 360, 1440])(
    'doesn’t run over the edge at %i px',
    async (width) => {
      const found = await each(width, async (page, path) => {
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        return wide > width ? [`${path} is ${wide} px wide`] : [];
      });
      expect(found).toEqual([]);
    },
    60_000,
  );

  it('is right as HTML', async () => {
    const checker = new HtmlValidate({ extends: ['html-validate:standard'] });
    const found: string[] = [];
    for (const path of oneOfEachKind(built.pages)) {
      const report = await checker.validateString(
        await readFile(fileURLToPath(built.url(path)), 'utf8'),
        path,
      );
      for (const { messages } of report.results) {
        found.push(...messages.map(({ line, ruleId, message }) => `${path}:${line} ${ruleId} ${message}`));
      }
    }
    expect(found).toEqual([]);
  });
});

describe('the costs page', () => {
  it('shows the totals of the roll-up', async () => {
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo opens');
    const { total, agreed, paid } = rollUp(record);
    const page = await browser.newPage();
    await page.goto(built.url('costs.html'));
    const text = await page.locator('main').textContent();
    await page.close();
    for (const amount of [total.charged, agreed, paid]) {
      expect(text).toContain(moneyText(amount, record.currency));
    }
  });
});
