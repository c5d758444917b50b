// Finds what would keep a page from opening by double click, below a path of a web host, or in thirty years.
import { posix } from 'node:path';
import type { Named, Read } from './read-pages.ts';

/** What there is to lead to: every file of a build, and of each page the places on it. */
export type There = { files: ReadonlySet<string>; places: ReadonlyMap<string, ReadonlySet<string>> };

/** What a build holds, from its files and its pages as they are read. */
export const there = (files: Iterable<string>, pages: ReadonlyMap<string, Read>): There => ({
  files: new Set(files),
  places: new Map([...pages].map(([path, { ids }]) => [path, new Set(ids)])),
});

/** What is wrong with a page, in words. */
export function wouldBreak(path: string, page: Read, all: There): string[] {
  const { named, policy, odd, headings, lang, title } = page;
  const lacks = [
    headings === 1 ? [] : [`has ${headings} first headings`],
    lang ? [] : ['has no language'],
    title ? [] : ['has no title'],
  ].flat();
  return [...named.flatMap((one) => wrongLink(one, path, all)), ...wrongPolicy(policy), ...odd, ...lacks].map(
    (what) => `${path}: ${what}`,
  );
}

/** The files of the build that a page names. */
export const filesNamed = (path: string, { named }: Read) =>
  named.filter(({ to }) => !to.startsWith('#')).map(({ to }) => fileNamed(path, to));

/** The files that a style sheet names. */
export const filesNamedInStyle = (path: string, css: string) => urlsOf(css).map((to) => fileNamed(path, to));

const urlsOf = (css: string) => [...css.matchAll(/url\(\s*(["']?)(.*?)\1\s*\)/g)].map(([, , to = '']) => to);

/** What is wrong with a style sheet. */
export function wouldBreakInStyle(path: string, css: string, all: There): string[] {
  const imported = /@import\b/.test(css) ? ['@import'] : [];
  const wrong = urlsOf(css).flatMap((to) =>
    wrongLink({ tag: 'style', attribute: 'url', to, loaded: true }, path, all),
  );
  return [...imported, ...wrong].map((what) => `${path}: ${what}`);
}

/** What is wrong with a script: it may fetch nothing and be no module. A method that is called fetch is none of these. */
export function wouldBreakInScript(path: string, script: string): string[] {
  const asks =
    /(?:(?<![.\w$])|\b(?:window|globalThis|self)\.)fetch\s*\((?![\w$,\s]*\)\s*\{)|\bimport\s*[({"']|\bexport\s*[{*]|\b(?:XMLHttpRequest|WebSocket|EventSource|sendBeacon)\b|\bnew\s+(?:Shared)?Worker\b/g;
  return [...script.matchAll(asks)].map(([word]) => `${path}: ${word}`);
}

function wrongLink({ tag, attribute, to, loaded }: Named, path: string, { files, places }: There): string[] {
  const said = `${tag} ${attribute} ${to}`;
  if (to.startsWith('data:') && tag !== 'script') return [];
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(to)) {
    // A writer may point elsewhere; the page may load nothing from there.
    return !loaded && /^(?:https|mailto):/.test(to) ? [] : [`${said} is another host’s`];
  }
  if (to.startsWith('/')) return [`${said} is absolute`];
  const file = to.startsWith('#') ? path : fileNamed(path, to);
  if (!files.has(file)) return [`${said} leads to no file`];
  const place = decodeURIComponent(/#(.*)$/.exec(to)?.[1] ?? '');
  return place === '' || (places.get(file)?.has(place) ?? true) ? [] : [`${said} leads to no place there`];
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
