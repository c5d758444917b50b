import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Form, Looked, Told } from '../../src/desk/browser/told.ts';
import { recordAt } from '../../src/desk/lying.ts';
import { toldOf } from '../../src/desk/told.ts';
import { SMALL } from '../record/small.ts';
import { openDesk, smallFolder } from './at-desk.ts';

const FILE = 'log/2025-03-03.md';

/** What the page of an entry is told, and the form of it as it stands. */
async function pageOf(known: Awaited<ReturnType<typeof openDesk>>['known'], entry: string) {
  const { text } = await known(`/?day=${entry}`);
  const [, json = ''] = /id="told">(.*?)<\/script>/s.exec(text) ?? [];
  const { read, by, words, lists, ...told } = JSON.parse(json) as Told;
  return { told, form: { entry, read, by, words, lists } satisfies Form };
}

async function atDesk(changed: Record<string, string> = {}) {
  const folder = await smallFolder(changed);
  const desk = await openDesk(folder);
  const post = async (path: string, form: Form, sign = '') => {
    const { status, text } = await desk.known(path, { method: 'POST', body: JSON.stringify({ form, sign }) });
    return { status, told: JSON.parse(text) };
  };
  return {
    folder,
    page: (entry: string) => pageOf(desk.known, entry),
    look: async (form: Form): Promise<Looked> => (await post('/look', form)).told,
    write: async (form: Form) => {
      const { sign } = (await post('/look', form)).told as Looked;
      return post('/write', form, sign);
    },
    writeUnseen: (form: Form) => post('/write', form, 'another'),
    entry: () => readFile(join(folder, FILE), 'utf8'),
  };
}

describe('an entry at the desk', () => {
  it('never becomes too large to be read again', async () => {
    const large = SMALL[FILE].replace('---\n', `---\n# ${'x'.repeat(999_600)}\n`);
    const { page, look, entry } = await atDesk({ [FILE]: large });
    const { form } = await page('2025-03-03');
    form.words = `${form.words}\n\n${'Long words. '.repeat(60)}`;
    const { others, errors } = await look(form);
    expect([others, errors]).toEqual([[`${FILE} would become too large to be read again: 1 MB at most.`], 1]);
    expect(await entry()).toBe(large);
  });

  it('is changed in the lines that were touched alone', async () => {
    const { page, write, entry } = await atDesk();
    const { form } = await page('2025-03-03');
    const [hours] = form.lists.hours ?? [];
    const [bolts] = form.lists.bought ?? [];
    expect(hours?.line).toEqual({ part: 'cowl', line: 'strip', work: 'metal', time: '3h 30m' });
    if (typeof hours?.line !== 'object' || typeof bolts?.line !== 'object') throw new Error('lines by key');
    hours.line.time = '4h';
    hours.line.note = 'the lip too: all of it';
    delete bolts.line.bill;
    form.lists.finished = [];
    form.words = 'Stripped it, and the lip.';
    expect(await write(form)).toMatchObject({
      status: 200,
      told: { said: expect.stringContaining(`Written: ${FILE}.`) },
    });
    // Where keys stand in another order than the schema’s, a new one stands behind the last that it follows there.
    expect(await entry()).toBe(
      SMALL[FILE]
        .replace(
          '    work: metal\n    time: 3h 30m\n',
          '    note: "the lip too: all of it"\n    work: metal\n    time: 4h\n',
        )
        .replace(', bill: 0310', '')
        .replace('finished: [cowl/strip]\n', '')
        .replace('Stripped it.', 'Stripped it, and the lip.'),
    );
  });

  it('isn’t written as something else than was shown, nor when nothing was done', async () => {
    const { page, write, writeUnseen, entry } = await atDesk();
    const { form } = await page('2025-03-03');
    expect((await write(form)).told.refused).toBe('There is nothing to write.');
    form.words = 'More.';
    expect((await writeUnseen(form)).told.refused).toBe(
      'This isn’t what was shown, so nothing was written. Look at it again.',
    );
    expect(await entry()).toBe(SMALL[FILE]);
  });

  it('says what is wrong at its line, and isn’t written before', async () => {
    const { page, look, write, folder } = await atDesk();
    const { form } = await page('2025-03-04');
    form.lists.hours = [{ line: { part: 'cowll', work: 'metal', time: '2h' } }];
    form.lists.bought = [
      { line: { what: 'Wire', from: 'millrace', price: '4.9x' } },
      { line: { what: ' ' } },
    ];
    const told = await look(form);
    expect(told.lines).toEqual([
      { list: 'hours', n: 0, says: ['`cowll` is no part of this record. Did you mean `cowl`?'] },
      { list: 'bought', n: 0, says: [expect.stringContaining('Unexpected `4.9x`')] },
    ]);
    expect(told.errors).toBeGreaterThan(0);
    expect((await write(form)).told.refused).toBe('Something is wrong yet, so nothing was written.');
    expect(await readdir(join(folder, 'log'))).toEqual(['2025-03-03.md']);
  });

  it('that somebody else changed since is left alone, and both are shown', async () => {
    const { page, look, write, folder, entry } = await atDesk();
    const { form } = await page('2025-03-03');
    form.words = 'Mine.';
    const theirs = SMALL[FILE].replace('Stripped it.', 'Theirs.');
    await writeFile(join(folder, FILE), theirs);
    const { conflict } = await look(form);
    const changes = (lines: { how: string; text: string }[] = []) =>
      lines.filter(({ how }) => how !== 'same');
    expect(conflict?.file).toBe(FILE);
    expect(changes(conflict?.theirs)).toEqual([
      { how: 'gone', text: 'Stripped it.' },
      { how: 'added', text: 'Theirs.' },
    ]);
    expect(changes(conflict?.mine)).toEqual([
      { how: 'gone', text: 'Stripped it.' },
      { how: 'added', text: 'Mine.' },
    ]);
    const { status, told } = await write(form);
    expect([status, told.refused]).toEqual([
      409,
      `${FILE} was changed by somebody else in the meantime, so nothing was written.`,
    ]);
    expect(await entry()).toBe(theirs);
  });

  it('of one day begun by two at once loses nothing: one is written, the other is told', async () => {
    const { page, write, folder } = await atDesk();
    const { form } = await page('2025-03-04');
    const done = await Promise.all(
      ['One.', 'Two.', 'Three.'].map((words) =>
        write({ ...form, words }).then(({ status }) => ({ status, words })),
      ),
    );
    expect(done.map(({ status }) => status).sort()).toEqual([200, 409, 409]);
    const won = done.find(({ status }) => status === 200)?.words;
    expect(await readFile(join(folder, 'log/2025-03-04.md'), 'utf8')).toBe(`${won}\n`);
  });

  it('takes a decision into its choice', async () => {
    const choice = `---
question: Mend it, or make it new?
part: cowl
asked: 2025-03-01
options:
  - option: mend # the old one
    way: repair
    lines: [{ do: Mend it, work: metal, hours: 4 }]
  - option: new
    way: new-made
    lines: [{ do: Make it, work: metal, hours: 9 }]
---
`;
    const { page, write, folder } = await atDesk({ 'choices/cowl.md': choice });
    const { told, form } = await page('2025-03-04');
    expect(told.choices).toMatchObject([{ id: 'cowl', options: [{ value: 'mend' }, { value: 'new' }] }]);
    const read = told.choices[0]?.read ?? '';
    const decided = { choice: 'cowl', read, option: 'mend', by: 'the owner', reason: 'The metal is sound.' };
    expect((await write({ ...form, decided })).status).toBe(200);
    expect(await readFile(join(folder, 'choices/cowl.md'), 'utf8')).toBe(
      choice.replace(
        /---\n$/,
        'decided: { option: mend, on: 2025-03-04, by: the owner, reason: The metal is sound. }\n---\n',
      ),
    );
  });

  it('that can’t be read isn’t opened', async () => {
    const folder = await smallFolder({ [FILE]: '---\nby: "tobias\n---\n' });
    expect(await toldOf(recordAt(folder), '2025-03-03')).toMatch(/^log\/2025-03-03\.md can’t be read/);
  });
});
