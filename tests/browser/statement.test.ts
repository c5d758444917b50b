// Statements on paper: numbered sheets of either size, heads repeated, no day and no bill parted.
import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, buildDemo } from './built.ts';
import { openBrowser } from './chromium.ts';

let built: Built;
let browser: Browser;
let statements: string[];

beforeAll(async () => {
  [built, browser] = await Promise.all([buildDemo(), openBrowser()]);
  statements = built.pages.filter((page) => page.startsWith('statement/'));
}, 180_000);
afterAll(async () => {
  await browser?.close();
  await built?.remove();
});

/** Sheets of a PDF and their size in points: Chromium writes each sheet as an object of its own. */
function sheetsOf(pdf: Buffer) {
  const text = pdf.toString('latin1');
  const size = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(text);
  return {
    sheets: text.match(/\/Type\s*\/Page\b/g)?.length ?? 0,
    size: [Number(size?.[1]), Number(size?.[2])].map(Math.round),
  };
}

/** Pixels of a sheet's height that the page's parts take, at 96 to the inch, less the margins of the style sheet. */
const WITHIN = { Letter: (11 - 0.6 - 0.8) * 96, A4: (297 / 25.4 - 0.6 - 0.8) * 96 };

/** Heights of what may not be parted, on paper as wide as a Letter sheet between its margins. */
async function unparted(page: Page) {
  await page.setViewportSize({ width: Math.round((8.5 - 1.3) * 96), height: 900 });
  await page.emulateMedia({ media: 'print' });
  return page.evaluate(() => {
    const style = (element: Element) => getComputedStyle(element);
    const parts = [...document.querySelectorAll('.stated :is(tbody:has(.begins), tr)')];
    return {
      parted: parts.filter((part) => style(part).breakInside !== 'avoid').length,
      highest: Math.max(0, ...parts.map((part) => part.getBoundingClientRect().height)),
      heads: [...document.querySelectorAll('.stated thead')].map((head) => style(head).display),
      feet: [...document.querySelectorAll('.stated tfoot')].map((foot) => style(foot).breakBefore),
      wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      paper: style(document.body).getPropertyValue('page'),
    };
  });
}

describe('a statement', () => {
  it('is there for what isn’t issued yet', () => {
    expect(statements).toContain('statement/open.html');
  });

  it.each([
    ['Letter' as const, [612, 792]],
    ['A4' as const, [596, 843]],
  ])(
    'prints on sheets of %s as on any other',
    async (format, size) => {
      const page = await browser.newPage();
      for (const path of statements) {
        await page.goto(built.url(path));
        const printed = sheetsOf(await page.pdf({ format, preferCSSPageSize: false }));
        expect([path, printed.size]).toEqual([path, size]);
        const lines = await page.locator('.stated tr').count();
        // A sheet holds some twenty lines with their notes; a sheet left empty would show as one more.
        expect(printed.sheets).toBeLessThanOrEqual(2 + Math.ceil(lines / 20));
      }
      await page.close();
    },
    60_000,
  );

  it('repeats its heads, parts no day and no bill, and keeps each sum with what it sums', async () => {
    const page = await browser.newPage();
    for (const path of statements) {
      await page.goto(built.url(path));
      const { parted, highest, heads, feet, wide, paper } = await unparted(page);
      expect([path, parted, wide, paper]).toEqual([path, 0, 0, 'sheet']);
      expect(new Set(heads)).toEqual(new Set(['table-header-group']));
      expect(new Set(feet)).toEqual(new Set(['avoid']));
      expect(highest).toBeLessThan(WITHIN.A4);
      expect(highest).toBeLessThan(WITHIN.Letter);
    }
    await page.close();
  }, 60_000);

  // Only a browser that knows the boxes in a sheet's margin keeps the rules for them.
  it('numbers its sheets, and names itself at the foot of each', async () => {
    const page = await browser.newPage();
    for (const path of statements) {
      await page.goto(built.url(path));
      const title = await page.locator('h1').textContent();
      const own = await boxesOf(page, await page.locator('head style').allTextContents());
      expect(own).toEqual([`bottom-left { content: "${title}, Aldermere Fourteen"; }`]);
    }
    const [left = '', right = ''] = await boxesOf(page, [
      await readFile('public/style/statement.css', 'utf8'),
    ]);
    expect(left).toMatch(/^bottom-left \{/);
    expect(right).toMatch(/^bottom-right \{.*content: counter\(page\) " of " counter\(pages\);/s);
    await page.close();
  });
});

/** The margin boxes of a sheet that the browser reads from style sheets, without the sign before their names. */
function boxesOf(page: Page, texts: readonly string[]): Promise<string[]> {
  return page.evaluate((all) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(all.join('\n'));
    return [...sheet.cssRules]
      .filter((rule) => rule instanceof CSSPageRule)
      .flatMap((rule) => [...(rule as unknown as CSSGroupingRule).cssRules])
      .map(({ cssText }) => cssText.replace(/^@/, ''));
  }, texts);
}
