// What the reading of a build's files is to find, each in a page that breaks in one way.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { openBrowser } from './chromium.ts';
import { crawl } from './crawl.ts';
import { readPage } from './read-pages.ts';
import { there, wouldBreak, wouldBreakInScript, wouldBreakInStyle } from './would-break.ts';

const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'">`;

let browser: Browser;
let reader: Page;
beforeAll(async () => {
  browser = await openBrowser();
  reader = await browser.newPage();
});
afterAll(() => browser?.close());

/** What is wrong with a page that stands beside a script, a style sheet, a picture and another page. */
async function wrongWith(html: string): Promise<string[]> {
  const page = await readPage(reader, html);
  const other = await readPage(reader, '<p id="at-y">y</p>');
  const pages = new Map([
    ['at/page.html', page],
    ['at/other.html', other],
  ]);
  const all = there([...pages.keys(), 'at/here.js', 'at/here.css', 'at/here.webp'], pages);
  return wouldBreak('at/page.html', page, all);
}

describe('what is looked for', () => {
  // One page each that breaks in one way, with the words that name it.
  it.each([
    ['<a href="/days.html">x</a>', 'a href /days.html is absolute'],
    ['<a href="day/">x</a>', 'a href day/ leads to no file'],
    ['<a href="http://example.org/">x</a>', 'a href http://example.org/ is another host’s'],
    ['<img src="https://example.org/a.webp">', 'img src https://example.org/a.webp is another host’s'],
    ['<img src="//example.org/a.webp">', 'img src //example.org/a.webp is another host’s'],
    ['<img srcset="here.webp 1x, gone.webp 2x">', 'img srcset gone.webp leads to no file'],
    ['<script type="module" src="here.js"></script>', 'script of type module'],
    ['<script>go()</script>', 'script in the page'],
    ['<script src="here.js" integrity="sha256-x"></script>', 'script has integrity'],
    ['<link rel="stylesheet" href="here.css" crossorigin>', 'link has crossorigin'],
    ['<base href="here.css">', 'has base'],
    ['<iframe></iframe>', 'has iframe'],
    ['<p onclick="go()">x</p>', 'p has onclick'],
    ['<a href="#y">x</a>', 'a href #y leads to no place there'],
    ['<a href="other.html#x">x</a>', 'a href other.html#x leads to no place there'],
    ['<h1>y</h1>', 'has 2 first headings'],
  ])('is found in %s', async (body, says) => {
    const inPage = `<!doctype html><html lang="en"><head><title>x</title>${policy}</head><body><h1 id="x">x</h1>${body}`;
    expect(await wrongWith(inPage)).toEqual([`at/page.html: ${says}`]);
  });

  it.each([
    ['', 'has no content-security policy'],
    ["default-src 'none'; script-src 'unsafe-inline'", "policy lets script-src be 'unsafe-inline'"],
    ["default-src 'none'; img-src https://example.org", 'policy lets img-src be https://example.org'],
    ["script-src 'self'", 'policy begins with something open'],
  ])('is found in the policy “%s”', async (content, says) => {
    const html = `<html lang="en"><title>x</title><meta http-equiv="Content-Security-Policy" content="${content}"><h1>x</h1>`;
    expect(await wrongWith(html)).toEqual([`at/page.html: ${says}`]);
  });

  it('isn’t found where all is there', async () => {
    const links = '<a href="#x">x</a><a href="other.html#at-y">x</a><a href="here.css#z">x</a>';
    const body = `<h1 id="x">x</h1>${links}<script src="here.js"></script>`;
    expect(await wrongWith(`<html lang="en"><title>x</title>${policy}${body}`)).toEqual([]);
    expect(await wrongWith(`<html>${policy}`)).toEqual([
      'at/page.html: has 0 first headings',
      'at/page.html: has no language',
      'at/page.html: has no title',
    ]);
  });

  it('is found in style sheets and scripts', () => {
    const all = there(['style/a.woff2'], new Map());
    expect(wouldBreakInStyle('style/a.css', '@font-face{src:url("a.woff2")}', all)).toEqual([]);
    for (const css of [
      '@import "b.css";',
      'p{background:url(/b.svg)}',
      'p{background:url(https://example.org/b.svg)}',
      'p{background:url(b.svg)}',
    ])
      expect(wouldBreakInStyle('style/a.css', css, all)).toHaveLength(1);
    expect(
      wouldBreakInScript('a.js', 'const prefetched = 1; map.fetch(prefetched); class A { fetch(a, b) {} }'),
    ).toEqual([]);
    for (const script of [
      'fetch("a")',
      'window.fetch(a)',
      'import("a")',
      'import{a}from"b"',
      'new Worker("a")',
    ])
      expect(wouldBreakInScript('a.js', script)).toHaveLength(1);
  });
});

describe('what is heard while pages are opened from a folder', () => {
  it('is each error, each thing that is missing, and each that lies beyond the folder', async () => {
    const folder = await emptyFolder();
    await writeFile(join(folder, 'beside.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    const pages = {
      'sound.html': '<p>x</p>',
      'throws.html': '<script>throw new Error("broken")</script>',
      'lacks.html': '<img src="gone.webp" alt="">',
      'beyond.html': '<img src="../beside.svg" alt="">',
      'refuses.html': `${policy}<img src="../beside.svg" alt="">`,
    };
    await mkdir(join(folder, 'site'));
    for (const [path, html] of Object.entries(pages)) await writeFile(join(folder, 'site', path), html);
    const root = pathToFileURL(join(folder, 'site/')).href;
    const found = await crawl(browser, root, Object.keys(pages));
    const of = (path: string) => found.filter((one) => one.startsWith(root + path));
    expect(of('sound.html')).toEqual([]);
    expect(of('throws.html')).toEqual([`${root}throws.html throws broken`]);
    expect(of('lacks.html').join('\n')).toContain('gone.webp (net::ERR_FILE_NOT_FOUND)');
    expect(of('beyond.html')).toEqual([expect.stringMatching(/asks for file:.*\/beside\.svg$/)]);
    expect(of('refuses.html').join('\n')).toMatch(/violates the following Content Security Policy/);
  });
});
