import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSite, type Site } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';

let built: Site;
let browser: Browser;

beforeAll(async () => {
  [built, browser] = await Promise.all([demoSite('history'), openBrowser()]);
});
afterAll(() => browser?.close());

describe('the page of the search, opened from its folder', () => {
  it('finds by keyboard and opens what it found, in silence', async () => {
    const page = await browser.newPage();
    const found = troubles(page, pathToFileURL(built.folder).href);
    await page.goto(built.url('search.html'));
    // The field has the focus.
    await page.keyboard.type('honeycomb core');
    const links = page.locator('.found a');
    const count = await links.count();
    expect(count).toBeGreaterThan(2);
    expect(await page.getByRole('status').textContent()).toBe(`${count} are found.`);
    expect(await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')))).toContain(
      'choice/radiator-core.html',
    );
    await page.keyboard.press('Enter');
    const title = await page.evaluate(() => document.activeElement?.textContent);
    expect(title).toBe(await links.first().textContent());
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/(?:day|part|choice)\/[^/]+\.html$/);
    await page.goBack();
    expect(await page.locator('input').inputValue()).toBe('honeycomb core');
    expect(await page.locator('.found a').count()).toBe(count);
    expect(found).toEqual([]);
    await page.close();
  });

  it('says when nothing is found', async () => {
    const page = await browser.newPage();
    await page.goto(built.url('search.html'));
    await page.keyboard.type('xylophone');
    expect(await page.getByRole('status').textContent()).toBe('Nothing is found for “xylophone”.');
    expect(await page.locator('.found li').count()).toBe(0);
    await page.close();
  });

  it('sends a reader without script to the months and the parts', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(built.url('search.html'));
    expect(await page.locator('form').isVisible()).toBe(false);
    const ways = await page
      .locator('.search-without a')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href')));
    expect(ways).toEqual(['days.html', 'parts.html']);
    await context.close();
  });
});
