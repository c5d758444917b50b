// Finds what would keep a page from opening by double click, below a path of a web host, or in thirty years.
import { posix } from 'node:path';
import type { Page } from 'playwright-core';

/** A thing that a page names: where it stands, and whether the browser loads it by itself. */
type Named = { tag: string; attribute: string; to: string; loaded: boolean };
type Read = { named: Named[]; policy: string; odd: string[] };

/** What is wrong with a page, in words; `files` are all files of the build. `reader` is any open page of a browser. */
export async function wouldBreak(
  reader: Page,
  path: string,
  html: string,
  files: ReadonlySet<string>,
): Promise<string[]> {
  const { named, policy, odd } = await reader.evaluate(readPage, html);
  return [...named.flatMap((one) => wrongLink(one, path, files)), ...wrongPolicy(policy), ...odd].map(
    (what) => `${path}: ${what}`,
  );
}

/** The files of the build that a page names. */
export async function filesNamed(reader: Page, path: string, html: string): Promise<string[]> {
  const { named } = await reader.evaluate(readPage, html);
  return named.map(({ to }) => fileNamed(path, to));
}

/** The files that a style sheet names. */
export const filesNamedInStyle = (path: string, css: string) => urlsOf(css).map((to) => fileNamed(path, to));

const urlsOf = (css: string) => [...css.matchAll(/url\(\s*(["']?)(.*?)\1\s*\)/g)].map(([, , to = '']) => to);

/** What is wrong with a style sheet. */
export function wouldBreakInStyle(path: string, css: string, files: ReadonlySet<string>): string[] {
  const imported = /@import\b/.test(css) ? ['@import'] : [];
  const wrong = urlsOf(css).flatMap((to) =>
    wrongLink({ tag: 'style', attribute: 'url', to, loaded: true }, path, files),
  );
  return [...imported, ...wrong].map((what) => `${path}: ${what}`);
}

/** What is wrong with a script: it may fetch nothing and be no module. A method that is called fetch is none of these. */
export function wouldBreakInScript(path: string, script: string): string[] {
  const asks =
    /(?:(?<![.\w$])|\b(?:window|globalThis|self)\.)fetch\s*\((?![\w$,\s]*\)\s*\{)|\bimport\s*[({"']|\bexport\s*[{*]|\b(?:XMLHttpRequest|WebSocket|EventSource|sendBeacon)\b|\bnew\s+(?:Shared)?Worker\b/g;
  return [...script.matchAll(asks)].map(([word]) => `${path}: ${word}`);
}

function wrongLink(
  { tag, attribute, to, loaded }: Named,
  path: string,
  files: ReadonlySet<string>,
): string[] {
  const said = `${tag} ${attribute} ${to}`;
  if (to.startsWith('#') || (to.startsWith('data:') && tag !== 'script')) return [];
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(to)) {
    // A writer may point elsewhere; the page may load nothing from there.
    return !loaded && /^(?:https|mailto):/.test(to) ? [] : [`${said} is another host’s`];
  }
  if (to.startsWith('/')) return [`${said} is absolute`];
  return files.has(fileNamed(path, to)) ? [] : [`${said} leads to no file`];
}

const fileNamed = (path: string, to: string) =>
  posix.join(posix.dirname(path), decodeURIComponent(to.replace(/[?#].*$/, '')));

function wrongPolicy(policy: string): string[] {
  if (policy === '') return ['has no content-security policy'];
  const parts = new Map(
    policy.split(';').map((part) => {
      const [name = '', ...sources] = part.trim().split(/\s+/);
      return [name, sources] as const;
    }),
  );
  const open = [...parts].flatMap(([name, sources]) =>
    sources
      .filter((source) => !["'none'", "'self'", 'data:'].includes(source))
      .filter((source) => !(name === 'style-src' && source === "'unsafe-inline'"))
      .map((source) => `policy lets ${name} be ${source}`),
  );
  return parts.get('default-src')?.join() === "'none'"
    ? open
    : [...open, 'policy begins with something open'];
}

/** Runs in the browser, which reads the page without loading anything of it. */
function readPage(html: string): Read {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const named: Named[] = [];
  const odd: string[] = [];
  for (const element of page.querySelectorAll('*')) {
    const tag = element.localName;
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
  const policy =
    page.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content') ?? '';
  return { named, policy, odd };
}
