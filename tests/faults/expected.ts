// What holds after every fault: nothing stands half written, and what is said is one sentence for a person.
import { expect } from 'vitest';
import type { Ran } from './shop.ts';

/** Where things lie while they are being made: names that nothing reads, and the notes of a hand-over. */
const PASSING = /(?:^|\/)\.|\/UNFINISHED\.txt$/;

/**
 * Every file is the one from before or the whole new one, and none is gone of those from before whose name begins with
 * `stays`: a killed command may have taken an old site away and not put the new one in its place yet.
 */
export function expectWhole(
  now: ReadonlyMap<string, string>,
  before: ReadonlyMap<string, string>,
  whole: ReadonlyMap<string, string>,
  { when = 'afterwards', stays = '' } = {},
): void {
  for (const [name, bytes] of now) {
    if (PASSING.test(name)) continue;
    expect([before.get(name), whole.get(name)].includes(bytes), `${name} is whole ${when}`).toBe(true);
  }
  for (const name of before.keys())
    if (name.startsWith(stays)) expect(now.has(name), `${name} is there ${when}`).toBe(true);
}

/** A command that the disk stopped: exit 1, the sentence last and once, nothing of the program’s inside. */
export function expectSaid({ code, err }: Ran, sentence: string): void {
  const lines = err.trimEnd().split('\n');
  expect(lines.at(-1)).toContain(sentence);
  expect(lines.at(-1)).toMatch(/^\S+ /);
  expect(lines.filter((line) => line.includes(sentence))).toHaveLength(1);
  expectNoTrace(err);
  expect(code).toBe(1);
}

/** Nothing that only who wrote the program could read: V8 prints a stack as lines that begin with `at`. */
export function expectNoTrace(err: string): void {
  expect(err).not.toMatch(/^\s+at /m);
  expect(err).not.toMatch(/\bError:|node:internal|Node\.js v/);
}
