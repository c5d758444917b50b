import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type Asker, Stopped } from '../../../src/commands/log/asker.ts';
import { movingAsker } from '../../../src/commands/log/moving-asker.ts';

/** Keys as a terminal sends them. */
const KEY = { enter: '\r', down: '\u001b[B', escape: '\u001b', stop: '\u0003', tab: '\t' };

/** Asks with streams that look like a terminal, presses keys, and gives the answer. */
async function press<T>(ask: (asker: Asker) => Promise<T>, ...keys: string[]): Promise<T> {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input });
  const output = Object.assign(new PassThrough(), { isTTY: true, columns: 80, rows: 24 });
  output.resume();
  const answer = ask(movingAsker(input, output));
  answer.catch(() => undefined);
  for (const key of keys) {
    await new Promise((later) => setTimeout(later, 20));
    input.write(key);
  }
  return answer;
}

const offers = [
  { value: 'cowl', label: 'Cowl' },
  { value: 'frame', label: 'Frame' },
  { value: 'rear-hoop', label: 'Rear hoop' },
];
const text = (asker: Asker) =>
  asker.text({ message: 'Note', needed: false, check: (said) => (said === 'x' ? 'Not x.' : undefined) });

describe('moving questions', () => {
  it('take words, and nothing', async () => {
    expect(await press(text, 'left', KEY.enter)).toBe('left');
    expect(await press(text, KEY.enter)).toBe('');
    expect(await press(text, 'x', KEY.enter, 'y', KEY.enter)).toBe('xy');
  });

  it('narrow a list by what is typed', async () => {
    const pick = (asker: Asker) => asker.pick({ message: 'Part?', offers });
    expect(await press(pick, KEY.enter)).toBe('cowl');
    expect(await press(pick, KEY.down, KEY.enter)).toBe('frame');
    expect(await press(pick, 'hoop', KEY.enter)).toBe('rear-hoop');
  });

  it('take several and none', async () => {
    const some = (asker: Asker) => asker.some({ message: 'Lines?', offers });
    expect(await press(some, KEY.enter)).toEqual([]);
    expect(await press(some, KEY.down, KEY.tab, KEY.enter)).toHaveLength(1);
  });

  it('take yes and no', async () => {
    const yes = (asker: Asker) => asker.yes('Write?', true);
    expect(await press(yes, KEY.enter)).toBe(true);
    expect(await press(yes, 'n', KEY.enter)).toBe(false);
  });

  it.each([
    ['Escape', KEY.escape],
    ['Ctrl-C', KEY.stop],
  ])('stop at %s', async (_, key) => {
    await expect(press(text, 'le', key)).rejects.toThrow(Stopped);
    await expect(press((asker) => asker.pick({ message: 'Part?', offers }), key)).rejects.toThrow(Stopped);
  });
});
