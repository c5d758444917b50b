// A page may stand only if all that it shows is in what it is compared by: what draws it must know nothing else.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import { type Handed, handToPages } from '../../src/disk/handed.ts';
import { linesCompared } from '../../src/site/lines-shown.ts';
import { stands } from '../../src/site/stands.ts';
import type { LineRow } from '../../src/views/lines.ts';

const SITE = join('src', 'site');
const SHOWN = readdirSync(join(SITE, 'shown')).map((name) => join(SITE, 'shown', name));

/** What a source imports: names, and the file they come from. */
function importsOf(file: string): { names: string[]; from: string }[] {
  return [...readFileSync(file, 'utf8').matchAll(/^import (type )?([^;]+?) from '(\.[^']+)'/gm)].flatMap(
    ([, type, names = '', from = '']) =>
      type ? [] : [{ names: names.match(/[A-Za-z_$][\w$]*/g) ?? [], from: join(dirname(file), from) }],
  );
}

/** Every source of the site that draws a page that may stand. */
function drawing(): string[] {
  const found = new Set(SHOWN);
  for (const file of found) {
    for (const { from } of importsOf(file)) {
      if (from.startsWith(SITE) && from !== join(SITE, 'record.ts') && /\.(astro|ts)$/.test(from))
        found.add(from);
    }
  }
  return [...found];
}

it('what draws such a page takes nothing of the record but its frame and who sees it', () => {
  const taken = drawing().flatMap((file) =>
    importsOf(file)
      .filter(({ from }) => from === join(SITE, 'record.ts'))
      .flatMap(({ names }) => names.map((name) => `${relative(SITE, file)}: ${name}`)),
  );
  expect(taken.length).toBeGreaterThan(5);
  expect(taken.filter((name) => !/: (sees|frame|as|frameOfPages)$/.test(name))).toEqual([]);
});

it('every page that may stand hands all that it shows to such a source', () => {
  const pages = readdirSync(join(SITE, 'pages'), { recursive: true, encoding: 'utf8' })
    .map((file) => join(SITE, 'pages', file))
    .filter((file) => file.endsWith('.astro') && /\bstands\(/.test(readFileSync(file, 'utf8')));
  expect(pages.length).toBe(SHOWN.length);
  for (const page of pages) {
    const [, front = '', drawn = ''] =
      /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(page, 'utf8')) ?? [];
    expect(front, page).toMatch(
      /const stood = await stands\(shown\.path, (?:shown|linesCompared\(shown\))\);\nif \(stood\) return stood;$/,
    );
    expect(drawn.trim(), page).toMatch(/^<[A-Z]\w* \{\.\.\.shown\} \/>$/);
  }
});

it('lines are compared by all that stands in their rows', () => {
  const row = {
    day: 'March 5',
    text: 'Lead',
    notes: '',
    part: 'Cowl',
    time: '2 h',
    charged: '160.00',
    cost: '80.00',
    place: 'log/2025-03-05.md:3',
  };
  const foot = { time: '', charged: '', cost: '' };
  const compared = (own: Partial<LineRow>) =>
    JSON.stringify(
      linesCompared({
        ...{
          path: 'lines/part/cowl.html',
          from: '',
          code: 'USD',
          title: '',
          lead: '',
          parts: true,
          timed: true,
          foot,
        },
        groups: [{ kind: 'labour', name: 'Labor', count: 1, rows: [{ ...row, ...own }], foot }],
      }),
    );
  expect(compared({})).toBe(compared({}));
  for (const key of Object.keys(row)) expect(compared({ [key]: 'other' }), key).not.toBe(compared({}));
  expect(compared({ dayPage: 'day/2025-03-05.html' })).not.toBe(compared({}));
});

afterEach(() => handToPages(undefined));

it('a page that shows what can’t be compared is refused', async () => {
  const handed = { opened: { problems: [], read: {}, folder: '', today: '2025-03-05' }, made: {} };
  handToPages({ ...handed, pages: { before: new Map(), now: new Map() } } as unknown as Handed);
  await expect(stands('day/2025-03-05.html', { names: new Map() })).rejects.toThrow(
    /`names` is shown by a page/,
  );
  await expect(stands('day/2025-03-05.html', { name: () => '' })).rejects.toThrow(
    /`name` is shown by a page/,
  );
});

it('of words with a tree the text alone counts', async () => {
  const now = new Map<string, string>();
  const handed = { opened: { problems: [], read: {}, folder: '', today: '2025-03-05' }, made: {} };
  handToPages({ ...handed, pages: { before: now, now } } as unknown as Handed);
  const body = (markdown: string, tree: object) => ({ body: { markdown, line: 3, tree } });
  expect(await stands('one.html', body('Words', { children: [1] }))).toBeDefined();
  expect((await stands('one.html', body('Words', { children: [2] })))?.status).toBe(304);
  const digest = now.get('one.html');
  await stands('one.html', body('Other words', { children: [2] }));
  expect(now.get('one.html')).not.toBe(digest);
});
