// The files at the top of a bag: what it is, what it says of itself, and the sums of all that is in it.
import { createHash } from 'node:crypto';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ALGORITHMS, DECLARATION, type Listed, manifestText } from './form.ts';
import { type Info, infoText } from './info.ts';
import { writingName } from './unfinished.ts';

/** The names of the tag files that `writeTagFiles` writes, `more` among them. */
export function tagNames(more: Record<string, string>): string[] {
  const sums = ALGORITHMS.flatMap((name) => [`manifest-${name}.txt`, `tagmanifest-${name}.txt`]);
  return ['bagit.txt', 'bag-info.txt', ...sums, ...Object.keys(more)];
}

/** Writes them; bagit.txt comes last, since with it the folder is a bag. */
export async function writeTagFiles(
  folder: string,
  listed: readonly Listed[],
  info: Info,
  more: Record<string, string>,
): Promise<void> {
  const octets = listed.reduce((sum, file) => sum + file.octets, 0);
  const manifests = ALGORITHMS.map((name): [string, string] => [
    `manifest-${name}.txt`,
    manifestText(listed.map((file) => ({ path: file.path, sum: file[name] }))),
  ]);
  const texts = {
    ...more,
    'bag-info.txt': infoText([...info, ['Payload-Oxum', `${octets}.${listed.length}`]]),
    ...Object.fromEntries(manifests),
    'bagit.txt': DECLARATION,
  };
  const sums = ALGORITHMS.map((name): [string, string] => [
    `tagmanifest-${name}.txt`,
    manifestText(Object.entries(texts).map(([path, text]) => ({ path, sum: sumOf(text, name) }))),
  ]);
  await mkdir(join(folder, 'data'), { recursive: true });
  const inTurn = { ...Object.fromEntries(sums), ...texts };
  const beside = join(folder, writingName(0));
  for (const [name, text] of Object.entries(inTurn)) {
    await writeFile(beside, text);
    await rename(beside, join(folder, name));
  }
}

/** A checksum of octets, or of a text in UTF-8. */
export function sumOf(text: string | Uint8Array, algorithm: string): string {
  return createHash(algorithm).update(text).digest('hex');
}
