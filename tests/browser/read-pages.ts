// Reads pages as a browser's parser does, without opening them: nothing of them is loaded or run.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { Site } from './built.ts';

/** A thing that a page names: where it stands, and whether the browser loads it by itself. */
export type Named = { tag: string; attribute: string; to: string; loaded: boolean };

export type Read = {
  title: string;
  lang: string;
  /** How many headings of the first rank. */
  headings: number;
  named: Named[];
  /** What a link may lead to on the page. */
  ids: string[];
  /** Each kind of element with each of its classes, once. */
  shows: string[];
  /** The content-security policy. */
  policy: string;
  /** What no page of ours may have, in words. */
  odd: string[];
};

/** Every page of a site, by its path. */
export async function readSite(browser: Browser, { folder, pages }: Site): Promise<Map<string, Read>> {
  const reader = await browser.newPage();
  const all = new Map<string, Read>();
  for (const path of pages) all.set(path, await readPage(reader, readFileSync(join(folder, path), 'utf8')));
  await reader.close();
  return all;
}

/** A page from its text; `reader` is any open page of a browser. */
export const readPage = (reader: Page, html: string): Promise<Read> => reader.evaluate(parsed, html);

/**
 * Pages that show between them everything that any page does: of each folder, and each at the top, the richest, and the
 * others that have an element of a class that none before has.
 */
export function everyKind(all: ReadonlyMap<string, Read>): string[] {
  const richestFirst = [...all].sort(([, a], [, b]) => b.shows.length - a.shows.length);
  const seen = new Map<string, Set<string>>();
  return richestFirst.flatMap(([path, { shows }]) => {
    const kind = path.split('/', 1)[0] ?? path;
    const before = seen.get(kind);
    seen.set(kind, new Set([...(before ?? []), ...shows]));
    return before && shows.every((one) => before.has(one)) ? [] : [path];
  });
}

/** Runs in the browser. */
function parsed(html: string): Read {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const named: Named[] = [];
  const odd: string[] = [];
  const shows = new Set<string>();
  for (const element of page.querySelectorAll('*')) {
    const tag = element.localName;
    shows.add(tag);
    for (const one of element.classList) shows.add(`${tag}.${one}`);
    for (const { name, value } of element.attributes) {
      if (name === 'srcset') {
        for (const one of value.split(','))
          named.push({ tag, attribute: name, to: one.trim().split(/\s+/)[0] ?? '', loaded: true });
      } else if (['href', 'src', 'action', 'poster', 'data', 'xlink:href', 'formaction'].includes(name)) {
        named.push({ tag, attribute: name, to: value, loaded: tag !== 'a' });
      } else if (['integrity', 'crossorigin', 'ping', 'srcdoc'].includes(name) || name.startsWith('on')) {
        odd.push(`${tag} has ${name}`);
      } else if (name === 'style' && /url\(/.test(value)) {
        odd.push(`${tag} has a url in its style`);
      }
    }
    if (['base', 'iframe', 'object', 'embed'].includes(tag)) odd.push(`has ${tag}`);
    if (tag === 'meta' && element.getAttribute('http-equiv')?.toLowerCase() === 'refresh')
      odd.push('refreshes');
    if (tag !== 'script') continue;
    const type = element.getAttribute('type') ?? '';
    const block = /^application\/(?:ld\+)?json$/.test(type);
    if (type !== '' && !block) odd.push(`script of type ${type}`);
    if (!block && !element.hasAttribute('src')) odd.push('script in the page');
  }
  return {
    title: page.title,
    lang: page.documentElement.lang,
    headings: page.querySelectorAll('h1').length,
    named,
    ids: [...page.querySelectorAll('[id]')].map(({ id }) => id),
    shows: [...shows],
    policy: page.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content') ?? '',
    odd,
  };
}
