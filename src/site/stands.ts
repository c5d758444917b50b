// A page that would come out as it lies in the last site isn't drawn again. Pages that may stand lay all that they show
// before a component of `shown/`, which knows nothing else of the record but its frame.
import { hash } from 'node:crypto';
import { handedToPages, STANDS } from '../disk/handed.ts';
import type { Body } from '../record/body.ts';
import { once } from '../record/once.ts';
import type { Frame } from '../views/frame.ts';
import { frame } from './record.ts';

/** What a page shows: plain values and lists. Of a body of words the text alone counts, since the rest follows from it. */
type Shown = { body?: Body; [name: string]: unknown };

/** The answer that the page at `path` stands, if it was drawn before from the same. Nothing is compared where nothing is kept. */
export async function stands(path: string, { body, ...shown }: Shown): Promise<Response | undefined> {
  const pages = handedToPages()?.pages;
  if (!pages) return undefined;
  const words = body && [body.line, body.markdown];
  const digest = hash('sha256', JSON.stringify([frameDigest(await frame()), words, shown]));
  pages.now.set(path, digest);
  return pages.before.get(path) === digest ? new Response(null, { status: STANDS }) : undefined;
}

const frameDigest = once((frame: Frame) => hash('sha256', JSON.stringify(frame)));
