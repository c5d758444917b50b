import { execFileSync } from 'node:child_process';
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { readFolder } from '../../src/disk/folder.ts';
import { emptyFolder } from '../commands/run.ts';
import { openSmall, SMALL } from '../record/small.ts';

const MAKE_PIPE = 'mkfifo';

async function small(): Promise<string> {
  const folder = await emptyFolder();
  for (const [name, text] of Object.entries(SMALL)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return folder;
}

it('follows no link that leads round in a circle', async () => {
  const folder = await small();
  for (const name of ['one', 'two', 'three']) await symlink(folder, join(folder, 'log', name));
  const { files, problems } = await readFolder(folder);
  expect(files).toHaveLength(Object.keys(SMALL).length);
  expect(problems.map(({ place }) => place.file)).toEqual(['log/one', 'log/three', 'log/two']);
});

it('tells a folder where a text should be, and doesn’t wait for what is no file', async () => {
  const folder = await small();
  await mkdir(join(folder, 'log/2025-03-04.md'));
  if (process.platform !== 'win32') execFileSync(MAKE_PIPE, [join(folder, 'log/2025-03-05.md')]);
  const { problems } = await readFolder(folder);
  const told = problems.map(({ place, reason }) => `${place.file}: ${reason}`);
  expect(told[0]).toBe('log/2025-03-04.md: `log/2025-03-04.md` is a folder, and a text should be here.');
  expect(told.length).toBe(process.platform === 'win32' ? 1 : 2);
});

it('names line 1 of a file without front matter', () => {
  const { problems } = openSmall({ 'car.md': '---\n\n---\n' });
  expect(problems.filter(({ rule }) => rule === 'missing-key').length).toBeGreaterThan(2);
  expect(problems.filter(({ place }) => place.line < 1 || place.column < 1)).toEqual([]);
});

// A lone return ends a line in editors, in YAML and in Markdown (CommonMark 0.31, 2.1).
it.each(['\n', '\r\n', '\r'])('counts lines alike that end in %j', (end) => {
  const lines = ['---', 'by: tobias', 'wether: rain', '---', '', 'Stripped <b>it</b>.', ''];
  const { problems } = openSmall({ 'log/2025-03-04.md': lines.join(end) });
  const places = problems.map(({ rule, place }) => [rule, place.line, place.column]);
  expect(places).toContainEqual(['unknown-key', 3, 1]);
  expect(places).toContainEqual(['raw-html', 6, 10]);
});
