import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Asker, Stopped } from '../../../src/commands/log/asker.ts';
import { converse } from '../../../src/commands/log/converse.ts';
import { readFolder } from '../../../src/disk/folder.ts';
import { openRecord } from '../../../src/record/open.ts';
import { SMALL } from '../../record/small.ts';
import { DAY, FILE, recordBefore, TEXT } from '../a-day.ts';
import { emptyFolder } from '../run.ts';

/** What is answered to a question: its words, or the key to stop. */
type Answer = string | boolean | string[];
const STOP = '\u0003';

/** Answers by what is asked: the first whose words are in the question, each once; else as Enter would. */
function answering(answers: readonly [about: string, answer: Answer][]) {
  const left = [...answers];
  const heard: string[] = [];
  const take = (message: string): Answer | undefined => {
    heard.push(message);
    const at = left.findIndex(([about]) => message.includes(about));
    const [found] = at < 0 ? [] : left.splice(at, 1);
    if (found?.[1] === STOP) throw new Stopped();
    return found?.[1];
  };
  const asker: Asker = {
    say: (text) => heard.push(text),
    async text({ message, initial = '', needed, check }) {
      const answer = String(take(message) ?? initial);
      if (answer === '' && !needed) return '';
      expect(check(answer), `${answer} for ${message}`).toBeUndefined();
      return answer;
    },
    async pick({ message, offers, initial = offers[0]?.value ?? '' }) {
      const answer = String(take(message) ?? (offers.some(({ value }) => value === '') ? '' : initial));
      expect(offers.map(({ value }) => value)).toContain(answer);
      return answer;
    },
    async some({ message, offers }) {
      const answers = take(message);
      if (!Array.isArray(answers)) return [];
      for (const answer of answers) expect(offers.map(({ value }) => value)).toContain(answer);
      return answers;
    },
    yes: async (message, initial) => (take(message) as boolean | undefined) ?? initial,
    close: () => heard.push('closed'),
  };
  return { asker, heard, left };
}

async function talk(root: string, answers: readonly [string, Answer][], today = DAY) {
  const { files, photos } = await readFolder(root);
  const lying = { files, photos, today };
  const said = answering(answers);
  const at = { root, lying, opened: openRecord(lying), plain: true };
  return { ...said, code: await converse(at, { lists: {} }, undefined, false, said.asker) };
}

async function small(): Promise<string> {
  const folder = await emptyFolder();
  for (const name of ['parts', 'log', 'photos']) await mkdir(join(folder, name));
  for (const [name, text] of Object.entries(SMALL)) await writeFile(join(folder, name), text);
  return folder;
}

describe('the questions at the end of a day', () => {
  it('give the file that the same day by flags gives', async () => {
    const folder = await recordBefore();
    const { code, heard, left } = await talk(folder, [
      ['Who worked?', 'tobias'],
      ['on which part?', 'carpets'],
      ['The planned line', 'make'],
      ['The kind of work', 'trim'],
      ['Time worked', '2h 30m'],
      ['What was done', 'last one bound, hole cut for the lever'],
      ['on another part?', 'top-irons'],
      ['The planned line', ''],
      ['The kind of work', 'trim'],
      ['Time worked', '1.5'],
      ['Anything bought', 'bought'],
      ['The vendor', 'marrow-lane'],
      ['What it is', 'Binding, 12 yd'],
      ['The part it is for', 'carpets'],
      ['The price of one', '1.35'],
      ['How many', '12'],
      ['What bringing it cost', '4.50'],
      ['The number on the bill', '790'],
      ['Anything measured?', 'measured'],
      ['The kind of measurement', 'level'],
      ['The part measured', 'frame'],
      ['Before the work', 'after'],
      ['The mount or place', 'L3'],
      ['What the level said', '0.2°'],
      ['How far off is still right', '0.5°'],
      ['The length it was read over', '3 1/2"'],
      ['What a later reader', 'read cold'],
      ['IMG_2001.jpg: what', 'The last one, bound all round: no seam shows.'],
      ['The picture in words', 'A dark carpet on a bench.'],
      ['The part it is for', 'carpets'],
      ['Before, during or after', ''],
      ['IMG_2002.jpg: what', 'Fitted.'],
      ['The picture in words', 'A floor, covered.'],
      ['The part it is for', 'carpets'],
      ['Before, during or after', 'after'],
      ['Planned lines finished', ['carpets/make']],
      ['The day in words', 'The carpets lie flat without a nail.'],
    ]);
    expect(left).toEqual([]);
    expect(await readFile(join(folder, FILE), 'utf8')).toBe(TEXT);
    expect(heard.at(-2)).toContain(`Written: ${FILE}, which is new.`);
    expect(code).toBe(0);
    expect((await readdir(folder)).includes('.draft') && (await readdir(join(folder, '.draft')))).toEqual([]);
  });

  it('keep what was said when it is stopped, and go on with it', async () => {
    const folder = await small();
    const first = await talk(
      folder,
      [
        ['on which part?', 'cowl'],
        ['The planned line', 'lead'],
        ['Time worked', STOP],
      ],
      '2025-03-04',
    );
    expect(first.code).toBe(1);
    expect(first.heard.at(-2)).toBe(
      'Stopped. What was said is kept in .draft/2025-03-04.md; npm run log goes on with it.',
    );
    expect(await readFile(join(folder, '.draft/2025-03-04.md'), 'utf8')).toBe(
      '---\nhours:\n  - { part: cowl, work: metal, line: lead }\n---\n',
    );
    await expect(readFile(join(folder, 'log/2025-03-04.md'))).rejects.toThrow();

    // A day later the draft’s day is offered first, and what it lacks is asked.
    const again = await talk(folder, [['Time worked', '2h']], '2025-03-05');
    expect(again.heard[0]).toBe('A draft of 2025-03-04 is kept.');
    expect(again.heard).toContain('Go on with the draft of 2025-03-04?');
    expect(await readFile(join(folder, 'log/2025-03-04.md'), 'utf8')).toBe(
      '---\nhours:\n  - { part: cowl, work: metal, time: 2h, line: lead }\n---\n',
    );
    expect(again.code).toBe(0);
    expect(await readdir(join(folder, '.draft'))).toEqual([]);
  });

  it('offer the open lines and the likely kind of work, and add to an entry that is there', async () => {
    const folder = await small();
    const { heard, code } = await talk(
      folder,
      [
        ['on which part?', 'cowl'],
        ['The planned line', 'lead'],
        ['Time worked', '1h'],
        ['Write this into', true],
      ],
      '2025-03-03',
    );
    expect(code).toBe(0);
    expect(heard[1]).toBe('log/2025-03-03.md is there; what you add goes behind what stands in it.');
    // As `differenceText` shows it: the lines that come, and the lines around them.
    expect(heard.find((text) => text.includes('+ '))).toBe(
      '      time: 3h 30m\n+   - part: cowl\n+     work: metal\n+     time: 1h\n+     line: lead\n  bought:',
    );
  });

  it('write nothing when the answer is no, or when nothing was said', async () => {
    const folder = await small();
    const no = await talk(
      folder,
      [
        ['The day in words', 'A day.'],
        ['Write this into', false],
      ],
      '2025-03-04',
    );
    expect([no.code, no.heard.at(-2)]).toEqual([
      1,
      'Nothing was written. What was said is kept in .draft/2025-03-04.md.',
    ]);
    const none = await talk(
      folder,
      [
        ['on which part?', ''],
        ['Go on with the draft', false],
      ],
      '2025-03-04',
    );
    expect([none.code, none.heard.at(-2)]).toEqual([1, 'Nothing was said, so nothing was written.']);
  });

  it('write nothing over what somebody else wrote in the meantime', async () => {
    const folder = await small();
    const { files, photos } = await readFolder(folder);
    const lying = { files, photos, today: '2025-03-03' };
    const theirs = `${SMALL['log/2025-03-03.md']}\nTheirs.\n`;
    await writeFile(join(folder, 'log/2025-03-03.md'), theirs);
    const { asker, heard } = answering([['The day in words', 'Mine.']]);
    const at = { root: folder, lying, opened: openRecord(lying), plain: true };
    expect(await converse(at, { lists: {} }, '2025-03-03', false, asker)).toBe(1);
    expect(heard.at(-2)).toBe(
      'log/2025-03-03.md was changed by somebody else in the meantime, so nothing was written. Run it again. What was said is kept in .draft/2025-03-03.md.',
    );
    expect(await readFile(join(folder, 'log/2025-03-03.md'), 'utf8')).toBe(theirs);
  });
});
