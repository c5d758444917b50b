// Shares of a whole, kept as exact decimals: `15%` and `0.15` are the same.
import { type Reading, read, unread } from './reading.ts';
import { type Decimal, Exact } from './rounding.ts';

/** Reads `15%` or `0.15` into an exact decimal between 0 and `most` (1 unless told otherwise). */
export function readShare(text: string, most = 1): Reading<Decimal> {
  const written = /^(\d+(?:\.\d+)?|\.\d+)\s*(%?)$/.exec(text.trim());
  const expected = `a share between 0% and ${most * 100}%, such as \`15%\` or \`0.15\``;
  if (!written?.[1]) return unread(expected);
  const share = written[2] ? new Exact(written[1]).div(100) : new Exact(written[1]);
  return share.gt(most) ? unread(expected) : read(share.toFixed());
}

/** `7.25%` of `0.0725`. */
export function shareText(share: Decimal): string {
  return `${new Exact(share).times(100).toFixed()}%`;
}

/** Reads a plain count such as `3` or `12.5` into an exact decimal above zero. */
export function readCount(text: string): Reading<Decimal> {
  const bare = text.trim();
  const fit = /^(\d{1,9}(?:\.\d{1,9})?)$/.test(bare) && new Exact(bare).gt(0);
  return fit ? read(new Exact(bare).toFixed()) : unread('a count above zero, such as `3` or `12.5`');
}
