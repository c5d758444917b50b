// Looks through the folder of a phone or card. Nothing in it is changed.
import { readdir, readFile, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { isPicture } from '../../disk/folder.ts';
import { dayHere } from '../../disk/open-folder.ts';
import { cameraFacts } from '../camera-facts.ts';
import { measuredFile } from '../measured.ts';
import { contentOf } from '../plan.ts';
import type { Incoming, Plan } from './plan.ts';

/** The files of a folder by their path within it: pictures by their ending, the others, and what can't be opened. */
export type Card = {
  pictures: { path: string; size: number }[];
  others: string[];
  closed: Plan['refused'];
};

/** All files under a folder that can be read, sorted. Names that begin with a dot are the system's own. */
export async function filesOnCard(root: string): Promise<Card> {
  const card: Card = { pictures: [], others: [], closed: [] };
  const walk = async (folder: string): Promise<void> => {
    const entries = await readdir(folder, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (entry.name.startsWith('.')) continue;
      const path = join(folder, entry.name);
      const within = relative(root, path).split(sep).join('/');
      try {
        if (entry.isDirectory()) await walk(path);
        else if (entry.isFile()) {
          if (isPicture(entry.name)) card.pictures.push({ path: within, size: (await stat(path)).size });
          else card.others.push(within);
        }
      } catch (error) {
        const { code } = error as NodeJS.ErrnoException;
        if (code === undefined) throw error;
        card.closed.push({ from: within, verdict: { why: 'unopened', code } });
      }
    }
  };
  await walk(root);
  return card;
}

/** What there is to know of one picture before it is copied. */
export async function lookInto(root: string, path: string): Promise<Incoming> {
  const at = join(root, path);
  try {
    const { mtime } = await stat(at);
    const bytes = await readFile(at);
    const size = await measuredFile(at);
    const { taken } = cameraFacts(bytes);
    return {
      path,
      content: contentOf(bytes),
      changed: dayHere(mtime),
      ...(taken ? { taken } : {}),
      ...('why' in size ? { verdict: size } : {}),
    };
  } catch (error) {
    const { code = 'unknown' } = error as NodeJS.ErrnoException;
    return { path, content: '', changed: '', verdict: { why: 'unopened', code } };
  }
}
