// What every reader of a written value returns: the value, or what was expected instead.

/** A value read from text, or the words for what would have been understood. */
export type Reading<T> = { ok: true; value: T } | { ok: false; expected: string };

export const read = <T>(value: T): Reading<T> => ({ ok: true, value });
export const unread = (expected: string): { ok: false; expected: string } => ({ ok: false, expected });
