import { access, mkdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Told } from '../../src/desk/browser/told.ts';
import { emptyFolder } from '../commands/run.ts';
import { openDesk, smallFolder } from './at-desk.ts';

const DAY = '2025-03-03';
const FILE = `log/${DAY}.md`;
const KEPT = `.draft/${DAY}.desk.json`;

type Known = Awaited<ReturnType<typeof openDesk>>['known'];
/** What the page is told of a day. */
async function toldOf(known: Known, day = DAY): Promise<Told> {
  const { text } = await known(`/?day=${day}`);
  return JSON.parse(/id="told">(.*)<\/script>/.exec(text)?.[1] ?? '') as Told;
}
const formOf = ({ entry, read, by, lists }: Told, words: string) => ({ entry, read, by, lists, words });
const asks = (known: Known) => async (path: string, what: object) => {
  const { status, text } = await known(path, { method: 'POST', body: JSON.stringify(what) });
  return { status, ...JSON.parse(text) };
};
const isThere = (path: string) =>
  access(path).then(
    () => true,
    () => false,
  );

describe('what was typed and not written', () => {
  it('is kept beside the log, offered by the next desk, and gone once it is written', async () => {
    const folder = await smallFolder();
    const first = await openDesk(folder);
    const told = await toldOf(first.known);
    expect(told.draft).toBeUndefined();
    const form = formOf(told, `${told.words}\n\nPrimed it.`);
    // Who only looks keeps nothing.
    expect((await asks(first.known)('/look', { form })).kept).toBeUndefined();
    expect(await isThere(join(folder, KEPT))).toBe(false);
    expect((await asks(first.known)('/look', { form, typed: true })).kept).toMatch(/^\d\d:\d\d$/);
    expect(await readFile(join(folder, FILE), 'utf8')).not.toContain('Primed');

    // Another desk knows nothing but the folder.
    const { known } = await openDesk(folder);
    const { draft } = await toldOf(known);
    expect(draft?.said).toMatch(/^at \d\d:\d\d$/);
    expect(draft?.form).toEqual(form);
    expect(draft?.mine.filter(({ how }) => how !== 'same')).toEqual([
      { how: 'added', text: '' },
      { how: 'added', text: 'Primed it.' },
    ]);
    expect(draft?.theirs).toBeUndefined();
    expect((await known('/?day=2025-03-04')).text).toContain(
      'Typed and not written yet: <a href="/?day=2025-03-03">2025-03-03</a>.',
    );
    const { sign } = await asks(known)('/look', { form: draft?.form });
    expect((await asks(known)('/write', { form: draft?.form, sign })).status).toBe(200);
    expect(await readFile(join(folder, FILE), 'utf8')).toContain('Stripped it.\n\nPrimed it.\n');
    expect(await isThere(join(folder, KEPT))).toBe(false);
  });

  it('is shown against a file that changed since, also by a desk that never saw what it was', async () => {
    const folder = await smallFolder();
    const first = await openDesk(folder);
    const told = await toldOf(first.known);
    const form = formOf(told, `${told.words}\n\nMine.`);
    await asks(first.known)('/look', { form, typed: true });
    const text = await readFile(join(folder, FILE), 'utf8');
    await writeFile(join(folder, FILE), `${text}\nTheirs.\n`);
    const { known } = await openDesk(folder);
    const { draft } = await toldOf(known);
    const added = (lines: NonNullable<Told['draft']>['mine'] = []) =>
      lines.filter(({ how, text: line }) => how === 'added' && line !== '').map(({ text: line }) => line);
    expect([added(draft?.mine), added(draft?.theirs)]).toEqual([['Mine.'], ['Theirs.']]);
    const { conflict } = await asks(known)('/look', { form: draft?.form });
    expect([added(conflict.mine), added(conflict.theirs)]).toEqual([['Mine.'], ['Theirs.']]);
    expect(await readFile(join(folder, FILE), 'utf8')).toBe(`${text}\nTheirs.\n`);
  });

  it('goes when it is thrown away, and when it says no more than the file', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const told = await toldOf(known);
    const form = formOf(told, `${told.words} More.`);
    await asks(known)('/look', { form, typed: true });
    await asks(known)('/throw-away', { form });
    expect(await isThere(join(folder, KEPT))).toBe(false);
    await asks(known)('/look', { form, typed: true });
    await asks(known)('/look', { form: formOf(told, told.words), typed: true });
    expect(await isThere(join(folder, KEPT))).toBe(false);
  });

  it('is kept while something in it is wrong', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const told = await toldOf(known, '2025-03-04');
    const form = { ...formOf(told, ''), lists: { hours: [{ line: { part: 'cowl', time: '2x' } }] } };
    const { errors, kept } = await asks(known)('/look', { form, typed: true });
    expect(errors).toBeGreaterThan(0);
    expect(kept).toMatch(/^\d\d:\d\d$/);
    expect((await toldOf(known, '2025-03-04')).draft?.form.lists).toEqual(form.lists);
  });

  it('is never kept outside the record, and a kept one that can’t be read harms nothing', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const told = await toldOf(known);
    await mkdir(join(folder, '.draft'));
    for (const broken of ['{', '{}', JSON.stringify({ at: 'now', form: {}, texts: [] })]) {
      await writeFile(join(folder, KEPT), broken);
      expect((await toldOf(known)).draft, broken).toBeUndefined();
    }
    await rm(join(folder, '.draft'), { recursive: true });
    const outside = await emptyFolder();
    await symlink(outside, join(folder, '.draft'));
    const form = formOf(told, `${told.words} More.`);
    expect((await asks(known)('/look', { form, typed: true })).kept).toBeUndefined();
    const named = { ...form, entry: '../../2025-03-03' };
    expect((await asks(known)('/throw-away', { form: named })).status).toBe(200);
    expect(await isThere(join(outside, `${DAY}.desk.json`))).toBe(false);
  });
});
