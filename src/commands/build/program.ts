// Which program made something that is kept: another one must not use it.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
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

/**
 * A digest of the program: its sources, the packages it names, where it lies and what runs it. Files are read without
 * waiting in turns: of hundreds of small ones the turns would take longer than the reading.
 */
export function programDigest(): string {
  const hash = createHash('sha256').update(`${resolve('.')} ${process.version} ${process.arch}\n`);
  for (const source of SOURCES) hash.update(`${source} ${treeDigest(source)}\n`);
  return hash.digest('hex').slice(0, 24);
}

/** A digest of a file, or of every file below a folder with its name. */
export function treeDigest(path: string): string {
  const hash = createHash('sha256');
  for (const file of filesOf(path)) {
    const bytes = readFileSync(join(path, file));
    hash.update(`${file}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/** The files below a folder in the order of their names; of a file its own, which is empty. */
export function filesOf(path: string): string[] {
  if (!statSync(path).isDirectory()) return [''];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(join(path, sep).length).split(sep).join('/'))
    .sort();
}
