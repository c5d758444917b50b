// A page that would come out as it lies in the last site isn't drawn again. Pages that may stand lay all that they show
// before a component of `shown/`, which knows nothing else of the record but its frame.
import { hash } from 'node:crypto';
import { handedToPages, STANDS } from '../disk/handed.ts';
import { once } from '../record/once.ts';
import type { Frame } from '../views/frame.ts';
import { frame } from './record.ts';

/**
 * The answer that the page at `path` stands, if it was drawn before from the same `shown`: plain values and lists. In a
 * body of words the text alone counts, since the rest follows from it. Nothing is compared where nothing is kept.
 */
export async function stands(path: string, shown: object): Promise<Response | undefined> {
  const pages = handedToPages()?.pages;
  if (!pages) return undefined;
  const digest = hash('sha256', `${frameDigest(await frame())} ${JSON.stringify(shown, plainly)}`);
  pages.now.set(path, digest);
  return pages.before.get(path) === digest ? new Response(null, { status: STANDS }) : undefined;
}

const frameDigest = once((frame: Frame) => hash('sha256', JSON.stringify(frame)));

function plainly(key: string, value: unknown): unknown {
  if (value instanceof Map || value instanceof Set || typeof value === 'function') {
    throw new Error(`\`${key}\` is shown by a page that may stand, and is no plain value.`);
  }
  return key === 'tree' ? undefined : value;
}
