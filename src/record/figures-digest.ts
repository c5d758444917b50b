// Everything that a record's figures follow from, in one name: what was drawn from it once needn't be drawn again while
// only words below front matter or pictures change.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { once } from './once.ts';
import type { CarRecord } from './record.ts';

/** SHA-256 over the record without the words below its front matter and the names of its pictures. */
export const figuresDigest: (record: CarRecord) => string = once(
  ({ photos: _, unread, ...record }: CarRecord) => {
    const figures = JSON.stringify({ ...record, unread: [...unread].sort() }, (key, value) =>
      key === 'body' ? undefined : value,
    );
    return bytesToHex(sha256(utf8ToBytes(figures)));
  },
);
