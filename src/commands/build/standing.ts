// Pages that would come out as they lie in the last site are taken from there.
import { hash } from 'node:crypto';
import { join } from 'node:path';
import type { KeptPages } from '../../disk/kept.ts';
import { linked, signOf } from '../../disk/linked.ts';

export type Standing = {
  /** Takes a page of the last site over, if it was drawn from what the texts say; false when it is to be drawn. */
  takenOver: (file: string, drawnFrom: readonly string[], to: string) => boolean;
  /** The pages that may stand the next time, of the site that was made in a folder. */
  keptOf: (made: string) => KeptPages;
};

/** The pages of the last site, which lies at `place`, as far as they are as they were put there. */
export function standingPages(place: string, kept: KeptPages): Standing {
  const stood: KeptPages = new Map();
  const drawn = new Map<string, string>();
  const digestOfTexts = textsDigest();
  return {
    takenOver: (file, drawnFrom, to) => {
      const digest = digestOfTexts(drawnFrom);
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

/** Gives digests of lists of texts. One that stands in many lists, such as the row of a line, is gone through once. */
function textsDigest(): (texts: readonly string[]) => string {
  const known = new Map<string, string>();
  const digestOf = (text: string): string => {
    const digest = known.get(text) ?? hash('sha256', text);
    known.set(text, digest);
    return digest;
  };
  return ([own = '', ...others]) => hash('sha256', [hash('sha256', own), ...others.map(digestOf)].join('\n'));
}
