// Markup in every field that takes words, in bodies, in the names of pictures and in what a camera wrote: looked for in
// every page that is built by a reader of HTML, and then opened in a browser that would hear it.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { splitFrontMatter } from '../../src/record/front-matter.ts';
import { sheets } from '../../src/record/schema/sheets.ts';
import { startHere } from '../../src/views/hand-over.ts';
import { MARKUP } from '../bad-input/markup.ts';
import { emptyFolderFor, npmRun } from '../commands/run.ts';
import { openDesk, TOKEN } from '../desk/at-desk.ts';
import { fieldsIn } from '../record/private.ts';
import { type Built, buildSite } from './built.ts';
import { openBrowser } from './chromium.ts';
import { injectedRecord, wordFields, writeInjected } from './injected-record.ts';
import { plantedIn, trapIn } from './planted-markup.ts';

const AUDIENCES = ['shop', 'owner', 'history'] as const;
const SCRIPT = '<script>hit()</script>';

const built = new Map<string, Built>();
let record: Awaited<ReturnType<typeof emptyFolderFor>>;
let browser: Browser;

beforeAll(async () => {
  record = await emptyFolderFor('injected');
  await writeInjected(record.folder);
  const issued = await npmRun('statement', ['--to', '2025-03-31', '--issue'], record.folder);
  if (issued.code !== 0) throw new Error(issued.out + issued.err);
  for (const audience of AUDIENCES) built.set(audience, await buildSite(record.folder, audience));
  browser = await openBrowser();
}, 600_000);
afterAll(async () => {
  await browser?.close();
  for (const site of built.values()) await site.remove();
  await record?.remove();
});

const siteOf = (audience: string): Built => {
  const site = built.get(audience);
  if (!site) throw new Error(`no site for ${audience}`);
  return site;
};

describe('the record', () => {
  it('has markup in every field that takes words', async () => {
    const kinds = [
      ['car', /^car\.md$/],
      ['shop', /^shop\.md$/],
      ['part', /^parts\//],
      ['choice', /^choices\//],
      ['entry', /^log\//],
    ] as const;
    const texts = [...(await injectedRecord())].filter(([file]) => file.endsWith('.md'));
    const filled = texts.flatMap(([file, text]) => {
      const kind = kinds.find(([, name]) => name.test(file))?.[0] ?? '';
      return fieldsIn(splitFrontMatter(file, String(text)).values, kind);
    });
    const wanted = kinds.flatMap(([kind]) => wordFields(sheets[kind], kind));
    expect(wanted.length).toBeGreaterThan(60);
    // Heights are given by corners in this record; a mount has its own field of names.
    expect(wanted.filter((name) => !filled.includes(name))).toEqual(['entry measured points mount']);
  });

  it('is stated with its markup, too', () => {
    const [issued = ''] = readdirSync(join(record.folder, 'statements'));
    expect(readFileSync(join(record.folder, 'statements', issued), 'utf8')).toContain(SCRIPT);
  });
});

describe.each(AUDIENCES)('what the %s gets', (audience) => {
  it('holds no markup of a writer’s words, on any page', async () => {
    const { pages, url } = siteOf(audience);
    expect(pages.length).toBeGreaterThan(20);
    const reader = await browser.newPage();
    const found: string[] = [];
    let said = 0;
    for (const page of pages) {
      const html = await readFile(new URL(url(page)), 'utf8');
      if (html.includes('&lt;script') || html.includes('&#x3C;script') || html.includes('&#60;script'))
        said++;
      found.push(...(await plantedIn(reader, html)).map((what) => `${page} ${what}`));
    }
    await reader.close();
    expect(found).toEqual([]);
    // The words are there, as words.
    expect(said).toBeGreaterThan(pages.length / 3);
  }, 240_000);

  it('does nothing of its own in a browser, on any page', async () => {
    const { pages, url } = siteOf(audience);
    const context = await browser.newContext();
    const heard = await trapIn(context);
    const page = await context.newPage();
    const seen = new Set<string>();
    for (const path of pages) {
      const sum = createHash('sha256')
        .update(await readFile(new URL(url(path))))
        .digest('hex');
      if (seen.has(sum)) continue;
      seen.add(sum);
      await page.goto(url(path), { waitUntil: 'load' });
      const slider = page.locator('input[type=range]').first();
      if (await slider.count()) await slider.press('ArrowRight').catch(() => undefined);
    }
    await context.close();
    expect(heard).toEqual([]);
  }, 300_000);
});

describe('the page on top of a hand-over', () => {
  it('holds no markup of a writer’s words', async () => {
    const { record: opened } = await openFolder(record.folder, '2025-12-31');
    if (!opened) throw new Error('the record opens');
    const html = startHere({
      record: opened,
      made: '2025-12-31',
      sum: '0'.repeat(64),
      books: [{ file: 'book/book.pdf', says: 'The book.' }],
      originals: false,
      costs: false,
      unread: 0,
    });
    const reader = await browser.newPage();
    expect(await plantedIn(reader, html)).toEqual([]);
    await reader.close();
    expect(html).toContain('&lt;script');
  });
});

describe('the trap', () => {
  const opened = async (change: (html: string) => string) => {
    const { folder, url } = siteOf('shop');
    const html = await readFile(join(folder, 'index.html'), 'utf8');
    await writeFile(join(folder, 'planted.html'), change(html));
    const context = await browser.newContext();
    const heard = await trapIn(context);
    const page = await context.newPage();
    const found = await plantedIn(page, change(html));
    await page.goto(url('planted.html'), { waitUntil: 'load' });
    await context.close();
    return { heard, found };
  };
  const scripted = (html: string) => html.replace('</main>', `${SCRIPT}<img src=x onerror=hit()></main>`);

  it('hears a script that a page without a policy holds, and the reader finds it', async () => {
    const open = (html: string) => scripted(html).replace(/<meta[^>]*Content-Security-Policy[^>]*>/, '');
    const { heard, found } = await opened(open);
    expect(heard.filter((what) => what.endsWith(' says hit')).length).toBe(2);
    expect(found).toEqual(expect.arrayContaining(['has a script of hit()', 'img has onerror']));
  });

  it('hears the policy of a built page refuse the same script', async () => {
    const { heard } = await opened(scripted);
    expect(heard.filter((what) => what.includes('says hit'))).toEqual([]);
    expect(heard.filter((what) => what.includes('refused script-src')).length).toBeGreaterThan(0);
  });
});

describe('pages that write while they are read', () => {
  it('the search lists markup as words', async () => {
    const { url } = siteOf('shop');
    const context = await browser.newContext();
    const heard = await trapIn(context);
    const page = await context.newPage();
    await page.goto(url('search.html'));
    let listed = 0;
    let text = '';
    for (const words of ['script', 'onerror', 'javascript', ...MARKUP.slice(0, 12)]) {
      await page.locator('input[type=search]').fill(words);
      listed += await page.locator('.found li').count();
      text += await page.locator('.found').textContent();
      expect(await page.locator('.found *:not(li, a, span)').count()).toBe(0);
    }
    expect(listed).toBeGreaterThan(10);
    expect(text).toContain(SCRIPT);
    await context.close();
    expect(heard).toEqual([]);
  });

  it('the desk shows the record’s words, and a form filled with markup, as words', async () => {
    const { host } = await openDesk(record.folder);
    const context = await browser.newContext();
    const heard = await trapIn(context, `http://${host}`);
    const page = await context.newPage();
    await page.goto(`http://${host}/?token=${TOKEN}&day=2025-03-03`, { waitUntil: 'load' });
    expect(await plantedIn(page, await page.content())).toEqual([]);
    for (const field of await page.locator('main textarea:visible, main input[type=text]:visible').all()) {
      await field.fill(`"><img src=x onerror=hit()>${SCRIPT}`).catch(() => undefined);
    }
    await page.waitForLoadState('networkidle');
    expect(await plantedIn(page, await page.content())).toEqual([]);
    expect(await page.locator('body').textContent()).toContain('<img');
    await context.close();
    expect(heard).toEqual([]);
  });
});
