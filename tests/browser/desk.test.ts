import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { DAY, FILE, FLAGS, recordBefore, TEXT } from '../commands/a-day.ts';
import { demoCopy, npmRun } from '../commands/run.ts';
import { demoSite } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';
import { serve } from './served.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

async function openDesk(folder: string, day: string): Promise<{ page: Page; found: string[] }> {
  const opened = await openAnew(folder, day);
  await opened.page.getByRole('heading', { name: 'What it comes to' }).waitFor();
  return opened;
}

/** A desk of its own and a browser that knows nothing yet. */
async function openAnew(folder: string, day: string): Promise<{ page: Page; found: string[] }> {
  const address = await serve('desk', { RECORD: folder });
  const context = await browser.newContext({ viewport: { width: 800, height: 1100 } });
  const page = await context.newPage();
  const found = troubles(page, new URL(address).origin);
  await page.goto(address);
  await page.goto(new URL(`/?day=${day}`, address).href);
  return { page, found };
}

/** Fills in the fields of a card by their keys; what is chosen from a list is chosen by its name in the record. */
async function fill(card: Locator, values: Record<string, string>): Promise<void> {
  for (const [key, value] of Object.entries(values)) {
    const field = card.locator(`[data-key="${key}"]`);
    if ((await field.evaluate((element) => element.tagName)) === 'SELECT') await field.selectOption(value);
    else await field.fill(value);
  }
}

it('writes a full day at the desk: the file a person would have written, and that npm run log writes', async () => {
  const folder = await demoCopy();
  const { page, found } = await openDesk(folder, DAY);
  const card = (name: string) => page.getByRole('group', { name });

  await page.getByLabel('Who worked').selectOption('tobias');
  await page.getByLabel('Or a part from the list').selectOption('carpets');
  await page.getByRole('button', { name: 'Add hours' }).click();
  const more = card('Hours 1').getByRole('button', { name: 'A quarter of an hour more' });
  await fill(card('Hours 1'), { line: 'make' });
  await fill(card('Hours 1'), { work: 'trim', note: 'last one bound, hole cut for the lever' });
  for (let quarter = 0; quarter < 10; quarter++) await more.click();
  // The top stands on the drawing; two parts lie there.
  await page
    .locator('.plan')
    .getByRole('button', { name: /Top irons/i })
    .click({ position: { x: 40, y: 40 } });
  await page
    .locator('.offered')
    .getByRole('button', { name: /Top irons/i })
    .click();
  await fill(card('Hours 2'), { work: 'trim', time: '1.5' });

  await page.getByRole('button', { name: 'Add a thing bought' }).click();
  await fill(card('Bought 1'), {
    what: 'Binding, 12 yd',
    from: 'marrow-lane',
    part: 'carpets',
    price: '1.35',
    count: '12',
    freight: '4.50',
    bill: '790',
  });
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await fill(card('Reading 1'), {
    part: 'frame',
    state: 'after',
    at: 'L3',
    reading: '0.2',
    within: '0.5°',
    over: '3 1/2"',
    note: 'read cold',
  });
  // A mistake is told while it stands.
  await card('Reading 1').getByText('Unexpected `0.2`').waitFor();
  await fill(card('Reading 1'), { reading: '0.2°' });
  await card('Reading 1').getByText('Unexpected').waitFor({ state: 'detached' });

  const drop = page.getByLabel('Drop pictures here, or choose them');
  await drop.setInputFiles(await Promise.all([picture('IMG_2001.jpg', 40), picture('IMG_2002.jpg', 200)]));
  await page.getByText('2 pictures brought in.').waitFor();
  await fill(card('Picture 1'), {
    caption: 'The last one, bound all round: no seam shows.',
    alt: 'A dark carpet on a bench.',
    part: 'carpets',
  });
  await fill(card('Picture 2'), {
    caption: 'Fitted.',
    alt: 'A floor, covered.',
    part: 'carpets',
    shows: 'after',
  });
  const shown = () =>
    page
      .locator('.thumb img')
      .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).naturalWidth));
  // Small pictures are 480 pixels wide at most.
  await expect.poll(shown, { timeout: 30_000 }).toEqual([480, 480]);
  await page.getByRole('checkbox', { name: /\(carpets\/make\)/ }).check();
  await page
    .getByLabel('What was found, what was done, and why')
    .fill('The carpets lie flat without a nail.');
  await page.getByText('Nothing is wrong.').waitFor();
  // 2 h 30 m and 1 h 30 m; the sentences are those of the log and of the forecast.
  await page
    .locator('.sums')
    .getByText(/^The day: 4 h 00 m, \$[\d,.]+ charged\.$/)
    .waitFor();
  await page
    .locator('.sums')
    .getByText(/^Added 4 h 00 m and \$/)
    .waitFor();
  await page
    .locator('.sums')
    .getByText(/is spent; the finish is likely at/)
    .waitFor();

  await page.getByRole('button', { name: 'See what will be written' }).click();
  const difference = page.getByRole('dialog').getByRole('region', { name: FILE });
  await difference.waitFor();
  const lines = TEXT.split('\n').slice(0, -1);
  expect(await difference.locator('ins').allTextContents()).toEqual(lines.map((line) => `+ ${line}\n`));
  await expect(readFile(join(folder, FILE))).rejects.toThrow();
  await page.getByRole('button', { name: 'Write it' }).click();
  await page.getByText(`Written: ${FILE}, which is new.`).waitFor();
  expect(await readFile(join(folder, FILE), 'utf8')).toBe(TEXT);

  const other = await recordBefore();
  expect((await npmRun('log', FLAGS, other)).code).toBe(0);
  expect(await readFile(join(other, FILE), 'utf8')).toBe(TEXT);
  expect(found).toEqual([]);
}, 240_000);

it('shows the day’s page as the site has it, and anew while it is open and something is typed', async () => {
  const folder = await demoCopy();
  const { page, found } = await openDesk(folder, '2025-11-21');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  const box = page.getByLabel('What was found, what was done, and why');
  const words = await box.inputValue();
  const typed = page.waitForResponse(/look$/);
  await box.fill(`${words} `);
  await typed;
  // Nothing is drawn for who doesn’t look.
  expect(asked).not.toContain('/preview');
  await page.getByText('The page of the day, as it will be drawn').click();
  const frame = page.locator('.drawn iframe');
  await frame.waitFor();
  const path = await frame.evaluate((one) => (one as HTMLIFrameElement).getAttribute('src') ?? '');
  const drawn = await page.evaluate(async (at) => (await fetch(at)).text(), path);
  const { folder: site } = await demoSite();
  const built = await readFile(join(site, 'day/2025-11-21.html'), 'utf8');
  expect(bare(drawn)).toBe(bare(built));

  await box.fill(`${words} Then the lamp was lit.`);
  // The page before stands until the new one is there.
  await page.frameLocator('.drawn iframe').last().getByText('Then the lamp was lit.').waitFor();
  await page.locator('.drawn iframe.coming').waitFor({ state: 'detached' });
  expect(await page.locator('.drawn iframe').count()).toBe(1);
  await page.getByRole('button', { name: 'See what will be written' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.frameLocator('iframe').getByText('Then the lamp was lit.').waitFor();
  await dialog.getByRole('button', { name: 'Back to the day' }).click();

  // Only the page’s own script runs at the desk; in what it shows, none does.
  const sandbox = await frame.first().evaluate((one) => (one as HTMLIFrameElement).sandbox.value);
  expect(sandbox).toBe('allow-same-origin');
  expect(found).toEqual([]);
}, 240_000);

/** A page without its scripts, what it says of itself to the browser, and white space between tags. */
function bare(html: string): string {
  return html
    .replaceAll(/<script\b[^>]*>[\s\S]*?<\/script>|<meta http-equiv[^>]*>/g, '')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/> (?=<)/g, '>')
    .replace(/^<!doctype/i, '<!DOCTYPE');
}

it('can be used by keyboard, with a screen reader and on a phone', async () => {
  const { page, found } = await openDesk(await demoCopy(), '2025-11-21');
  await page.getByRole('button', { name: 'Add a reading' }).press('Enter');
  await page.getByRole('button', { name: 'Cowl', exact: true }).press('Enter');
  // The new line has the focus, and the part that was chosen.
  await page.getByRole('group', { name: 'Hours 3' }).locator(':focus').waitFor();
  expect(await page.getByRole('group', { name: 'Hours 3' }).locator('[data-key=part]').inputValue()).toBe(
    'cowl',
  );
  await page.getByText('aren’t right yet').waitFor();
  for (const width of [360, 800, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    // At the end of the page the bar lies in its own place, over nothing.
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${width} ${id} ${html}`))).toEqual(
      [],
    );
  }
  expect(found).toEqual([]);
}, 120_000);

it('shows both when somebody else changed the file, and carries on what was new', async () => {
  const folder = await demoCopy();
  const path = join(folder, 'log/2025-11/2025-11-21.md');
  const { page } = await openDesk(folder, '2025-11-21');
  const text = await readFile(path, 'utf8');
  const box = page.getByLabel('What was found, what was done, and why');
  await box.fill(`${await box.inputValue()}\n\nMine.`);
  await writeFile(path, `${text.trimEnd()}\n\nTheirs.\n`);
  await page.getByRole('button', { name: 'See what will be written' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText('Somebody else changed the file').waitFor();
  expect(
    await dialog.getByRole('region', { name: 'What was done to it' }).locator('ins').allTextContents(),
  ).toContain('+ Theirs.\n');
  expect(
    await dialog
      .getByRole('region', { name: 'What you would have written' })
      .locator('ins')
      .allTextContents(),
  ).toContain('+ Mine.\n');
  await dialog.getByRole('button', { name: /carry mine on/ }).click();
  await page.getByText('Nothing is wrong.').waitFor();
  await page.getByRole('button', { name: 'See what will be written' }).click();
  await page.getByRole('button', { name: 'Write it' }).click();
  await page.getByText('Written: log/2025-11/2025-11-21.md.').waitFor();
  expect(await readFile(path, 'utf8')).toBe(`${text.trimEnd()}\n\nTheirs.\n\nMine.\n`);
}, 120_000);

it('offers what was typed and not written when the tab, the browser and the desk are gone', async () => {
  const folder = await demoCopy();
  const first = await openDesk(folder, '2025-11-21');
  const box = (page: Page) => page.getByLabel('What was found, what was done, and why');
  const words = await box(first.page).inputValue();
  await first.page
    .getByLabel('Drop pictures here, or choose them')
    .setInputFiles([await picture('IMG_3001.jpg', 90)]);
  await first.page.getByText('1 picture brought in.').waitFor();
  await box(first.page).fill(`${words}\n\nHalf a sentence`);
  await first.page.getByText(/^Kept at \d\d:\d\d, not written yet\.$/).waitFor();
  // Typed and left at once: it goes with the page.
  await box(first.page).fill(`${words}\n\nHalf a sentence more`);
  await first.page.goto('about:blank');
  await first.page.context().close();

  const { page, found } = await openAnew(folder, '2025-11-21');
  await page.getByText(/^What you typed at \d\d:\d\d is still here/).waitFor();
  await page.getByText('Its picture lies in photos/2025-11-21 and stays there').waitFor();
  const typed = page.getByRole('region', { name: 'What you typed' });
  expect(await typed.locator('ins').allTextContents()).toContain('+ Half a sentence more\n');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  await page.getByRole('button', { name: 'Go on with it' }).click();
  expect(await box(page).inputValue()).toBe(`${words}\n\nHalf a sentence more`);

  // Nothing is typed since, so it is still offered, and can be thrown away; the picture stays.
  await page.reload();
  await page.getByRole('button', { name: 'Throw it away' }).click();
  expect(await box(page).inputValue()).toBe(words);
  await page.getByRole('button', { name: 'IMG_3001.jpg lies there: say what it shows' }).waitFor();
  await page.reload();
  await page.getByRole('heading', { name: 'What it comes to' }).waitFor();
  expect(found).toEqual([]);
}, 240_000);

it('is read without script', async () => {
  const address = await serve('desk', { RECORD: await demoCopy() });
  const page = await browser.newPage({ javaScriptEnabled: false });
  await page.goto(address);
  await page.goto(new URL('/?day=2025-11-21', address).href);
  await page.getByText('sheet to the 20th, what is left').waitFor();
  await page.getByText('Writing here needs script.').waitFor();
}, 120_000);

async function picture(name: string, light: number) {
  const background = { r: light, g: light, b: 90 };
  const buffer = await sharp({ create: { width: 640, height: 480, channels: 3, background } })
    .jpeg()
    .toBuffer();
  return { name, mimeType: 'image/jpeg', buffer };
}
