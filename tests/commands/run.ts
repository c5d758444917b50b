// Runs a command as a person does, and says how it ended.
import { execFile } from 'node:child_process';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export type Ended = { code: number; out: string; err: string };

/** Runs `npm run <name> -- …`, with `RECORD` set when a folder is given. */
export function npmRun(
  name: string,
  words: readonly string[] = [],
  record?: string,
  under: readonly string[] = [],
): Promise<Ended> {
  const { RECORD: _, ...env } = process.env;
  const [program = 'npm', ...all] = [...under, 'npm', 'run', '--silent', name, '--', ...words];
  return new Promise((done) => {
    execFile(
      program,
      all,
      { env: record === undefined ? env : { ...env, RECORD: record }, maxBuffer: 50e6 },
      (error, out, err) => done({ code: error ? Number(error.code) : 0, out, err }),
    );
  });
}

/** Root may read everything by two capabilities (capabilities(7)); without them permissions count for it as for all. */
const AS_ALL = ['--bounding-set', '--inh-caps'].map((set) => `${set}=-dac_override,-dac_read_search`);
const before = process.getuid?.() === 0 ? ['setpriv', ...AS_ALL] : [];

/** The same, for whom a closed folder is closed. */
export function npmRunAsAll(name: string, words: readonly string[], record?: string): Promise<Ended> {
  return npmRun(name, words, record, before);
}

/** An empty folder that is gone when the test is over. */
export async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-test-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** An empty folder for the tests of a file, which take it away themselves. */
export async function emptyFolderFor(name: string): Promise<{ folder: string; remove: () => Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), `ashframe-${name}-`));
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) };
}

/** A copy of the demo's texts, that may be spoiled. */
export async function demoCopy(): Promise<string> {
  const folder = await emptyFolder();
  await cp('content', folder, { recursive: true });
  return folder;
}
