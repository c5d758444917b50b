import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { openBrowser } from './chromium.ts';
import { serve } from './served.ts';

const DAY = 'log/2025-03-03.md';
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

it('npm run dev shows what is saved, and a mistake with its place, without a restart', async () => {
  const folder = await emptyFolder();
  for (const [file, text] of Object.entries(SMALL)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
  const address = await serve('dev', { RECORD: folder });
  const page = await browser.newPage();
  await page.goto(new URL('day/2025-03-03.html', address).href);
  await page.getByText('Stripped it.').waitFor();

  const right = await readFile(join(folder, DAY), 'utf8');
  await writeFile(join(folder, DAY), right.replace('Stripped it.', 'Stripped it to bright metal.'));
  await page.getByText('Stripped it to bright metal.').waitFor({ timeout: 40_000 });

  await writeFile(join(folder, DAY), right.replace('3h 30m', '3.5x'));
  await page.getByText(`${DAY}:6:11`).first().waitFor({ timeout: 40_000 });
  expect(await page.locator('body').textContent()).toContain('Unexpected `3.5x`');

  await writeFile(join(folder, DAY), right);
  await page.getByText('Stripped it.').waitFor({ timeout: 40_000 });
  expect(await page.locator('body').textContent()).not.toContain('Unexpected');
});
