// Which program made something that is kept: another one must not use it.
import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';

/** Everything that pages are compiled from. */
const SOURCES = [
  'astro.config.mjs',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'public',
  'shared',
  'src',
];

/** A digest of the program: its sources, the packages it names, where it lies and what runs it. */
export async function programDigest(): Promise<string> {
  const hash = createHash('sha256').update(`${resolve('.')} ${process.version} ${process.arch}\n`);
  for (const source of SOURCES) hash.update(`${source} ${await treeDigest(source)}\n`);
  return hash.digest('hex').slice(0, 24);
}

/** A digest of a file, or of every file below a folder with its name. */
export async function treeDigest(path: string): Promise<string> {
  const hash = createHash('sha256');
  for (const file of await filesOf(path)) {
    const bytes = await readFile(join(path, file));
    hash.update(`${file}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/** The files below a folder in the order of their names; of a file its own, which is empty. */
export async function filesOf(path: string): Promise<string[]> {
  const found = await readdir(path, { recursive: true, withFileTypes: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOTDIR') return undefined;
      throw error;
    },
  );
  if (!found) return [''];
  return found
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(join(path, sep).length).split(sep).join('/'))
    .sort();
}
