// The pages of each build: right as HTML, every one of them; and of every kind, at every width, usable by everybody.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { HtmlValidate } from 'html-validate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { moneyText } from '../../src/figures/money-text.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { demoSite, type Site } from './built.ts';
import { openBrowser } from './chromium.ts';
import { lookAtEach } from './crawl.ts';
import { everyKind, readSite } from './read-pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

describe.each(['shop', 'owner', 'history'] as const)('the pages for the %s', (audience) => {
  let site: Site;
  let kinds: string[];
  beforeAll(async () => {
    site = await demoSite(audience);
    kinds = everyKind(await readSite(browser, site));
  });

  it('are one for each day, part and choice of the record, and others', async () => {
    const { record } = await openFolder('content');
    const ids = [...(record?.entries ?? []), ...(record?.parts ?? []), ...(record?.choices ?? [])];
    expect(ids.length).toBeGreaterThan(200);
    const named = new Set(site.pages.map((page) => page.replace(/^.*\//, '').replace(/\.html$/, '')));
    expect(ids.filter(({ id }) => !named.has(id))).toEqual([]);
    expect(kinds.length).toBeGreaterThan(15);
  });

  it('are right as HTML, each of them', () => {
    const checker = new HtmlValidate({ extends: ['html-validate:standard'] });
    const found = site.pages.flatMap((path) => {
      const { results } = checker.validateStringSync(readFileSync(join(site.folder, path), 'utf8'), path);
      return results
        .flatMap(({ messages }) => messages)
        .map(({ line, ruleId, message }) => `${path}:${line} ${ruleId} ${message}`);
    });
    expect(found).toEqual([]);
  });

  it.each([320, 900, 1440])(
    'can be used by everybody at %i px, and don’t run over the edge',
    async (width) => {
      const root = new URL('.', site.url('index.html')).href;
      const kind = { viewport: { width, height: 800 }, reducedMotion: 'reduce' } as const;
      expect(await lookAtEach(browser, root, kinds, lookedAt, kind)).toEqual([]);
    },
  );
});

/** What keeps somebody from a page, and what runs over its edge, at the width it is opened at and one a little wider. */
async function lookedAt(page: Page, path: string): Promise<string[]> {
  const { width = 0, height = 0 } = page.viewportSize() ?? {};
  const { violations } = await new AxeBuilder({ page })
    // No page has a frame, so its results needn’t be put together from several.
    .setLegacyMode(true)
    // What passes isn’t listed element by element: on a page of a thousand rows that takes most of the time.
    .options({ resultTypes: ['violations'] })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const found = violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${path} ${id} ${html.slice(0, 160)}`),
  );
  for (const wider of [0, 40]) {
    await page.setViewportSize({ width: width + wider, height });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    if (wide > width + wider) found.push(`${path} is ${wide} px wide at ${width + wider} px`);
  }
  return found;
}

describe('the costs page', () => {
  it('shows the totals of the roll-up', async () => {
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo opens');
    const { total, agreed, paid } = rollUp(record);
    const page = await browser.newPage();
    await page.goto((await demoSite()).url('costs.html'));
    const text = await page.locator('main').textContent();
    await page.close();
    for (const amount of [total.charged, agreed, paid]) {
      expect(text).toContain(moneyText(amount, record.currency));
    }
  });
});
