import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, buildSite, demoSite } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';
import { IN_JUNE, picturedRecord, WORDLESS } from './pictured-record.ts';

const MONTH = 'photos/2025-06.html';
const PAIRS = 'photos/pairs.html';
let made: Awaited<ReturnType<typeof picturedRecord>>;
let built: Built;
let browser: Browser;

beforeAll(async () => {
  made = await picturedRecord();
  [built, browser] = await Promise.all([buildSite(made.folder), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await built?.remove();
  await made?.remove();
});

/** Opens a page of the test record from its folder, in a browser of its own kind. */
async function opened(path: string, kind: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...kind });
  const page = await context.newPage();
  await page.goto(built.url(path));
  return page;
}

const links = (page: Page) => page.locator('a[data-shot]');
const viewer = (page: Page) => page.locator('dialog.viewer');
const plain = async (text: Promise<string | null>) => (await text)?.replace(/\s+/g, ' ').trim();
const counted = (page: Page) => viewer(page).locator('[aria-live]').first().textContent();
const pictureIn = (page: Page) => viewer(page).locator('img');

describe('the viewer, from a folder', () => {
  it('is opened, turned and closed by keys, and leaves the reader at the picture last seen', async () => {
    const page = await opened(MONTH);
    const found = troubles(page, new URL('.', built.url('index.html')).href);
    await links(page).first().focus();
    await page.keyboard.press('Enter');
    expect(await viewer(page).isVisible()).toBe(true);
    const turned: (string | null)[] = [await counted(page)];
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowLeft', 'Home', 'ArrowLeft', 'End', 'ArrowRight']) {
      await page.keyboard.press(key);
      turned.push(await counted(page));
    }
    expect(turned).toEqual(['1', '2', '3', '2', '1', '1', '60', '60'].map((number) => `${number} of 60`));
    const last = links(page).nth(59);
    await page.waitForFunction(() => {
      const image = document.querySelector<HTMLImageElement>('dialog.viewer img');
      return image?.complete && image.naturalWidth === 533;
    });
    expect(await pictureIn(page).getAttribute('src')).toBe(
      await last.evaluate((link: HTMLAnchorElement) => link.href),
    );
    expect(await pictureIn(page).getAttribute('alt')).toBe(await last.locator('img').getAttribute('alt'));
    await page.keyboard.press('Escape');
    expect(await viewer(page).isVisible()).toBe(false);
    // The dialog tells of its end a moment after it is gone.
    await page.waitForFunction((link) => link === document.activeElement, await last.elementHandle());
    expect(found).toEqual([]);
    await page.context().close();
  });

  it('says the caption, and leads to the day and the part', async () => {
    const page = await opened(MONTH);
    await links(page).nth(1).click();
    const caption = await plain(page.locator('.rows figcaption').nth(1).textContent());
    expect(`${await viewer(page).locator('.words').textContent()} June 2`).toBe(caption);
    const leads = viewer(page).locator('.where a');
    expect(await leads.allTextContents()).toEqual(['June 2, 2025', 'Cowl']);
    const [day, part] = await leads.evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    expect([day, part]).toEqual([built.url('day/2025-06-02.html'), built.url('part/cowl.html')]);
    await leads.first().click();
    await page.waitForURL(built.url('day/2025-06-02.html'));
    await page.context().close();
  });

  it('fetches the pictures on either side before they are asked for', async () => {
    const page = await opened(MONTH, { viewport: { width: 360, height: 740 } });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    const beside = await links(page).evaluateAll((all) =>
      [49, 51].map((i) => (all[i] as HTMLAnchorElement).href),
    );
    await links(page).nth(50).click();
    await expect.poll(() => beside.every((url) => asked.includes(url))).toBe(true);
    await page.context().close();
  });

  it('leaves a click with a key held to the browser', async () => {
    const page = await opened(MONTH);
    // What the browser does with it, such as a new tab, is its own: here it is kept from it.
    await page.evaluate(() => {
      window.addEventListener('click', (event) => {
        document.body.dataset.left = String(!event.defaultPrevented);
        event.preventDefault();
      });
    });
    const left = () => page.evaluate(() => document.body.dataset.left);
    await links(page)
      .first()
      .click({ modifiers: ['ControlOrMeta'] });
    expect(await left()).toBe('true');
    expect(await viewer(page).isVisible()).toBe(false);
    await links(page).first().click();
    expect(await left()).toBe('false');
    expect(await viewer(page).isVisible()).toBe(true);
    await page.context().close();
  });

  it('turns by a stroke of a finger, and not by one up or down', async () => {
    const page = await opened(MONTH, {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    });
    await links(page).first().tap();
    const touch = await page.context().newCDPSession(page);
    const stroke = async (x: number, y: number) => {
      const at = (share: number) => [{ x: 180 + x * share, y: 300 + y * share }];
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
      for (const share of [0.25, 0.5, 0.75, 1]) {
        await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(share) });
      }
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      return counted(page);
    };
    expect(await stroke(-120, 10)).toBe('2 of 60');
    expect(await stroke(-120, 0)).toBe('3 of 60');
    expect(await stroke(120, -10)).toBe('2 of 60');
    expect(await stroke(20, 200)).toBe('2 of 60');
    expect(await stroke(-20, 0)).toBe('2 of 60');
    await page.context().close();
  });

  it.each(['reduce', 'no-preference'] as const)(
    'moves nothing for who asks for that: %s',
    async (reducedMotion) => {
      const page = await opened(MONTH, { reducedMotion });
      await links(page).first().click();
      const animation = await pictureIn(page).evaluate((image) => getComputedStyle(image).animationName);
      expect(animation === 'none').toBe(reducedMotion === 'reduce');
      await page.context().close();
    },
  );

  it.each([320, 1440])('can be used by everybody at %i px', async (width) => {
    const page = await opened(MONTH, { viewport: { width, height: 740 }, reducedMotion: 'reduce' });
    await links(page).nth(4).click();
    const { violations } = await new AxeBuilder({ page }).include('dialog.viewer').analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    const over = await viewer(page).evaluate((dialog) => dialog.scrollWidth - dialog.clientWidth);
    expect(over).toBe(0);
    const box = await pictureIn(page).boundingBox();
    expect(box && box.x >= 0 && box.x + box.width <= width && box.height > 200).toBe(true);
    await page.context().close();
  });
});

describe('without a script', () => {
  it('a picture’s link opens the large picture, and pairs stand side by side alone', async () => {
    const page = await opened(PAIRS, { javaScriptEnabled: false });
    expect(await page.locator('.against img:visible').count()).toBe(2);
    expect(await page.locator('.slide:visible').count()).toBe(0);
    expect(await viewer(page).isVisible()).toBe(false);
    await links(page).first().click();
    await page.waitForURL(/-large\.webp$/);
    await page.context().close();
  });
});

describe('a pair', () => {
  it('is compared by keys: the line moves, and is said', async () => {
    const page = await opened(PAIRS);
    const line = page.getByRole('slider', { name: 'Cowl side: Move the line' });
    const upper = page.locator('.slide img').nth(1);
    const seen = async () => [
      await line.getAttribute('aria-valuetext'),
      await upper.evaluate((image) => getComputedStyle(image).clipPath),
    ];
    await line.focus();
    expect(await seen()).toEqual(['Earlier 50%, later 50%', 'inset(0px 50% 0px 0px)']);
    await page.keyboard.press('ArrowRight');
    expect(await seen()).toEqual(['Earlier 51%, later 49%', 'inset(0px 49% 0px 0px)']);
    await page.keyboard.press('End');
    expect(await seen()).toEqual(['Earlier 100%, later 0%', 'inset(0px 0% 0px 0px)']);
    await page.keyboard.press('Home');
    expect(await seen()).toEqual(['Earlier 0%, later 100%', 'inset(0px 100% 0px 0px)']);
    await page.context().close();
  });

  it.each([360, 1440])('of a landscape and a portrait stands at one height at %i px', async (width) => {
    const page = await opened(PAIRS, { viewport: { width, height: 900 } });
    const boxes = await page
      .locator('.against img')
      .evaluateAll((images) =>
        images
          .map((image) => image.getBoundingClientRect())
          .map((box) => [box.top, box.height, box.width / box.height]),
      );
    const [[top = 0, height = 0, shape = 0] = [], [top2, height2 = 0, shape2 = 0] = []] = boxes;
    expect(top2).toBe(top);
    expect(Math.abs(height - height2)).toBeLessThan(1);
    // The pictures are 800 by 600 and 600 by 800.
    expect([shape, shape2].map((each) => each.toFixed(2))).toEqual(['1.33', '0.75']);
    const over = await page
      .locator('.slide img')
      .evaluateAll((images) =>
        images.map((image) => [
          JSON.stringify(image.getBoundingClientRect()),
          getComputedStyle(image).objectFit,
        ]),
      );
    expect(over[1]).toEqual(over[0]);
    expect(over[0]?.[1]).toBe('contain');
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBe(width);
    await page.context().close();
  });

  it.each([360, 1440])('can be used by everybody at %i px', async (width) => {
    const page = await opened(PAIRS, { viewport: { width, height: 900 } });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    await page.context().close();
  });
});

describe('a page of sixty pictures', () => {
  const textOf = (path: string) => readFile(fileURLToPath(built.url(path)), 'utf8');

  it('is under 40 kB of HTML, gzipped, with no script but the viewer, which is under 6 kB', async () => {
    const html = await textOf(MONTH);
    expect(html.match(/<figure/g)?.length).toBe(60);
    expect(gzipSync(html).length).toBeLessThan(40_000);
    expect(html.match(/<script.*?<\/script>/g)).toEqual(['<script src="../script/viewer.js"></script>']);
    expect(gzipSync(await textOf('script/viewer.js')).length).toBeLessThan(6_000);
    expect((await textOf('photos/2025-06-2.html')).match(/<figure/g)?.length).toBe(IN_JUNE - 60);
  });

  it('allows its own script, and pages without pictures allow none', async () => {
    const said = async (path: string) => {
      const html = await textOf(path);
      const [policy = ''] = /(?<=Content-Security-Policy" content=")[^"]*/.exec(html) ?? [];
      return {
        path,
        policy: /script-src[^;]*/.exec(policy)?.[0],
        scripts: html.match(/<script/g)?.length ?? 0,
      };
    };
    for (const path of [MONTH, PAIRS, 'photos.html', 'day/2025-06-02.html', 'part/cowl.html']) {
      expect(await said(path)).toEqual({ path, policy: "script-src 'self'", scripts: 1 });
    }
    for (const path of ['day/2025-03-03.html', 'costs.html', 'days.html']) {
      expect(await said(path)).toEqual({ path, policy: undefined, scripts: 0 });
    }
  });

  it.each([
    [MONTH, 360],
    [MONTH, 900],
    [MONTH, 1440],
    [PAIRS, 360],
    [PAIRS, 1440],
    ['part/cowl.html', 1440],
    ['day/2025-06-02.html', 360],
  ])('moves nothing as it comes in: %s at %i px', async (path, width) => {
    const context = await browser.newContext({ viewport: { width, height: 800 } });
    await context.addInitScript(() => {
      const shifts: number[] = [];
      Object.assign(window, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries())
          shifts.push((entry as PerformanceEntry & { value: number }).value);
      }).observe({ type: 'layout-shift', buffered: true });
    });
    const page = await context.newPage();
    await page.goto(built.url(path));
    const lazy = page.locator('main img');
    for (const image of await lazy.all()) {
      await image.scrollIntoViewIfNeeded();
      await image.evaluate((one: HTMLImageElement) => one.decode());
    }
    expect(
      await lazy.evaluateAll((all) => all.every((one) => (one as HTMLImageElement).naturalWidth > 0)),
    ).toBe(true);
    const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
    expect(shifts).toEqual([]);
    await context.close();
  });

  it('lays its rows at even heights that fill the column', async () => {
    const page = await opened(MONTH);
    const rows = await page.locator('.rows .shots').evaluateAll((all) =>
      all.map((row) => ({
        heights: [...row.querySelectorAll('img')].map((image) => image.getBoundingClientRect().height),
        empty:
          row.getBoundingClientRect().right -
          Math.max(...[...row.querySelectorAll('img')].map((image) => image.getBoundingClientRect().right)),
      })),
    );
    expect(rows.length).toBeGreaterThan(10);
    for (const { heights } of rows) expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(1);
    for (const { empty } of rows.slice(0, -1)) expect(Math.abs(empty)).toBeLessThan(1);
    await page.context().close();
  });

  it('stands in one column on a phone', async () => {
    const page = await opened(MONTH, { viewport: { width: 360, height: 740 } });
    const lefts = await page
      .locator('.rows img')
      .evaluateAll((all) => [
        ...new Set(
          all.map((image) => image.getBoundingClientRect()).map(({ left, width }) => `${left} ${width}`),
        ),
      ]);
    expect(lefts).toEqual(['16 328']);
    await page.context().close();
  });
});

describe('pictures without words', () => {
  it('say so plainly, and are listed with their entry', async () => {
    const page = await opened('photos.html');
    const list = page.locator('section', {
      has: page.getByRole('heading', { name: 'Pictures without words' }),
    });
    expect(await list.textContent()).toContain(`${WORDLESS.length} photographs lack words.`);
    expect(await list.locator('tbody tr').allInnerTexts()).toEqual([
      ['June 2, 2025', WORDLESS.join(', '), WORDLESS.join(', ')].join('\t'),
    ]);
    await page.goto(built.url(MONTH));
    const figure = page.locator('.rows figure').nth(3);
    expect(await plain(figure.locator('figcaption').textContent())).toBe('No words yet. June 2');
    expect(await figure.locator('img').getAttribute('alt')).toBe('Photograph without words yet');
    await page.context().close();
  });
});

describe('the demo', () => {
  it('shows pictures upright that the camera wrote on their side', async () => {
    const demo = await demoSite();
    for (const [month, camera] of [
      ['2025-08', 'content/photos/2025-08-20/IMG_1103.jpg'],
      ['2025-09', 'content/photos/2025-09-16/IMG_1111.jpg'],
    ] as const) {
      expect((await sharp(camera).metadata()).orientation).toBe(6);
      const html = await readFile(join(demo.folder, `photos/${month}.html`), 'utf8');
      const day = camera.slice('content/photos/'.length, -'/IMG_1103.jpg'.length);
      const [, file = '', width, height] =
        new RegExp(
          `<figure id="on-${day}"[^>]*>\\s*<a href="\\.\\./([^"]+)"[^]*?width="(\\d+)" height="(\\d+)"`,
        ).exec(html) ?? [];
      expect(Number(height)).toBeGreaterThan(Number(width));
      // Orientation 6 is mended by a quarter turn clockwise (CIPA DC-008, tag 0x0112).
      const upright = sharp(camera, { autoOrient: false }).rotate(90);
      const turned = await upright.resize(60, 80, { fit: 'fill' }).removeAlpha().raw().toBuffer();
      const shown = await sharp(join(demo.folder, file)).resize(60, 80, { fit: 'fill' }).raw().toBuffer();
      const off = shown.reduce((sum, value, i) => sum + Math.abs(value - (turned[i] ?? 0)), 0) / shown.length;
      expect(off).toBeLessThan(4);
    }
  });
});
