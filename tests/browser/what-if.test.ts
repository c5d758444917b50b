// The what-if of an open choice, opened from its folder: by keyboard, aloud, in the address, on paper, and without.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { HtmlValidate } from 'html-validate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { demoSite, type Site } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';
import { expected, said } from './said-on-page.ts';

const CHOICE = 'choice/rear-fender-right.html';
let built: Site;
let browser: Browser;

beforeAll(async () => {
  [built, browser] = await Promise.all([demoSite(), openBrowser()]);
});
afterAll(() => browser?.close());

const open = async (hash = '', width = 1200) => {
  const context = await browser.newContext({ viewport: { width, height: 900 } });
  const page = await context.newPage();
  const found = troubles(page, pathToFileURL(built.folder).href);
  await page.goto(built.url(CHOICE) + hash);
  return { page, found };
};

const hours = (page: Page) =>
  page.getByRole('group', { name: 'Repair the original' }).getByRole('slider', { name: 'Hours' });

describe('without a script', () => {
  it('the choice reads whole, and nothing waits to be moved', async () => {
    const page = await browser.newPage({ javaScriptEnabled: false });
    await page.goto(built.url(CHOICE));
    expect(await said(page)).toEqual((await expected(page, {})).said);
    expect(await page.locator('#ranges svg:visible').count()).toBe(1);
    expect(await page.locator('input, button').filter({ visible: true }).count()).toBe(0);
    expect(await page.getByText('What if').isVisible()).toBe(false);
    await page.context().close();
  });
});

describe('with it, by keyboard', () => {
  it('table, sentences and figure follow a figure, in the words that the sums here give', async () => {
    const { page, found } = await open();
    const before = await said(page);
    expect(await hours(page).getAttribute('aria-valuetext')).toBe('33 h');
    await hours(page).focus();
    for (let press = 0; press < 7; press++) await page.keyboard.press('ArrowRight');
    await page.waitForFunction(() => location.hash !== '');
    const { said: words, title } = await expected(page, { 'repair.hours': 40 });
    expect(await said(page)).toEqual(words);
    expect(words.figures['repair.cost']).not.toBe(before.figures['repair.cost']);
    expect(words.sentences).not.toEqual(before.sentences);
    expect(await page.locator('#ranges canvas:visible').getAttribute('aria-label')).toBe(title);
    expect(await page.locator('#ranges svg').count()).toBe(0);
    expect(await hours(page).getAttribute('aria-valuetext')).toBe('40 h');
    expect(await page.locator('output', { hasText: '40 h' }).isVisible()).toBe(true);
    await page.context().close();
    expect(found).toEqual([]);
  });

  it('what comes of it is read aloud, and stands in the address', async () => {
    const { page } = await open();
    await hours(page).focus();
    await page.keyboard.press('ArrowLeft');
    await page.waitForFunction(() => location.hash !== '');
    expect(await page.evaluate(() => location.hash)).toBe('#repair.hours=32');
    const cost = await page.locator('[data-said="repair.cost"]').textContent();
    const aloud = await page.locator('[aria-live="polite"]').allTextContents();
    expect(aloud.join(' ')).toContain(`Expected cost: Repair the original ${cost};`);
    await page.keyboard.press('ArrowRight');
    await page.waitForFunction(() => location.hash === '');
    await page.context().close();
  });

  it('a button puts every word of the build back', async () => {
    const { page } = await open();
    const shown = () =>
      page.evaluate(() =>
        ['table.opts', '#ranges', '#said', '#turns', '#ranges-table'].map(
          (place) => document.querySelector(place)?.innerHTML,
        ),
      );
    const before = await shown();
    await hours(page).focus();
    await page.keyboard.press('End');
    await page.getByRole('slider', { name: 'An hour' }).focus();
    await page.keyboard.press('Home');
    await page.waitForFunction(() => location.hash !== '');
    expect(await shown()).not.toEqual(before);
    await page.getByRole('button', { name: 'Back to the record’s figures' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => location.hash === '');
    expect(await shown()).toEqual(before);
    expect(await hours(page).getAttribute('aria-valuetext')).toBe('33 h');
    await page.context().close();
  });
});

describe('the address', () => {
  it('opens the sheet as it was moved, and takes no notice of what is no move', async () => {
    const { page, found } = await open('#rate=96&repair.hours=40&used.fails=140&wages=3');
    expect(await said(page)).toEqual((await expected(page, { rate: 96, 'repair.hours': 40 })).said);
    expect(await page.locator('#moved').textContent()).toBe(
      'With: an hour at $96.00; Hours: Repair the original 40 h. All else stands as the record has it.',
    );
    await page.evaluate(() => {
      location.hash = '#main';
    });
    await page.evaluate(() => {
      location.hash = '#rate=60';
    });
    await page.waitForFunction(() => document.querySelector('output')?.textContent === '$60.00');
    expect(await said(page)).toEqual((await expected(page, { rate: 60 })).said);
    await page.context().close();
    expect(found).toEqual([]);
  });

  it('keeps the moves when the reader goes to a place on the page', async () => {
    const { page } = await open('#rate=96');
    const before = await said(page);
    await page.evaluate(() => {
      location.hash = '#main';
    });
    await page.waitForTimeout(100);
    expect(await said(page)).toEqual(before);
    expect(await page.getByRole('slider', { name: 'An hour' }).inputValue()).toBe('96');
    await page.context().close();
  });
});

describe('on paper', () => {
  it('a moved sheet says what was moved, without the sliders, on its one sheet', async () => {
    const { page } = await open('#rate=96&repair.hours=40');
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText('With: an hour at $96.00').filter({ visible: true }).count()).toBe(1);
    expect(await page.getByRole('slider').filter({ visible: true }).count()).toBe(0);
    expect(await page.getByText('What if', { exact: true }).isVisible()).toBe(false);
    await page.context().close();
  });

  it('a sheet as the record has it says nothing of it', async () => {
    const { page } = await open();
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText('With:').filter({ visible: true }).count()).toBe(0);
    await page.context().close();
  });
});

describe('the page with its sliders', () => {
  it.each([360, 1440])('can be used by everybody at %i px, before and after a move', async (width) => {
    const { page } = await open('', width);
    for (const keys of [[], ['End']]) {
      await hours(page).focus();
      for (const key of keys) await page.keyboard.press(key);
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    }
    await page.context().close();
  });

  it('has targets of 44 px on a phone, and doesn’t run over the edge', async () => {
    const { page } = await open('#rate=96&used.hours=30', 320);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    const heights = await page
      .locator('#what-if :is(input, button)')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThan(5);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
    await page.context().close();
  });

  it('is right as HTML', async () => {
    const checker = new HtmlValidate({ extends: ['html-validate:standard'] });
    const { results } = await checker.validateString(
      await readFile(join(built.folder, CHOICE), 'utf8'),
      CHOICE,
    );
    expect(results.flatMap(({ messages }) => messages)).toEqual([]);
  });
});

describe('the script', () => {
  it('is at most 90 kB packed, one classic file that names no folder of the machine it was built on', async () => {
    const script = await readFile(join(built.folder, 'script/what-if.js'), 'utf8');
    expect(gzipSync(script).length).toBeLessThanOrEqual(90_000);
    // A module's words would be a mistake of syntax here.
    expect(() => new Script(script)).not.toThrow();
    expect(script.includes(process.cwd())).toBe(false);
  });

  it('runs on pages of open choices alone', async () => {
    const { record } = await openFolder('content');
    const choices = (record?.choices ?? [])
      .filter(({ decided, withdrawn }) => !decided && !withdrawn)
      .map(({ id }) => `choice/${id}.html`);
    const texts = await Promise.all(
      built.pages.map(async (page) => [page, await readFile(join(built.folder, page), 'utf8')] as const),
    );
    const having = (what: RegExp) => texts.filter(([, text]) => what.test(text)).map(([page]) => page);
    expect(having(/script\/what-if\.js/)).toEqual(choices.sort());
    expect(choices).toContain(CHOICE);
    const others = having(/script\/(?:viewer|search)\.js/);
    expect(having(/<script|script-src/).filter((page) => !others.includes(page))).toEqual(choices);
  });
});
