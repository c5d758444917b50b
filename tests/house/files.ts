// The files of the project that the house rules are about: what git would keep, without pictures and fonts.
import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';

/** All files below a folder of the project, as paths from its root with `/`, sorted. */
export function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).split(sep).join('/'))
    .sort();
}
