// A page may stand only if all that it shows is in what it is compared by: what draws it must know nothing else.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import type { Body } from '../../src/record/body.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { seesOf } from '../../src/views/audience.ts';
import { monthsOfDays } from '../../src/views/days.ts';
import type { BriefLine, LineRow } from '../../src/views/lines.ts';
import { drawnParts, measuredPart } from '../../src/views/measured.ts';
import type { Shot } from '../../src/views/photos.ts';
import { choiceShown } from '../../src/views/shown/choice.ts';
import { type Compared, comparedBy, shotsApart } from '../../src/views/shown/compared.ts';
import { type DayShown, dayShown } from '../../src/views/shown/day.ts';
import { linesCompared, linesShown } from '../../src/views/shown/lines.ts';
import { monthShown } from '../../src/views/shown/month.ts';
import { type PartShown, partCompared, partShown } from '../../src/views/shown/part.ts';
import { photosShown } from '../../src/views/shown/photos.ts';
import { statementAt, statementKeys } from '../../src/views/statements.ts';
import { shotMonths } from '../../src/views/timeline.ts';

const SITE = join('src', 'site');
const SHOWN = readdirSync(join(SITE, 'shown')).map((name) => join(SITE, 'shown', name));

/** All that a page is compared by, in one text. */
const text = (what: Compared, frame = FRAME) => comparedBy(frame, what).join('\n');

const FRAME = { car: 'Aldermere', built: '1934', problems: 0, errors: 0, foot: '', parts: {} };

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
    .filter((file) => file.endsWith('.astro') && /\bmayStand\(/.test(readFileSync(file, 'utf8')));
  const drawing = new Set<string | undefined>();
  for (const page of pages) {
    const [, front = '', drawn = ''] =
      /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(page, 'utf8')) ?? [];
    expect(front, page).toMatch(
      /\nconst shown = await shows\.at\(Astro\);\nif \(!shown\) return new Response\('[^']+', \{ status: 404 \}\);$/,
    );
    expect(drawn.trim(), page).toMatch(/^<[A-Z]\w* \{\.\.\.shown\} \/>$/);
    drawing.add(/\w+/.exec(drawn)?.[0]);
  }
  expect([...drawing].sort()).toEqual(SHOWN.map((file) => basename(file, '.astro')).sort());
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
    text(
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
        groups: [{ kind: 'labour', name: 'Labor', count: 1, rows: [{ ...row, ...own }], years: [], foot }],
        years: [],
      }),
    );
  expect(compared({})).toBe(compared({}));
  for (const key of Object.keys(row)) expect(compared({ [key]: 'other' }), key).not.toBe(compared({}));
  expect(compared({ dayPage: 'day/2025-03-05.html' })).not.toBe(compared({}));
});

it('a day is compared by all that it shows, its lines too', async () => {
  const { record } = await openFolder(resolve('content'));
  if (!record) throw new Error('content/ can’t be opened');
  const rollup = rollUp(record);
  const shown = record.entries
    .map((entry) => dayShown(entry, { record, rollup, photos: new Map() }, seesOf('shop')))
    .find(({ sum }) => (sum?.lines.length ?? 0) > 1);
  if (!shown?.sum) throw new Error('no day has two lines');
  const { sum } = shown;
  const [first, ...others] = sum.lines;
  const as = (own: Partial<DayShown['sum']>) => text({ shown: { ...shown, sum: { ...sum, ...own } } });
  expect(as({})).toBe(text({ shown }));
  for (const key of Object.keys(first ?? {})) {
    expect(as({ lines: [{ ...first, [key]: 'other' } as BriefLine, ...others] }), key).not.toBe(as({}));
  }
  expect(as({ lines: others })).not.toBe(as({}));
  for (const key of ['opening', 'sum', 'from', 'charged'])
    expect(as({ [key]: 'other' }), key).not.toBe(as({}));
  expect(text({ shown: { ...shown, title: 'Other' } })).not.toBe(as({}));
});

it('pictures that stand on several pages are compared by all that stands with them', () => {
  const small = { file: 'pictures/a-small.webp', width: 480, height: 360 };
  const shot: Shot = {
    file: 'pictures/a.webp',
    width: 1600,
    height: 1200,
    small,
    taken: '2025-03-05T10:00:00',
    ratio: 4 / 3,
    caption: 'The sill',
    alt: 'A sill on trestles',
    day: '2025-03-05',
    when: '2025-03-05T10:00:00',
    entry: '2025-03-05',
    part: 'left-sill',
    shows: 'before',
    pair: 'sill',
  };
  const part = { name: 'Sill', latest: [shot, shot] } as unknown as PartShown;
  for (const as of [
    (shots: Shot[]) => text(shotsApart({ title: 'Wednesday', shots })),
    (latest: Shot[]) => text(partCompared({ ...part, latest })),
  ]) {
    const stands = as([shot, { ...shot }]);
    expect(as([{ ...shot }, shot])).toBe(stands);
    for (const key of Object.keys(shot)) {
      expect(as([shot, { ...shot, [key]: 'other' }]), key).not.toBe(stands);
    }
    expect(as([shot])).not.toBe(stands);
    expect(as([{ ...shot, caption: 'Other' }, shot])).not.toBe(as([shot, { ...shot, caption: 'Other' }]));
  }
  expect(text(shotsApart({ title: 'Other', shots: [shot] }))).not.toBe(
    text(shotsApart({ title: 'Wednesday', shots: [shot] })),
  );
  expect(text(partCompared({ ...part, name: 'Other' }))).not.toBe(text(partCompared(part)));
});

/** Where a value holds what JSON doesn't write, or writes as something else. */
function notPlain(value: unknown, at: string): string[] {
  if (value === null || value === undefined || typeof value === 'string' || typeof value === 'boolean')
    return [];
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [at];
  if (Array.isArray(value)) return value.flatMap((one, i) => notPlain(one, `${at}[${i}]`));
  if (typeof value !== 'object' || Object.getPrototypeOf(value) !== Object.prototype) return [at];
  return Object.entries(value).flatMap(([key, own]) => (key === 'tree' ? [] : notPlain(own, `${at}.${key}`)));
}

it('what such pages of the demonstration show is all plain', async () => {
  const folder = resolve('content');
  const { record } = await openFolder(folder);
  if (!record) throw new Error('content/ can’t be opened');
  const rollup = rollUp(record);
  const web = { file: 'pictures/a.webp', width: 1600, height: 1200 };
  const photos = new Map(
    record.photos.map((file) => [file, { ...web, small: web, taken: '2025-03-05T10:00:00' }]),
  );
  const sees = seesOf('shop');
  const shown = [
    ...record.entries.map((entry) => dayShown(entry, { record, rollup, photos }, sees)),
    ...record.parts.map((part) => partShown(part, { record, rollup, photos }, sees)),
    ...record.choices.map((choice) => choiceShown(choice, { record, rollup, photos }, sees)),
    ...drawnParts(record).map((part) => measuredPart(part, record)),
    ...Object.values(rollup.tables).flatMap(({ by, rows }) => rows.map((row) => linesShown(by, row, record))),
    ...rollup.tables.vendor.rows.map((row) => linesShown('vendor', row, record, '2025')),
    ...monthsOfDays(record, rollup).map(({ month }) => monthShown(month, { record, rollup, photos })),
    ...statementKeys(record).map((key) => statementAt(record, key)),
    ...shotMonths(record, photos).flatMap(({ pages }) =>
      pages.map(({ path }) => photosShown(path, record, photos)),
    ),
  ];
  expect(shown.length).toBeGreaterThan(100);
  expect(shown.flatMap((one, i) => notPlain(one, `${i}`))).toEqual([]);
  expect(notPlain({ a: [new Map()], b: () => '', c: Number.NaN }, '')).toEqual(['.a[0]', '.b', '.c']);
});

it('of words with a tree the text alone counts, and the frame always does', () => {
  const body = (markdown: string, tree: object) => ({
    shown: { body: { markdown, line: 3, tree } as Body },
  });
  const words = text(body('Words', { children: [1] }));
  expect(text(body('Words', { children: [2] }), { ...FRAME })).toBe(words);
  expect(text(body('Other words', { children: [1] }))).not.toBe(words);
  expect(text(body('Words', { children: [1] }), { ...FRAME, problems: 1 })).not.toBe(words);
});
