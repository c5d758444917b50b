// A value that is kept in one file from one run to the next. What isn't whole, or was kept by another program, is
// nothing: it only saves time.
import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { besideOf, clearLeft } from './beside.ts';

/** What was kept, if every byte is as it was written; by `by` it is known who kept it, and from what. */
export async function readKeptValue<Value>(path: string, by: string): Promise<Value | undefined> {
  try {
    const bytes = await readFile(path);
    const content = bytes.subarray(DIGEST);
    if (bytes.subarray(0, DIGEST).toString() !== digestOf(content)) return undefined;
    const kept = deserialize(content) as { by: string; value: Value };
    return kept.by === by ? kept.value : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a value of plain objects, lists, maps and sets; it is written beside and put in place whole. */
export async function writeKeptValue(path: string, by: string, value: unknown): Promise<void> {
  const content = serialize({ by, value });
  await mkdir(dirname(path), { recursive: true });
  await clearLeft(dirname(path));
  const writing = besideOf(path);
  try {
    await writeFile(writing, Buffer.concat([Buffer.from(digestOf(content)), content]));
    await rename(writing, path);
  } catch (error) {
    await rm(writing, { force: true });
    throw error;
  }
}

/** The digest of a text or of bytes, in 64 characters. */
export function digestOf(of: string | Uint8Array): string {
  return createHash('sha256').update(of).digest('hex');
}

const DIGEST = 64;
