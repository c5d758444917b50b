// Lets a phone in by a short code that is read off the terminal. A code is good once, and guessing is slow.
import { randomInt } from 'node:crypto';
import { isSame } from './entrance.ts';

/** Wrong tries until there is another code, and how long nobody is let in then, in milliseconds. */
const TRIES = 5;
const REST = 60_000;

export type Pairing = { try: (code: string) => 'in' | 'wrong' | 'rest' };

/** `show` is told each new code. */
export function pairing(
  show: (code: string) => void,
  now: () => number = Date.now,
  fresh: () => string = () => String(randomInt(1_000_000)).padStart(6, '0'),
): Pairing {
  let code = fresh();
  let wrong = 0;
  let rests = 0;
  const another = () => {
    code = fresh();
    wrong = 0;
    show(code);
  };
  show(code);
  return {
    try(said) {
      if (now() < rests) return 'rest';
      if (isSame(said.replaceAll(/\s/g, ''), code)) {
        another();
        return 'in';
      }
      wrong += 1;
      if (wrong < TRIES) return 'wrong';
      rests = now() + REST;
      another();
      return 'rest';
    },
  };
}
