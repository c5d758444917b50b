// What a sum returns that may have no answer: the answer, or one sentence saying why there is none.

export type Answer<T> = { ok: true; value: T } | { ok: false; why: string };

export const answer = <T>(value: T): Answer<T> => ({ ok: true, value });
export const noAnswer = (why: string): { ok: false; why: string } => ({ ok: false, why });
