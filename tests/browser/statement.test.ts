// Statements on paper, read back from the printed sheets: numbered, heads repeated, nothing torn from what it belongs to.
import type { Browser, Page } from 'playwright-core';
import { extractText, getDocumentProxy } from 'unpdf';
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

const statements = () => built.pages.filter((page) => page.startsWith('statement/'));

/** The lines of each printed sheet, in the order of the sheet, and its size in points. */
async function printed(page: Page, format: 'Letter' | 'A4'): Promise<{ sheets: string[][]; size: number[] }> {
  const pdf = await page.pdf({ format, preferCSSPageSize: false });
  const size = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(pdf.toString('latin1'));
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return {
    sheets: text.map((sheet) => sheet.split('\n').map((line) => line.trim())),
    size: [Number(size?.[1]), Number(size?.[2])].map(Math.round),
  };
}

/** What stands in the tables of the page: each row as the words of its cells. */
const tablesOf = (page: Page) =>
  page.evaluate(() => {
    const words = (row: Element) =>
      [...row.querySelectorAll('th, td')]
        .map((cell) =>
          [...cell.childNodes].find(({ textContent }) => textContent?.trim())?.textContent?.trim(),
        )
        .filter((text) => text)
        .join(' ');
    const all = (selector: string) => [...document.querySelectorAll(selector)].map(words);
    return {
      captions: [...document.querySelectorAll('caption')].map((caption) => caption.textContent ?? ''),
      heads: all('thead tr').filter((text) => text !== ''),
      begins: all('tr.begins'),
      feet: all('tfoot tr'),
    };
  });

describe('the statements of the demo', () => {
  it('each have a page, and so has what isn’t issued yet', async () => {
    const { record } = await openFolder('content');
    const keys = [...(record?.statements ?? []).map(({ number }) => number), 'open'];
    expect(keys.length).toBeGreaterThan(8);
    expect(statements()).toEqual(keys.map((key) => `statement/${key}.html`));
  });

  it.each([
    ['Letter' as const, [612, 792]],
    ['A4' as const, [596, 843]],
  ])('print on numbered sheets of %s, with nothing torn from what it belongs to', async (format, size) => {
    const page = await browser.newPage();
    let continued = 0;
    for (const path of statements()) {
      await page.goto(built.url(path));
      const title = await page.locator('h1').textContent();
      const { captions, heads, begins, feet } = await tablesOf(page);
      const paper = await printed(page, format);
      expect([path, paper.size]).toEqual([path, size]);
      expect(paper.sheets.length).toBeGreaterThan(1);
      for (const [i, [foot = '', ...lines]] of paper.sheets.entries()) {
        const where = `${path}, sheet ${i + 1}`;
        expect([where, foot]).toEqual([
          where,
          `${i + 1} of ${paper.sheets.length}${title}, Aldermere Fourteen`,
        ]);
        const [first = '', second = ''] = lines;
        const last = lines.at(-1) ?? '';
        if (i > 0) {
          // A sheet begins with a table of its own or with the head of the one that goes on, and not with its sum alone.
          expect([where, first, [...captions, ...heads].includes(first)]).toEqual([where, first, true]);
          if (!captions.includes(first)) {
            continued += 1;
            expect([where, second, feet.includes(second)]).toEqual([where, second, false]);
          }
        }
        // No name of a table, no head, no day and no bill stands last, without what it is the head of.
        expect([where, last, [...captions, ...heads, ...begins].includes(last)]).toEqual([
          where,
          last,
          false,
        ]);
      }
    }
    expect(continued).toBeGreaterThan(10);
    await page.close();
  });

  it('part no day and no bill between two sheets', async () => {
    const page = await browser.newPage();
    await page.emulateMedia({ media: 'print' });
    for (const path of statements()) {
      await page.goto(built.url(path));
      const torn = await page.evaluate(
        () =>
          [...document.querySelectorAll('.stated :is(tbody:has(.begins), tr)')].filter(
            (part) => getComputedStyle(part).breakInside !== 'avoid',
          ).length,
      );
      expect([path, torn]).toEqual([path, 0]);
    }
    await page.close();
  });
});
