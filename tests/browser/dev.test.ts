import { readdirSync, readFileSync, statSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { openBrowser } from './chromium.ts';
import { serve } from './served.ts';

const DAY = 'log/2025-03-03.md';
const ANOTHER = `---
hours:
  - { part: cowl, line: lead, work: metal, time: 2h }
---

Filled it.
`;
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

async function smallRecord(): Promise<string> {
  const folder = await emptyFolder();
  for (const [file, text] of Object.entries(SMALL)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
  return folder;
}

it('npm run dev shows what is saved, and a mistake with its place, without a restart', async () => {
  const folder = await smallRecord();
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

  // As an editor saves that writes beside and puts the file in place.
  await writeFile(join(folder, 'log/beside~'), right.replace('Stripped it.', 'Stripped it by hand.'));
  await rename(join(folder, 'log/beside~'), join(folder, DAY));
  await page.getByText('Stripped it by hand.').waitFor({ timeout: 40_000 });

  // A day that is new, in a folder that is new; then under another name; then gone.
  const says = (day: string) => fetch(new URL(`day/${day}.html`, address)).then((answer) => answer.text());
  const shown = (day: string) => expect.poll(() => says(day), { timeout: 40_000 });
  await mkdir(join(folder, 'log/2026'));
  const in2026 = (day: string) => join(folder, 'log/2026', `${day}.md`);
  await writeFile(in2026('2026-03-02'), ANOTHER);
  await shown('2026-03-02').toContain('Filled it.');
  await rename(in2026('2026-03-02'), in2026('2026-03-03'));
  await shown('2026-03-03').toContain('Filled it.');
  expect(await says('2026-03-02')).not.toContain('Filled it.');
  await rm(in2026('2026-03-03'));
  await shown('2026-03-03').not.toContain('Filled it.');
});

/** The inodes that a process has Linux tell it of, by the environment it was started with. */
function watchedBy(environment: string): Set<number> {
  const texts = readdirSync('/proc').flatMap((pid) => {
    try {
      if (!readFileSync(`/proc/${pid}/environ`, 'utf8').includes(environment)) return [];
      return readdirSync(`/proc/${pid}/fdinfo`).map((fd) =>
        readFileSync(`/proc/${pid}/fdinfo/${fd}`, 'utf8'),
      );
    } catch {
      // Not a process, one of somebody else, or one that has just ended.
      return [];
    }
  });
  return new Set(
    texts.flatMap((text) =>
      [...text.matchAll(/^inotify .*\bino:([0-9a-f]+)/gm)].map(([, inode = '']) =>
        Number.parseInt(inode, 16),
      ),
    ),
  );
}

it.runIf(process.platform === 'linux')(
  'npm run dev watches its sources, and not the thousands of pictures and pages that builds keep',
  async () => {
    const folder = await smallRecord();
    const kept = join('.cache', 'sites');
    await mkdir(kept, { recursive: true });
    await serve('dev', { RECORD: folder });
    const watches = (path: string) => watchedBy(`RECORD=${folder}\0`).has(statSync(path).ino);
    await expect.poll(() => watches('src/site/pages/part'), { timeout: 20_000 }).toBe(true);
    // What is watched is found within a moment of one another.
    await new Promise((later) => setTimeout(later, 2_000));
    expect(watches('.cache')).toBe(false);
    expect(watches(kept)).toBe(false);
  },
);
