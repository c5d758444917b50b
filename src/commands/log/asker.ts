// What the log needs of whoever is asked: a terminal with moving lists, or plain lines for a screen reader or a test.
import { visible } from '../../views/visible.ts';

/** Names from a record as they are shown in a line: a sign that a terminal would act on is written out. */
export const inLine = (text: string): string => visible(text).replaceAll('\n', '\\n');

/** Something that can be chosen. */
export type Offer = { value: string; label: string };

/** A person at a terminal. Every question is given up by Escape or Ctrl-C, which throws `Stopped`. */
export type Asker = {
  say(text: string): void;
  /** Some words; `check` gives a sentence when they aren’t understood. Nothing said is an empty text. */
  text(question: {
    message: string;
    example?: string;
    initial?: string;
    needed: boolean;
    check: (text: string) => string | undefined;
  }): Promise<string>;
  pick(question: { message: string; offers: readonly Offer[]; initial?: string }): Promise<string>;
  some(question: { message: string; offers: readonly Offer[] }): Promise<string[]>;
  yes(message: string, initial: boolean): Promise<boolean>;
  close(): void;
};

/** The person wants to stop here. */
export class Stopped extends Error {}

/**
 * True when lists that move would be in the way: `NO_COLOR` and `ACCESSIBLE` are asked for by people and screen
 * readers (no-color.org), a dumb terminal can’t move its cursor.
 */
export function wantsPlain(env: Readonly<Record<string, string | undefined>>): boolean {
  return Boolean(env.NO_COLOR) || Boolean(env.ACCESSIBLE) || env.TERM === 'dumb';
}
