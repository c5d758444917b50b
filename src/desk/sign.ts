// A short sign for a text: what was read is known again by it.
import { createHash } from 'node:crypto';

/** Empty where there is no text. */
export function signOf(text: string | undefined): string {
  return text === undefined ? '' : createHash('sha256').update(text).digest('hex').slice(0, 32);
}
