import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ExifReader from 'exifreader';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, troubles } from '../browser/chromium.ts';
import { contentOf, folderOf, sumsAgree } from '../handover/bags.ts';
import { wordsOf } from '../handover/pdf.ts';
import { writePrivate } from '../record/private-folder.ts';
import { type Ended, emptyFolder, npmRun } from './run.ts';

describe('the demo, handed over', () => {
  let around: string;
  let folder: string;
  let ended: Ended;

  beforeAll(async () => {
    around = await mkdtemp(join(tmpdir(), 'ashframe-handover-'));
    folder = join(around, 'made');
    ended = await npmRun('handover', [folder]);
  });
  afterAll(() => rm(around, { recursive: true, force: true }));

  it('is told of with its sum, and where to begin', () => {
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(
      /^The hand-over is in .*: \d+ files, [\d.]+ MB\. Begin with START-HERE\.html\.\nThe sum on the book’s cover is [0-9a-f]{64}\.\nCheck it with: npm run verify -- .*\n$/,
    );
    expect(ended.err).not.toContain('█');
  });

  it('is a whole bag to this program, to sha256sum and to sha512sum', async () => {
    expect(await npmRun('verify', [folder])).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^The bag is whole: /),
    });
    for (const algorithm of ['sha256', 'sha512'] as const) {
      expect(await sumsAgree(folder, algorithm)).toBe(0);
      expect(await sumsAgree(folder, algorithm, 'tagmanifest')).toBe(0);
    }
  });

  it('holds the pages, the texts, the tables, the pictures and both editions of the book', async () => {
    const there = [
      'site/index.html',
      'record/car.md',
      'tables/datapackage.json',
      'record/photos/2025-02-03/2025-02-03-1.jpg',
    ];
    for (const file of [...there, 'book/book.pdf', 'book/book-to-be-read-aloud.pdf'])
      expect(existsSync(join(folder, 'data', file)), file).toBe(true);
    const texts = await readdir(join(folder, 'data', 'record', 'parts'));
    expect(texts.sort()).toEqual((await readdir('content/parts')).sort());
    expect((await readdir(folder)).sort()).toEqual([
      'HOW-TO-READ.txt',
      'START-HERE.html',
      'bag-info.txt',
      'bagit.txt',
      'data',
      'manifest-sha256.txt',
      'manifest-sha512.txt',
      'tagmanifest-sha256.txt',
      'tagmanifest-sha512.txt',
    ]);
  });

  it('has links on its first page that all lead somewhere', async () => {
    const page = await readFile(join(folder, 'START-HERE.html'), 'utf8');
    const links = [...page.matchAll(/href="([^"]+)"/g)].map(([, to = '']) => to);
    expect(links.length).toBeGreaterThan(4);
    expect(links.filter((to) => !existsSync(join(folder, to)))).toEqual([]);
  });

  it('carries one sum on the book’s cover, in bag-info.txt and in the note', async () => {
    const [, sum = ''] = /cover is ([0-9a-f]{64})/.exec(ended.out) ?? [];
    const grouped = sum.replace(/.{8}(?=.)/g, '$& ');
    for (const book of ['book.pdf', 'book-to-be-read-aloud.pdf']) {
      const { words } = await wordsOf(await readFile(join(folder, 'data', 'book', book)));
      expect(words).toContain(grouped);
    }
    expect(await readFile(join(folder, 'bag-info.txt'), 'utf8')).toContain(`Sum-On-Cover: ${sum}\n`);
    expect(await readFile(join(folder, 'HOW-TO-READ.txt'), 'utf8')).toContain(`    ${sum}\n`);
  });

  it('has pictures of their own size with their words and nothing else', async () => {
    const [before, after] = await Promise.all(
      [
        'content/photos/2025-02-03/IMG_1017.jpg',
        join(folder, 'data/record/photos/2025-02-03/2025-02-03-1.jpg'),
      ].map(async (file) => ExifReader.load(await readFile(file), { expanded: true, async: true })),
    );
    expect(after?.exif ?? after?.gps ?? after?.iptc ?? after?.icc).toBeUndefined();
    expect(after?.xmp?.AltTextAccessibility?.description).toMatch(/\w/);
    expect(after?.file?.['Image Width']?.value).toBe(before?.file?.['Image Width']?.value);
  });

  it('is a record of its own, that opens without errors', async () => {
    const { code, out } = await npmRun('check', [], join(folder, 'data', 'record'));
    expect([code, out]).toEqual([
      0,
      expect.stringMatching(/0 errors .*Read: \d+ entries, 51 parts, 8 choices/),
    ]);
  });

  it('opens from another folder without a network, page by page, and asks for nothing beyond it', async () => {
    const moved = join(around, 'an heir’s disk #1, 50%');
    await rename(folder, moved);
    folder = moved;
    const browser = await openBrowser();
    try {
      const context = await browser.newContext({ offline: true });
      const page = await context.newPage();
      const found = troubles(page, pathToFileURL(moved).href);
      const files = await readdir(moved, { recursive: true });
      const pages = files.filter((file) => file.endsWith('.html'));
      expect(pages.length).toBeGreaterThan(200);
      for (const file of pages) await page.goto(pathToFileURL(join(moved, file)).href);
      expect(found).toEqual([]);
      await page.goto(pathToFileURL(join(moved, 'START-HERE.html')).href);
      await page.click('text=The pages');
      expect(page.url()).toBe(pathToFileURL(join(moved, 'data/site/index.html')).href);
      expect(await page.textContent('h1')).toContain('Aldermere Fourteen');
    } finally {
      await browser.close();
    }
  }, 180_000);

  it('names the file in which one byte was changed', async () => {
    const file = join(folder, 'data', 'record', 'car.md');
    const text = await readFile(file);
    text[10] = (text[10] ?? 0) ^ 1;
    await writeFile(file, text);
    const { code, out } = await npmRun('verify', [folder]);
    expect(code).toBe(1);
    expect(out.split('\n')[0]).toBe(
      'changed  data/record/car.md  its sha256 and sha512 aren’t what was written down.',
    );
  });
});

describe('a hand-over that is killed', () => {
  it('goes on where it was, and is then what it would have been', async () => {
    const record = await emptyFolder();
    await writePrivate(record);
    const folder = await emptyFolder();
    const note = join(folder, 'UNFINISHED.txt');
    const killed = await new Promise<string | null>((done) => {
      const making = spawn(process.execPath, ['src/commands/handover.ts', folder], {
        stdio: 'ignore',
        env: { ...process.env, RECORD: record },
      });
      const watch = setInterval(async () => {
        const written = (await readFile(note, 'utf8').catch(() => '')).split('"done"').length;
        if (written > 25) making.kill('SIGKILL');
      }, 2);
      making.on('close', (_, signal) => {
        clearInterval(watch);
        done(signal);
      });
    });
    expect(killed).toBe('SIGKILL');
    const { code, out } = await npmRun('verify', [folder]);
    expect(code).toBe(1);
    expect(out).toContain('The hand-over was interrupted: give its command again, and it goes on.');
    const kept = join(folder, 'data', 'site', 'index.html');
    const before = await stat(kept);
    expect((await npmRun('handover', [folder], record)).code).toBe(0);
    // What was whole isn't written again.
    expect((await stat(kept)).mtimeMs).toBe(before.mtimeMs);
    expect(existsSync(note)).toBe(false);
    const whole = await emptyFolder();
    expect((await npmRun('handover', [whole], record)).code).toBe(0);
    expect(await contentOf(folder)).toEqual(await contentOf(whole));
  });
});

describe('npm run handover', () => {
  it('leaves a folder alone that holds something else', async () => {
    const folder = await folderOf({ 'letter.txt': 'Dear all' });
    const { code, out, err } = await npmRun('handover', [folder]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(`${folder} isn’t empty. Name an empty folder, or one that isn’t there yet.\n`);
    expect(await readdir(folder)).toEqual(['letter.txt']);
  });

  it('says what camera files carry before it hands them over as they are, and asks', async () => {
    const folder = join(await emptyFolder(), 'out');
    const { code, out, err } = await npmRun('handover', [folder, '--originals']);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(/The photographs go as the cameras wrote them\. Of these,\n {2}\d+ carr(?:y|ies) /);
    expect(err).toContain('Say --yes to hand them over so, or leave --originals out.\n');
    expect(existsSync(folder)).toBe(false);
  });

  it('hands over nothing of a record with errors', async () => {
    const record = await folderOf({ 'car.md': '---\nname: A\n---\n' });
    const folder = join(await emptyFolder(), 'out');
    expect(await npmRun('handover', [folder], record)).toMatchObject({ code: 1, out: '' });
    expect(existsSync(folder)).toBe(false);
  });

  it('ends with 2 when it isn’t told where', async () => {
    expect(await npmRun('handover')).toMatchObject({ code: 2, out: '' });
    expect(await npmRun('handover', ['a', 'b'])).toMatchObject({ code: 2, out: '' });
  });
});
