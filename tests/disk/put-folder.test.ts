import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { putFolder } from '../../src/disk/put-folder.ts';
import { emptyFolder } from '../commands/run.ts';

let home: string;
const at = (path: string) => join(home, path);
const lay = async (path: string, text: string) => {
  await mkdir(join(at(path), '..'), { recursive: true });
  await writeFile(at(path), text);
};
const all = async (path: string) => {
  const entries = await readdir(at(path), { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  return Promise.all(
    files.sort().map(async (file) => [file.slice(at(path).length + 1), await readFile(file, 'utf8')]),
  );
};

beforeEach(async () => {
  home = await emptyFolder();
  await lay('site/index.html', 'old');
  await lay('site/pictures/a.webp', 'a');
  await lay('site/plans/b.svg', 'b');
  await lay('made/index.html', 'new');
});

const OLD = [
  ['index.html', 'old'],
  ['pictures/a.webp', 'a'],
  ['plans/b.svg', 'b'],
];

describe('a folder that is put in place', () => {
  it('takes the place of what was there, whole', async () => {
    await putFolder(at('made'), at('site'));
    expect(await all('site')).toEqual([['index.html', 'new']]);
    expect(await readdir(home)).toEqual(['site']);
  });

  it('goes on with the folders that stay', async () => {
    await putFolder(at('made'), at('site'), ['pictures']);
    expect(await all('site')).toEqual([
      ['index.html', 'new'],
      ['pictures/a.webp', 'a'],
    ]);
    expect(await readdir(home)).toEqual(['site']);
  });

  it('leaves all as it was where a folder that should stay is gone', async () => {
    await expect(putFolder(at('made'), at('site'), ['pictures', 'drawings', 'plans'])).rejects.toThrow();
    expect(await all('site')).toEqual(OLD);
    expect(await readdir(home)).toEqual(['site']);
  });
});
