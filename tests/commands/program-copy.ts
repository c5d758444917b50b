// A copy of the program in a folder of its own: what it keeps may be spoiled there, and its code changed.
import { execFile, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const PARTS = [
  'src',
  'public',
  'shared',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'astro.config.mjs',
];

export type ProgramCopy = {
  folder: string;
  /** Builds a record; throws when that doesn't end well. */
  build: (record: string, out: string, words?: readonly string[]) => Promise<void>;
  /** Kills a build after so many milliseconds; false when it was done before. */
  killed: (record: string, out: string, after: number) => Promise<boolean>;
  remove: () => Promise<void>;
};

export async function programCopy(): Promise<ProgramCopy> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-program-'));
  for (const part of PARTS) await cp(part, join(folder, part), { recursive: true });
  await symlink(resolve('node_modules'), join(folder, 'node_modules'));
  const set = (record: string) => ({ cwd: folder, env: { ...process.env, RECORD: record } });
  const all = (out: string, words: readonly string[]) => ['src/commands/build.ts', ...words, '--out', out];
  return {
    folder,
    build: (record, out, words = []) =>
      new Promise((done, failed) => {
        execFile(process.execPath, all(out, words), set(record), (error, said, err) =>
          error ? failed(new Error(`${said}${err}`)) : done(),
        );
      }),
    killed: async (record, out, after) => {
      const build = spawn(process.execPath, all(out, []), { ...set(record), stdio: 'ignore' });
      const ended = new Promise<number | null>((done) => build.on('exit', done));
      await wait(after);
      build.kill('SIGKILL');
      return (await ended) === null;
    },
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

/** Every file below a folder with a digest of its bytes. */
export async function bytesOf(folder: string): Promise<Record<string, string>> {
  const files = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((file) =>
    file.isFile(),
  );
  const paths = files.map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1)).sort();
  const bytes = await Promise.all(paths.map((path) => readFile(join(folder, path))));
  return Object.fromEntries(
    paths.map((path, i) => [
      path,
      createHash('sha256')
        .update(bytes[i] ?? '')
        .digest('hex'),
    ]),
  );
}

/** Writes files of a record; those that are undefined go away. */
export async function change(
  folder: string,
  files: Record<string, string | Buffer | undefined>,
): Promise<void> {
  for (const [file, what] of Object.entries(files)) {
    const path = join(folder, file);
    await mkdir(dirname(path), { recursive: true });
    if (what === undefined) await rm(path);
    else await writeFile(path, what);
  }
}
