// Bags for the tests, written out by hand, apart from the code that is tested.
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { emptyFolder } from '../commands/run.ts';

/** Files by path; what ends in `sums` is left to the test. */
export type Files = Record<string, string | Buffer>;

export const sha = (algorithm: 'sha256' | 'sha512' | 'md5', content: string | Buffer) =>
  createHash(algorithm).update(content).digest('hex');

/** Writes files into a fresh folder. */
export async function folderOf(files: Files): Promise<string> {
  const folder = await emptyFolder();
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
  return folder;
}

/** The files of the conformance suite's smallest bag (v1.0/valid/basicBag, public domain), as F1 gives it. */
export const HELLO = 'hello\n';
export const HELLO_SHA512 =
  'e7c22b994c59d9cf2b48e549b1e24666636045930d3da7c1acb299d1c3b7f931f94aae41edda2c2b207a36e10f8bcb8d45223e54878f5b316e7ce3b6bc019629';
export const minimal = (): Files => ({
  'bagit.txt': 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
  'manifest-sha512.txt': `${HELLO_SHA512}  data/hello.txt\n`,
  'data/hello.txt': HELLO,
});

/** Every file below a folder with its content, so that two folders can be compared. */
export async function contentOf(folder: string): Promise<Record<string, string>> {
  const found: Record<string, string> = {};
  for (const entry of await readdir(folder, { withFileTypes: true, recursive: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    found[path.slice(folder.length + 1)] = sha('sha256', await readFile(path));
  }
  return found;
}

/** What another program says of a bag's manifest: the exit code of `sha256sum -c`. */
export function sumsAgree(
  folder: string,
  algorithm: 'sha256' | 'sha512',
  manifest = 'manifest',
): Promise<number> {
  return new Promise((done) => {
    execFile(
      `${algorithm}sum`,
      ['-c', '--strict', '--quiet', `${manifest}-${algorithm}.txt`],
      { cwd: folder },
      (error) => done(error ? Number(error.code) : 0),
    );
  });
}
