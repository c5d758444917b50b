import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type Asker, Stopped } from '../../../src/commands/log/asker.ts';
import { movingAsker } from '../../../src/commands/log/moving-asker.ts';

/** Keys as a terminal sends them. */
const KEY = { enter: '\r', down: '\u001b[B', escape: '\u001b', stop: '\u0003', tab: '\t' };

/** Asks with streams that look like a terminal, presses keys, and gives the answer. */
async function press<T>(ask: (asker: Asker) => Promise<T>, ...keys: string[]): Promise<T> {
  return (await pressed(ask, ...keys)).answer;
}

/** The same with all that was drawn. */
async function pressed<T>(ask: (asker: Asker) => Promise<T>, ...keys: string[]) {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input });
  const output = Object.assign(new PassThrough(), { isTTY: true, columns: 80, rows: 24 });
  let drawn = '';
  output.on('data', (piece) => {
    drawn += String(piece);
  });
  const answer = ask(movingAsker(input, output));
  answer.catch(() => undefined);
  for (const key of keys) {
    await new Promise((later) => setTimeout(later, 20));
    input.write(key);
  }
  return { answer: await answer, drawn };
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

  it('show what a terminal would act on by its number, and keep it in what is chosen', async () => {
    const odd = [{ value: 'co\u202ewl', label: 'Co\u0007wl\u001b]0;title' }];
    const ask = async (asker: Asker) => {
      asker.say('Of \u0007 day');
      await asker.some({ message: 'Which \u0007?', offers: odd });
      await asker.yes('Write \u0007?', true);
      return asker.pick({ message: 'Part \u0007?', offers: odd });
    };
    const { answer, drawn } = await pressed(ask, KEY.enter, KEY.enter, KEY.enter);
    expect(answer).toBe('co\u202ewl');
    for (const said of ['Of \\u{7} day', 'Which \\u{7}?', 'Write \\u{7}?', 'Part \\u{7}?', 'co\\u{202e}wl'])
      expect(drawn).toContain(said);
    expect(drawn).toContain('Co\\u{7}wl\\u{1b}]0;title');
    for (const sign of ['\u0007', '\u202e', '\u001b]0']) expect(drawn).not.toContain(sign);
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
