// Pages that would come out as they lie in the last site are taken from there.
import { hash } from 'node:crypto';
import { join } from 'node:path';
import type { LastSite } from '../../disk/handed.ts';
import type { KeptPages } from '../../disk/kept.ts';
import { isStill, linked, signOf } from '../../disk/linked.ts';

/** What is answered in place of a page that stands. */
export const STANDS = 304;

/** `takeOver` puts a page of the last site at a path; false where that can't be, and then it is to be drawn. */
export type Standing = {
  last: LastSite;
  takeOver: (file: string, to: string) => boolean;
  /** The pages that may stand the next time, of the site that was made in a folder. */
  keptOf: (made: string) => KeptPages;
};

/** The pages of the last site, which lies at `place`, that are as they were put there. */
export function standingPages(place: string, kept: KeptPages): Standing {
  const as = [...kept].filter(([file, { sign }]) => isStill(join(place, file), sign));
  const before = new Map(as.map(([file, { digest }]) => [file, digest]));
  const now = new Map<string, string>();
  return {
    last: {
      stands: STANDS,
      has: (file, drawnFrom) => {
        const digest = hash('sha256', drawnFrom);
        now.set(file, digest);
        return before.get(file) === digest;
      },
    },
    takeOver: (file, to) => {
      if (linked(join(place, file), to, kept.get(file)?.sign ?? '')) return true;
      before.delete(file);
      return false;
    },
    keptOf: (made) =>
      new Map([...now].map(([file, digest]) => [file, { digest, sign: signOf(join(made, file)) }])),
  };
}
