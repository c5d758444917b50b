// Which file an entry is, by its name alone: no path comes in from outside.
import { realpath } from 'node:fs/promises';
import { dirname, join, sep } from 'node:path';
import { isDay } from '../figures/days.ts';
import { kindOf } from '../record/open.ts';
import { entryFileOf } from '../record/writing/entry-file.ts';

/** The file of an entry such as `2025-04-16` or `2025-04-16-b`; nothing when there can’t be one. */
export function fileOf(entry: string, files: readonly string[]): string | undefined {
  if (!/^\d{4}-\d{2}-\d{2}(?:-[b-z])?$/.test(entry) || !isDay(entry.slice(0, 10))) return undefined;
  const there = files.find((file) => kindOf(file) === 'entry' && file.endsWith(`/${entry}.md`));
  return there ?? (entry.length === 10 ? entryFileOf(entry, files).file : undefined);
}

/** True when a file lies in the record, or would, and no link on the way leads out of it. */
export async function liesWithin(root: string, file: string): Promise<boolean> {
  const home = await realpath(root);
  for (let path = join(home, file); path !== home; path = dirname(path)) {
    if (!path.startsWith(home + sep)) return false;
    const real = await realpath(path).catch(() => undefined);
    if (real !== undefined) return real === home || real.startsWith(home + sep);
  }
  return true;
}
