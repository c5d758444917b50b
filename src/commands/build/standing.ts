// Pages that would come out as they lie in the last site are taken from there.
import { hash } from 'node:crypto';
import { join } from 'node:path';
import type { KeptPages } from '../../disk/kept.ts';
import { linked, signOf } from '../../disk/linked.ts';

export type Standing = {
  /** Takes a page of the last site over, if it was drawn from what the text says; false when it is to be drawn. */
  takenOver: (file: string, drawnFrom: string, to: string) => boolean;
  /** The pages that may stand the next time, of the site that was made in a folder. */
  keptOf: (made: string) => KeptPages;
};

/** The pages of the last site, which lies at `place`, as far as they are as they were put there. */
export function standingPages(place: string, kept: KeptPages): Standing {
  const stood: KeptPages = new Map();
  const drawn = new Map<string, string>();
  return {
    takenOver: (file, drawnFrom, to) => {
      const digest = hash('sha256', drawnFrom);
      const before = kept.get(file);
      const stands = before?.digest === digest && linked(join(place, file), to, before.sign);
      if (stands) stood.set(file, before);
      else drawn.set(file, digest);
      return stands;
    },
    keptOf: (made) => {
      const signed = [...drawn].map(([file, digest]) => ({ file, digest, sign: signOf(join(made, file)) }));
      return new Map([...stood, ...signed.map(({ file, ...page }) => [file, page] as const)]);
    },
  };
}
