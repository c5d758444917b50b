import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { Stopped, wantsPlain } from '../../../src/commands/log/asker.ts';
import { plainAsker } from '../../../src/commands/log/plain-asker.ts';

/** An asker with lines that are typed beforehand, and what it showed. */
function asking(...typed: string[]) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const asker = plainAsker(input, output);
  for (const line of typed) input.write(`${line}\n`);
  return { asker, input, shown: () => String(output.read() ?? '') };
}

const offers = [
  { value: 'cowl', label: 'Cowl' },
  { value: 'frame', label: 'Frame' },
  { value: '', label: 'none' },
];

describe('plain questions', () => {
  it('ask for words until they are understood', async () => {
    const { asker, shown } = asking('', '2x', '2h');
    const check = (text: string) => (text.endsWith('h') ? undefined : `\`${text}\` is no time.`);
    expect(await asker.text({ message: 'Time worked', example: '4h 15m', needed: true, check })).toBe('2h');
    expect(shown()).toBe(
      'Time worked (such as 4h 15m): This one is needed.\nTime worked (such as 4h 15m): `2x` is no time.\nTime worked (such as 4h 15m): ',
    );
  });

  it('take Enter for nothing, or for what is likely', async () => {
    const { asker, shown } = asking('', '');
    const check = () => 'never right';
    expect(await asker.text({ message: 'Note', needed: false, check })).toBe('');
    expect(
      await asker.text({ message: 'Day', initial: '2025-03-03', needed: true, check: () => undefined }),
    ).toBe('2025-03-03');
    expect(shown()).toBe('Note (Enter for none): Day (Enter for 2025-03-03): ');
  });

  it.each([
    ['2', 'frame'],
    ['cowl', 'cowl'],
    ['none', ''],
    ['', 'cowl'],
  ])('take `%s` of an offer', async (typed, value) => {
    const { asker, shown } = asking(typed);
    expect(await asker.pick({ message: 'Which part?', offers })).toBe(value);
    expect(shown()).toBe(
      'Which part?\n  1. cowl (Cowl)\n  2. frame (Frame)\n  3. none\nNumber or name (Enter for cowl): ',
    );
  });

  it('say what is near when nothing of the kind is offered, and show no more than nine', async () => {
    const many = Array.from({ length: 12 }, (_, n) => ({ value: `part-${n}`, label: `Part ${n}` }));
    const { asker, shown } = asking('part-111', 'part-11');
    expect(await asker.pick({ message: 'Which?', offers: many })).toBe('part-11');
    const said = shown();
    expect(said).toContain('  9. part-8 (Part 8)\n  and 3 more, which can be named.\n');
    expect(said).toContain('`part-111` isn’t among them. Did you mean `part-11`?');
  });

  it('show what a terminal would act on by its number, and keep it in what is chosen', async () => {
    const { asker, shown } = asking('1', '1', '');
    const odd = [{ value: 'co\u202ewl', label: 'Co\u001b[2Jwl\nframe' }];
    expect(await asker.pick({ message: 'On \u001b[31m?', offers: odd })).toBe('co\u202ewl');
    expect(await asker.some({ message: 'Which?', offers: odd })).toEqual(['co\u202ewl']);
    await asker.yes('Write \u0007?', true);
    const said = shown();
    expect(said).toContain('On \\u{1b}[31m?\n  1. co\\u{202e}wl (Co\\u{1b}[2Jwl\\nframe)\n');
    expect(said).toContain('(Enter for co\\u{202e}wl): ');
    expect(said).toContain('Write \\u{7}? (Y/n): ');
    expect(said).not.toMatch(/(?!\n)[\p{Cc}\u202e]/u);
  });

  it('take several', async () => {
    const { asker } = asking('1, frame', '1 nine', '');
    expect(await asker.some({ message: 'Which?', offers })).toEqual(['cowl', 'frame']);
    expect(await asker.some({ message: 'Which?', offers })).toEqual([]);
  });

  it('take yes and no', async () => {
    const { asker } = asking('', 'maybe', 'N');
    expect(await asker.yes('Write?', true)).toBe(true);
    expect(await asker.yes('Write?', true)).toBe(false);
  });

  it('stop when nothing more comes', async () => {
    const { asker, input } = asking();
    const answer = asker.yes('Write?', true);
    input.end();
    await expect(answer).rejects.toThrow(Stopped);
    await expect(asker.yes('Write?', true)).rejects.toThrow(Stopped);
  });

  it('are wanted by NO_COLOR, by ACCESSIBLE and by a dumb terminal', () => {
    expect([{ NO_COLOR: '1' }, { ACCESSIBLE: '1' }, { TERM: 'dumb' }].map(wantsPlain)).toEqual([
      true,
      true,
      true,
    ]);
    // no-color.org: present and not an empty string.
    expect([{}, { NO_COLOR: '' }, { TERM: 'xterm' }].map(wantsPlain)).toEqual([false, false, false]);
  });
});
