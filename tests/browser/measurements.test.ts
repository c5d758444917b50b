// Measurements on a screen and on paper: drawings that can be read at any width, and pads on one sheet for the floor.
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSite, type Site } from './built.ts';
import { openBrowser } from './chromium.ts';

let built: Site;
let browser: Browser;

beforeAll(async () => {
  [built, browser] = await Promise.all([demoSite(), openBrowser()]);
});
afterAll(() => browser?.close());

/** Pages of a PDF: Chromium writes each as an object of its own. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length;

const SHEET = 'measured/pads.html';

describe('the sheet of pads', () => {
  it('is one sheet of Letter, with every mount, its stack and a box to tick', async () => {
    const page = await browser.newPage();
    await page.goto(built.url(SHEET));
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pagesOf(pdf)).toBe(1);
    // 8 1/2 by 11 in, in points
    expect(pdf.toString('latin1')).toMatch(/\/MediaBox\s*\[0 0 612 792\]/);
    await page.emulateMedia({ media: 'print' });
    const rows = page.locator('.fit tbody tr');
    expect(await rows.count()).toBe(10);
    expect(await page.getByRole('img', { name: 'a box to tick' }).count()).toBe(10);
    expect(await page.locator('figure.drawn svg:visible').count()).toBe(1);
    for (const mount of ['L1', 'R5'])
      expect(await page.getByRole('rowheader', { name: mount }).count()).toBe(1);
    await page.close();
  });
});

describe('a drawing to scale', () => {
  const onPage = async (width: number, path: string, look: (page: Page) => Promise<void>) => {
    const context = await browser.newContext({ viewport: { width, height: 800 } });
    const page = await context.newPage();
    await page.goto(built.url(path));
    await look(page);
    await context.close();
  };

  it.each([320, 360, 640, 900, 1440])(
    'has words of 11 px or more at %i px, and stands once',
    async (width) => {
      for (const path of ['measured/frame.html', 'measured/door-left.html', 'measurements.html', SHEET]) {
        await onPage(width, path, async (page) => {
          const seen = await page.locator('figure.drawn').evaluateAll((figures) =>
            figures.map((figure) => {
              const drawings = [...figure.querySelectorAll('svg')].filter(
                (svg) => svg.getBoundingClientRect().width > 0,
              );
              const [svg] = drawings;
              const box = svg?.viewBox.baseVal;
              const scale = svg && box ? svg.getBoundingClientRect().width / box.width : 0;
              return { count: drawings.length, px: 13 * scale };
            }),
          );
          expect(seen.length).toBeGreaterThan(0);
          expect(seen.filter(({ count, px }) => count !== 1 || px < 11)).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        });
      }
    },
  );

  it('has a title and a description, each its own, and a table in its section', async () => {
    const page = await browser.newPage();
    const paths = built.pages.filter((path) => path.startsWith('measured/'));
    expect(paths.length).toBeGreaterThan(10);
    for (const path of paths) {
      await page.goto(built.url(path));
      const lacking = await page.locator('figure.drawn').evaluateAll(
        (figures) =>
          figures.filter((figure) => {
            const said = [...figure.querySelectorAll('svg')].every((svg) =>
              (svg.getAttribute('aria-labelledby') ?? '')
                .split(' ')
                .every((id) => (document.getElementById(id)?.textContent ?? '').length > 5),
            );
            return !(said && figure.closest('section')?.querySelector('table'));
          }).length,
      );
      expect([path, lacking]).toEqual([path, 0]);
    }
    await page.close();
  });

  it.each([360, 1440])('can be used by everybody at %i px', async (width) => {
    for (const path of ['measured/frame.html', 'measured/door-left.html', SHEET]) {
      await onPage(width, path, async (page) => {
        const { violations } = await new AxeBuilder({ page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
          .analyze();
        expect(violations.map(({ id, nodes }) => [path, id, nodes[0]?.html.slice(0, 160)])).toEqual([]);
      });
    }
  });
});
