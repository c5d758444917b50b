// A share of a record's pictures, for machines that make them side by side: what they keep merges by copying.

/** The `nth` of `of` shares, counted from 1. */
export type Shard = { nth: number; of: number };

/** A share as a person writes it, `1/2`; nothing when it is none. */
export function shardNamed(written: string): Shard | undefined {
  const [, nth, of] = /^([1-9]\d{0,3})\/([1-9]\d{0,3})$/.exec(written) ?? [];
  const shard = { nth: Number(nth), of: Number(of) };
  return shard.nth <= shard.of ? shard : undefined;
}

/** The files of a share: every one is in one share, and shares differ in count by one at most. */
export function shardOf<T>(files: readonly T[], { nth, of }: Shard): T[] {
  return files.filter((_, at) => at % of === nth - 1);
}
