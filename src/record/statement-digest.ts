// The digest of an issued statement: whoever changes a figure or a word of it by hand changes the digest too.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Body } from './body.ts';
import type { StatementSheet } from './schema/statement.ts';

/**
 * SHA-256 over the figures as they are kept (whole minor units, whole minutes, exact decimals) in order of their keys,
 * and the words below. How the front matter is set, and the places of its lines, don't count.
 */
export function statementDigest(statement: StatementSheet & { body: Pick<Body, 'markdown'> }): string {
  const { number, from, to, issued, lines, corrections, taxes, sums, balance, body } = statement;
  const kept = { number, from, to, issued, lines, corrections, taxes, sums, balance };
  const figures = canonical({ ...kept, forward: statement['brought-forward'] });
  return bytesToHex(sha256(utf8ToBytes(`${figures}\n${body.markdown.trim()}\n`)));
}

/** JSON with keys in order and without what is not written or only says where. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join()}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const pairs = Object.entries(value).filter(([key, of]) => of !== undefined && key !== 'place');
  return `{${pairs
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, of]) => `${JSON.stringify(key)}:${canonical(of)}`)
    .join()}}`;
}
