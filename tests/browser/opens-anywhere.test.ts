// Every build opens from a folder, below a path of a web host and at its root: the same bytes, and nothing from elsewhere.
import { readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSite, oneOfEachKind, type Site } from './built.ts';
import { openBrowser, troubles } from './chromium.ts';
import {
  filesNamed,
  filesNamedInStyle,
  wouldBreak,
  wouldBreakInScript,
  wouldBreakInStyle,
} from './would-break.ts';

const AUDIENCES = ['shop', 'owner', 'history'] as const;
const built = new Map<string, Site>();
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
  for (const audience of AUDIENCES) built.set(audience, await demoSite(audience));
}, 240_000);
afterAll(() => browser?.close());

/** The licenses of the fonts go where the fonts go; one sheet is for statements, which the history hasn’t. */
const KNOWN = ['style/fonts/OFL-Besley.txt', 'style/fonts/OFL-SourceSans3.txt', 'style/statement.css'];

const of = (audience: string): Site => {
  const site = built.get(audience);
  if (!site) throw new Error(`${audience} is built`);
  return site;
};

describe.each(AUDIENCES)('the build for the %s', (audience) => {
  it('names nothing that would break elsewhere', async () => {
    const site = of(audience);
    const { files } = site;
    const known = new Set(files);
    const text = (file: string) => readFileSync(join(site.folder, file), 'utf8');
    const reader = await browser.newPage();
    const found: string[] = [];
    for (const file of files) {
      if (file.endsWith('.html')) found.push(...(await wouldBreak(reader, file, text(file), known)));
      if (file.endsWith('.css')) found.push(...wouldBreakInStyle(file, text(file), known));
      if (file.endsWith('.js')) found.push(...wouldBreakInScript(file, text(file)));
    }
    await reader.close();
    expect(found).toEqual([]);
  }, 60_000);

  it('holds nothing that no page leads to', async () => {
    const site = of(audience);
    const text = (file: string) => readFileSync(join(site.folder, file), 'utf8');
    const { files } = site;
    const reader = await browser.newPage();
    const named = new Set(['index.html', ...KNOWN]);
    for (const file of site.pages) for (const to of await filesNamed(reader, file, text(file))) named.add(to);
    await reader.close();
    for (const file of files.filter((each) => each.endsWith('.css') && named.has(each)))
      for (const to of filesNamedInStyle(file, text(file))) named.add(to);
    expect(files.filter((file) => !named.has(file))).toEqual([]);
  }, 60_000);

  it('is read below a path of a web host, in silence', async () => {
    const site = of(audience);
    const server = await serveBelow('/x/y/', site.folder);
    const root = `http://127.0.0.1:${(server.address() as AddressInfo).port}/x/y/`;
    const page = await browser.newPage();
    const found = troubles(page, root);
    // The history is what is put on a host: of it, every page.
    const pages = audience === 'history' ? site.pages : oneOfEachKind(site.pages);
    for (const path of pages) await page.goto(root + path, { waitUntil: 'load' });
    await page.close();
    await new Promise((done) => {
      server.close(done);
      server.closeAllConnections();
    });
    expect(found).toEqual([]);
  }, 180_000);
});

// Every page of the shop’s is opened so by the tests of its pages.
it.each(['owner', 'history'] as const)(
  'the build for the %s is read page by page from its folder, in silence',
  async (audience) => {
    const site = of(audience);
    const page = await browser.newPage();
    const found = troubles(page, pathToFileURL(site.folder).href);
    for (const path of site.pages) await page.goto(site.url(path), { waitUntil: 'load' });
    await page.close();
    expect(found).toEqual([]);
  },
  180_000,
);

const TYPES: Record<string, string> = {
  '.html': 'text/html',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** Serves a folder below a path; anything else is not there. */
function serveBelow(below: string, folder: string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '', 'http://host').pathname);
    const file = join(folder, path.slice(below.length));
    if (
      !path.startsWith(below) ||
      !file.startsWith(folder) ||
      !statSync(file, { throwIfNoEntry: false })?.isFile()
    ) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' }).end(readFileSync(file));
  });
  return new Promise((ready) => server.listen(0, '127.0.0.1', () => ready(server)));
}

describe('what is looked for', () => {
  const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'">`;
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
    ['<base href="x/">', 'has base'],
    ['<iframe></iframe>', 'has iframe'],
    ['<p onclick="go()">x</p>', 'p has onclick'],
  ])('is found in %s', async (body, says) => {
    const reader = await browser.newPage();
    const files = new Set(['at/here.js', 'at/here.css', 'at/here.webp']);
    const html = `<!doctype html><html><head>${policy}</head><body>${body}</body></html>`;
    expect(await wouldBreak(reader, 'at/page.html', html, files)).toContain(`at/page.html: ${says}`);
    const sound = html.replace(body, '<a href="here.js#x">x</a><script src="here.js"></script>');
    expect(await wouldBreak(reader, 'at/page.html', sound, files)).toEqual([]);
    await reader.close();
  });

  it.each([
    ['', 'has no content-security policy'],
    ["default-src 'none'; script-src 'unsafe-inline'", "policy lets script-src be 'unsafe-inline'"],
    ["default-src 'none'; img-src https://example.org", 'policy lets img-src be https://example.org'],
    ["script-src 'self'", 'policy begins with something open'],
  ])('is found in the policy “%s”', async (content, says) => {
    const reader = await browser.newPage();
    const html = `<meta http-equiv="Content-Security-Policy" content="${content}">`;
    expect(await wouldBreak(reader, 'page.html', html, new Set())).toEqual([`page.html: ${says}`]);
    await reader.close();
  });

  it('is found in style sheets and scripts', () => {
    const files = new Set(['style/a.woff2']);
    expect(wouldBreakInStyle('style/a.css', '@font-face{src:url("a.woff2")}', files)).toEqual([]);
    for (const css of [
      '@import "b.css";',
      'p{background:url(/b.svg)}',
      'p{background:url(https://example.org/b.svg)}',
      'p{background:url(b.svg)}',
    ])
      expect(wouldBreakInStyle('style/a.css', css, files)).toHaveLength(1);
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
