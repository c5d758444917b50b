// Everything that a record's figures follow from, in one name: what was drawn from it once needn't be drawn again while
// only words below front matter or pictures change.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { once } from './once.ts';
import type { CarRecord } from './record.ts';

/** SHA-256 over the record without the words below its front matter and the names of its pictures. */
export const figuresDigest: (record: CarRecord) => string = once(
  ({ car, shop, parts, choices, entries, statements, currency, units, unread }: CarRecord) => {
    const sheets = [[car], [shop], parts, choices, entries, statements].map((all) => all.map(withoutWords));
    const figures = JSON.stringify([sheets, currency, units, [...unread].sort()]);
    return bytesToHex(sha256(utf8ToBytes(figures)));
  },
);

const withoutWords = ({ body: _, ...figures }: { body: unknown }): object => figures;
