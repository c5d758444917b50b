import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../../src/commands/bring/sheet.ts';
import { addedByFlags, contentFlags } from '../../src/commands/log/flags.ts';
import { openFolder } from '../../src/disk/open-folder.ts';
import { keysOfSheet, readColumns, type SheetKind } from '../../src/record/writing/sheet/columns.ts';
import { linesFromRows } from '../../src/record/writing/sheet/rows.ts';

const guide = readFileSync('content/README.md', 'utf8');
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };
const { record } = await openFolder('content', '2026-01-01');
if (!record) throw new Error('the demo opens');

/** The text between two headings of the guide. */
const section = (heading: string) => guide.split(`### ${heading}\n`)[1]?.split(/\n#{2,3} /)[0] ?? '';
const blocks = (text: string, language: string) =>
  [...text.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(
    ([, block = '']) => block,
  );

describe('the writer’s guide', () => {
  it('names only commands and files that there are', () => {
    const commands = [...guide.matchAll(/npm run (?:--silent )?([a-z]+)/g)].map(([, name = '']) => name);
    expect(commands).toEqual(expect.arrayContaining(['log', 'bring', 'check', 'photos', 'new']));
    expect(commands.filter((name) => !(name in scripts))).toEqual([]);
    const files = [...guide.matchAll(/`(shared\/[\w./-]+)`/g)].map(([, path = '']) => path);
    expect(files.length).toBeGreaterThan(3);
    expect(files.filter((path) => !existsSync(path))).toEqual([]);
  });

  it('says a day in flags that are understood', () => {
    const lines = blocks(section('A day by questions'), 'sh').join('').trim().split('\n');
    expect(lines).toHaveLength(3);
    for (const line of lines) {
      const given: Record<string, string[]> = {};
      for (const [, flag = '', quoted, bare] of line.matchAll(/--([a-z-]+) (?:"([^"]*)"|(\S+))/g)) {
        given[flag] = [...(given[flag] ?? []), quoted ?? bare ?? ''];
      }
      expect(Object.keys(given).filter((flag) => flag !== 'day' && !(flag in contentFlags))).toEqual([]);
      expect(addedByFlags(given, record), line).toHaveProperty('added');
    }
  });

  it('shows sheets that can be brought in, and names every column', () => {
    const text = section('From paper and sheets');
    const sheets = blocks(text, 'csv');
    expect(sheets).toHaveLength(2);
    for (const [i, kind] of (['hours', 'bills'] as SheetKind[]).entries()) {
      const sheet = sheetOf(sheets[i] ?? '', 'sheet.csv');
      if (typeof sheet === 'string') throw new Error(sheet);
      const columns = readColumns(sheet.headings, new Map());
      if (typeof columns === 'string') throw new Error(columns);
      expect([columns.kind, columns.leftOut]).toEqual([kind, []]);
      const read = linesFromRows(sheet.rows, columns, record, { today: '2026-01-01' });
      expect(read.refused).toEqual([]);
      expect(read.lines).toHaveLength(2);
      const after = text.slice(text.indexOf(sheets[i] ?? '')).split('\n\n')[1] ?? '';
      const named = [...sheet.headings, ...[...after.matchAll(/`([a-z-]+)`/g)].map(([, key = '']) => key)];
      expect(keysOfSheet(kind).filter((key) => !named.includes(key))).toEqual([]);
    }
  });
});
