// What the record's photos/ holds already.
import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { contentOf } from '../plan.ts';
import { readSeen, seenContent } from '../seen.ts';
import { AT_ONCE, eachInTurn } from '../turns.ts';

/** The record's pictures by the hash of their bytes; those of another size can't be the same and aren't read. */
export async function contentsOf(
  root: string,
  photos: readonly string[],
  sizes: ReadonlySet<number>,
  cache: string,
): Promise<Map<string, string>> {
  const seen = await readSeen(cache, root);
  const found = new Map<string, string>();
  await eachInTurn(photos, 2 * AT_ONCE, async (file) => {
    const stats = await stat(join(root, file)).catch(() => undefined);
    if (!stats || !sizes.has(stats.size)) return;
    const content =
      seenContent(seen, file, stats) ?? (await readFile(join(root, file)).then(contentOf, () => undefined));
    if (content !== undefined) found.set(content, file);
  });
  return found;
}

/** The names in each folder of photos/, pictures or not. */
export async function namesIn(root: string): Promise<(folder: string) => string[]> {
  const names = new Map<string, string[]>();
  const entries = await readdir(join(root, 'photos'), { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    if (entry.isDirectory())
      names.set(`photos/${entry.name}`, await readdir(join(root, 'photos', entry.name)));
  }
  return (folder) => names.get(folder) ?? [];
}
