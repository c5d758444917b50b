import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { problemText } from '../../src/views/problem-text.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { BROKEN } from './broken-entries.ts';
import { unsound } from './sound.ts';

const ENTRY = 'log/2025-03-04.md';
let folder: string;

beforeAll(async () => {
  const own = await emptyFolderFor('broken');
  folder = own.folder;
  for (const [name, text] of Object.entries(SMALL)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return own.remove;
});

/** The small record with one broken day. */
async function withDay(content: string | Uint8Array) {
  await writeFile(join(folder, ENTRY), content);
  const before = process.cpuUsage();
  const { problems, record } = await openFolder(folder, '2025-12-31');
  const took = process.cpuUsage(before).user / 1000;
  const text = Buffer.from(content).toString('utf8');
  const texts = new Map<string, string>([...Object.entries(SMALL), [ENTRY, text]]);
  const own = problems.filter(({ place }) => place.file === ENTRY);
  return { problems, own, record, took, wrong: unsound(problems, texts) };
}

describe('a day as people break it', () => {
  it('is one of many kinds', () => {
    expect(BROKEN.length).toBeGreaterThan(100);
    expect(new Set(BROKEN.map(([what]) => what)).size).toBe(BROKEN.length);
  });

  it.each(BROKEN)('%s', async (_, content, becomes) => {
    const { problems, own, record, took, wrong } = await withDay(content);
    expect(wrong).toEqual([]);
    expect(own.length > 0 ? 'told' : 'read', own.map(problemText).join('\n')).toBe(becomes);
    // What isn’t told is read; the day before is read whatever stands in this one.
    const days = record?.entries.map(({ day }) => day) ?? [];
    expect(days).toContain('2025-03-03');
    if (becomes === 'read') expect(days).toContain('2025-03-04');
    // Of the processor, not of the clock: no one text takes longer, however long it is.
    expect(took).toBeLessThan(15_000);
    for (const said of problems.slice(0, 200).map(problemText)) {
      const [line = ''] = said.split('\n    see ');
      expect(line.length).toBeLessThan(2000);
      // A terminal does nothing of its own, and nothing is out of sight.
      expect(stripVTControlCharacters(said)).toBe(said);
      expect(said.replaceAll('\n', '')).not.toMatch(
        /[\p{Cc}\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\u00ad]/u,
      );
    }
  });
});

describe('what can’t be seen', () => {
  it('is written out where it stands in the way', async () => {
    const { own } = await withDay('---\nby:\u00a0tobias\n---\n');
    expect(own.map(problemText)[0]).toContain('`by:\\u{a0}tobias`');
    const { own: turned } = await withDay('---\nby: "\u202esaibot"\n---\n');
    expect(turned.map(problemText)[0]).toContain('\\u{202e}saibot');
  });

  it('stays as it was written in what programs read', async () => {
    const { own } = await withDay('---\nby: "\u202esaibot"\n---\n');
    expect(own[0]?.reason).toContain('\u202esaibot');
  });
});

describe('what is too long', () => {
  it('is shown by its beginning, with its length', async () => {
    const { own } = await withDay(`---\nby: ${'x'.repeat(900_000)}\n---\n`);
    expect(own[0]?.reason).toMatch(/^`x{100,}… \(900,000 letters\)`/);
    const { own: key } = await withDay(`---\n${'y'.repeat(900)}: z\n---\n`);
    expect(key.some(({ reason }) => /y… \(900 letters\)/.test(reason))).toBe(true);
  });
});
