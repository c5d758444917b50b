// What a page that may stand is compared by, as texts: all that it shows, and the frame around it.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Body } from '../../record/body.ts';
import { once } from '../../record/once.ts';
import type { Frame } from '../frame.ts';
import type { Shot } from '../photos.ts';

/** What a page shows: plain values and lists. Of a body of words the text alone counts, since the rest follows from it. */
export type Shown = { body?: Body; [name: string]: unknown };

/** What a page shows, by its address; nothing where there is no such page. */
export type ShownAt<Params, Props, What> = (params: Params, props: Props) => Promise<What | undefined>;

/** What a page says of itself: what it `shows`, the texts that it is compared by, and the same for its own drawing. */
export type MayStand<Params, Props, What> = {
  shown: ShownAt<Params, Props, What>;
  texts: (shown: What) => Promise<readonly string[]>;
  at: (page: { params: object; props: object; locals: object }) => Promise<What | undefined>;
};

/** What is compared of a page: `shown`, and lines or pictures that stand on other pages too. */
export type Compared = { shown: Shown; shared?: readonly object[] };

/** Other texts for whatever shows anything else. The texts of what is shared are the same ones on every page. */
export function comparedBy(frame: Frame, { shown: { body, ...shown }, shared = [] }: Compared): string[] {
  const first = JSON.stringify([frameDigest(frame), body && [body.line, body.markdown], shown]);
  return [first, ...shared.map(textOf)];
}

/** A page with its pictures apart: each of them stands with its day, its part and its month. */
export function shotsApart({ shots, ...shown }: Shown & { shots: readonly Shot[] }): Compared {
  return { shown, shared: shots };
}

const textOf = once((one: object) => JSON.stringify(one));

const frameDigest = once((frame: Frame) => bytesToHex(sha256(utf8ToBytes(JSON.stringify(frame)))));
