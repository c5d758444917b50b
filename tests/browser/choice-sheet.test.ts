// The sheet that an owner decides on: one sheet of paper, whole, and in words that rank nothing.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { demoSite, type Site } from './built.ts';
import { openBrowser } from './chromium.ts';

let built: Site;
let browser: Browser;

beforeAll(async () => {
  [built, browser] = await Promise.all([demoSite(), openBrowser()]);
});
afterAll(() => browser?.close());

const openChoices = async () => {
  const { record } = await openFolder('content');
  return (record?.choices ?? []).filter(({ decided, withdrawn }) => !decided && !withdrawn);
};

/** Pages of a PDF: Chromium writes each as an object of its own. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length;

describe('an open choice', () => {
  it('fits one sheet of paper, with room to sign', async () => {
    const choices = await openChoices();
    expect(choices.length).toBeGreaterThan(1);
    for (const { id } of choices) {
      const page = await browser.newPage();
      await page.goto(built.url(`choice/${id}.html`));
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
      expect([id, pagesOf(pdf)]).toEqual([id, 1]);
      await page.emulateMedia({ media: 'print' });
      expect(await page.getByText('Signed, for the owner').isVisible()).toBe(true);
      expect(await page.getByText('Asked of the owner.').isVisible()).toBe(true);
      await page.close();
    }
  });

  it('shows each option, its expected cost, and the sentences about them', async () => {
    const [choice] = (await openChoices()).filter(({ id }) => id === 'rear-fender-right');
    const page = await browser.newPage({ javaScriptEnabled: false });
    await page.goto(built.url('choice/rear-fender-right.html'));
    for (const { option } of choice?.options ?? []) {
      expect(await page.locator(`[data-said="${option}.cost"]`).textContent()).toMatch(
        /^\$\d,\d00$|^\$\d,\d\d0$/,
      );
      expect(await page.locator(`[data-said="${option}.cheapest"]`).textContent()).toMatch(/^\d+ of 100$/);
    }
    expect(await page.locator('#said strong').allInnerTexts()).toEqual([
      'Cheapest.',
      'The answer turns',
      'What swings it most:',
      'A trial.',
    ]);
    expect(await page.locator('#ranges svg[role="img"]:visible').count()).toBe(1);
    await page.close();
  });
});

describe('every choice', () => {
  it('is never told which way is best: the words are figures and where they turn', async () => {
    const page = await browser.newPage({ javaScriptEnabled: false });
    const ours: string[] = [];
    for (const path of built.pages.filter((each) => each.startsWith('choice/'))) {
      await page.goto(built.url(path));
      ours.push(...(await page.locator('#said p, #ranges figcaption, .opts [data-said]').allTextContents()));
    }
    await page.close();
    expect(ours.length).toBeGreaterThan(50);
    expect(ours.filter((text) => /\b(best|recommend|winner)/i.test(text))).toEqual([]);
  });
});
