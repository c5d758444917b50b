import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import type { Drawn, Draws } from '../../src/desk/preview.ts';
import { openDesk, smallFolder } from './at-desk.ts';

const DAY = '2025-03-04';
const form = (words: string) =>
  JSON.stringify({ form: { entry: DAY, read: '', by: '', lists: { finished: [] }, words } });

/** Draws what it gets as a line of text, with what a page may carry. */
const plainly =
  (drawn: [string | undefined, Drawn][]): Draws =>
  async (entry, from) => {
    drawn.push([entry, from]);
    const body = from.opened.record?.entries.find(({ id }) => id === entry)?.body.markdown;
    return `<p>${body ?? from.opened.problems.length}</p><script src="x.js"></script>`;
  };

describe('the page of a day that isn’t written', () => {
  it('is drawn from what was filled in, lies under the desk’s own address, and is written nowhere', async () => {
    const folder = await smallFolder();
    const drawn: [string | undefined, Drawn][] = [];
    const { known, ask } = await openDesk(folder, undefined, plainly(drawn));
    const { text } = await known('/preview', { method: 'POST', body: form('Primed.') });
    const { page } = JSON.parse(text) as { page: string };
    expect(page).toMatch(/^\/preview\/[0-9a-f-]{36}\/day\/2025-03-04\.html$/);
    const shown = await known(page);
    expect(shown.text).toBe('<p>Primed.\n</p>');
    expect(shown.headers['content-security-policy']).toMatch(
      /frame-ancestors 'self'; sandbox allow-same-origin$/,
    );
    expect(shown.headers['content-security-policy']).not.toContain('script-src');
    expect(drawn.map(([entry]) => entry)).toEqual([DAY]);
    const beside = (path: string) => known(new URL(path, `http://desk${page}`).pathname);
    expect((await beside('../style/ashframe.css')).headers['content-type']).toBe('text/css; charset=utf-8');
    expect((await beside('../problems.html')).text).toBe(`<p>${drawn[0]?.[1].opened.problems.length}</p>`);
    expect((await beside('../part/cowl.html')).text).toContain('Only the day and its checks are drawn here.');
    for (const path of [
      '../style/../../../car.md',
      '../photos/../../car.md',
      '../photos/IMG_1.jpg',
      '../car.md',
    ])
      expect((await beside(path)).status, path).toBe(404);
    expect((await known(page.replace(/[0-9a-f-]{36}/, 'another'))).status).toBe(404);
    // Without the cookie a page that was drawn is as closed as any other.
    expect((await ask(page)).status).toBe(403);
    expect(await readdir(join(folder, 'log'))).toEqual(['2025-03-03.md']);
  });

  it('is asked for by the desk’s own page alone', async () => {
    const { known, ask } = await openDesk(await smallFolder(), undefined, plainly([]));
    const origin = 'http://elsewhere.example';
    const body = form('Primed.');
    expect((await known('/preview', { method: 'POST', headers: { origin }, body })).status).toBe(403);
    expect((await ask('/preview', { method: 'POST', body })).status).toBe(403);
  });

  it('is refused in a sentence when it can’t be drawn, and the day is written all the same', async () => {
    const folder = await smallFolder();
    const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const { known } = await openDesk(folder, undefined, async () => {
      throw new Error('no site');
    });
    const { status, text } = await known('/preview', { method: 'POST', body: form('Primed.') });
    expect([status, JSON.parse(text)]).toEqual([
      200,
      { refused: 'The page can’t be drawn now; the terminal says why. Writing goes on as before.' },
    ]);
    expect(said).toHaveBeenCalledOnce();
    said.mockRestore();
    const looked = JSON.parse((await known('/look', { method: 'POST', body: form('Primed.') })).text);
    const { sign } = looked as { sign: string };
    const asked = { ...JSON.parse(form('Primed.')), sign };
    expect((await known('/write', { method: 'POST', body: JSON.stringify(asked) })).status).toBe(200);
    expect(await readFile(join(folder, `log/${DAY}.md`), 'utf8')).toBe('Primed.\n');
  });

  it('isn’t there while nothing is said of the day', async () => {
    const { known } = await openDesk(await smallFolder(), undefined, plainly([]));
    const { text } = await known('/preview', { method: 'POST', body: form('') });
    expect(JSON.parse(text)).toEqual({ refused: 'Nothing is written of this day yet, so there is no page.' });
  });
});
